package org.glintery.workbench.parts;

import java.awt.BorderLayout;
import java.awt.Graphics;
import java.awt.event.HierarchyEvent;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.glintery.api.GlinteryException;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Workshop.Registration;
import org.glintery.workbench.host.ForeignCall;
import org.glintery.workbench.host.PaintTime;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/**
 * Shows a part and keeps it fresh: after every change while it can be seen, else when it is seen again. A part that
 * throws, or needs longer than five seconds to be made, prepared or shown, or again and again longer than 100 ms to be
 * painted, is named, reported once and set aside until the user takes it back. Event thread.
 */
@Stable
public final class PartPane extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final Logger LOG = Logger.getLogger(PartPane.class.getName());
    private static final Set<String> REPORTED = new HashSet<>();
    private static final long PATIENCE_MS = 1_500;
    /** One processor is left to the window itself. */
    private static final Executor BACKGROUND = new Turns(
            Executors.newCachedThreadPool(work -> {
                Thread thread = new Thread(work, "Preparing a part");
                thread.setDaemon(true);
                return thread;
            }),
            Math.max(1, Runtime.getRuntime().availableProcessors() - 1),
            PATIENCE_MS);

    private final String name;
    private final transient Desk desk;
    private final transient Object whose;
    private final transient Supplier<ScreenPart<?>> create;
    private final transient PaintTime paintTime = new PaintTime();
    private transient Optional<Shown> shown = Optional.empty();
    private transient Registration changes;
    private boolean stale = true;

    /** A part that was made, and what runs it. */
    private record Shown(ScreenPart<?> part, PartRun<?> run) {}

    /** @param name what the user knows the part by */
    public PartPane(String name, Desk desk, ScreenPart<?> part) {
        this(name, desk, part, () -> part);
    }

    /**
     * A part that is made here, as that may go wrong too.
     *
     * @param name what the user knows the part by
     * @param whose it is, to be named when something goes wrong
     * @param create called on the event thread, again when the user takes back a part that could not be made
     */
    public PartPane(String name, Desk desk, Object whose, Supplier<ScreenPart<?>> create) {
        super(new BorderLayout());
        setOpaque(false);
        this.name = name;
        this.desk = desk;
        this.whose = whose;
        this.create = create;
        begin();
        addHierarchyListener(e -> {
            if ((e.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isShowing() && stale) {
                refresh();
            }
        });
    }

    private void begin() {
        try {
            ScreenPart<?> part = ForeignCall.make(whose, create);
            add(ForeignCall.<JComponent>make(whose, part::component));
            shown = Optional.of(new Shown(part, run(part)));
        } catch (RuntimeException
                | Error e) { // the border to add-ons: whatever it is, it may not take the page with it
            setAside(e);
        }
    }

    private <M> PartRun<M> run(ScreenPart<M> part) {
        return new PartRun<>(
                part,
                desk::view,
                BACKGROUND,
                SwingUtilities::invokeLater,
                ForeignCall.DEADLINE_MS,
                () -> desk.workshop().isReading(),
                this::setAside,
                this::isPutBack);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        if (changes == null) {
            stale = true;
            changes = desk.workshop().listen(changed -> SwingUtilities.invokeLater(this::changed));
        }
    }

    @Override
    public void removeNotify() {
        if (changes != null) {
            changes.close();
            changes = null;
        }
        super.removeNotify();
    }

    private void changed() {
        stale = true;
        if (isShowing()) {
            refresh();
        }
    }

    private void refresh() {
        stale = false;
        shown.ifPresent(one -> one.run().refresh());
    }

    /** So that whatever is painted inside comes by here. */
    @Override
    protected boolean isPaintingOrigin() {
        return true;
    }

    @Override
    protected void paintChildren(Graphics g) {
        paintTime.begin(whose);
        try {
            super.paintChildren(g);
        } catch (RuntimeException | Error e) { // the border to add-ons
            SwingUtilities.invokeLater(() -> stop(e));
        }
        if (paintTime.endedTooLate()) {
            SwingUtilities.invokeLater(() -> stop(new SlowPaintException()));
        }
    }

    /** Puts a part away that was running. */
    private void stop(Throwable trouble) {
        shown.ifPresent(one -> one.run().stop());
        setAside(trouble);
    }

    @Messages({
        "# {0} - name of the part",
        "PartPane.failed={0} could not be shown and was set aside. Your workshop is as it was.",
        "# {0} - name of the part",
        "PartPane.slow={0} took longer than five seconds and was set aside. Your workshop is as it was.",
        "# {0} - name of the part",
        "PartPane.slowPaint={0} takes so long to draw that the window would not keep up, and was set aside. Your workshop is as it was.",
        "# {0} - what was said",
        "# {1} - module",
        "PartPane.owner={0} It belongs to {1}.",
        "PartPane.heading=Set aside",
        "PartPane.again=Try again"
    })
    private void setAside(Throwable trouble) {
        if (REPORTED.add(whose.getClass().getName())) {
            LOG.log(Level.WARNING, "Set aside: " + whose.getClass().getName(), trouble);
        }
        String said = trouble instanceof SlowPaintException
                ? Bundle.PartPane_slowPaint(name)
                : PartRun.tookTooLong(trouble) ? Bundle.PartPane_slow(name) : Bundle.PartPane_failed(name);
        removeAll();
        add(new EmptyNote(
                Pictogram.WARNING,
                Bundle.PartPane_heading(),
                ForeignCall.ownerOf(whose)
                        .map(owner -> Bundle.PartPane_owner(said, owner))
                        .orElse(said),
                Buttons.plain(Bundle.PartPane_again(), this::takeBack)));
        revalidate();
        repaint();
    }

    private void takeBack() {
        if (shown.isEmpty()) {
            removeAll();
            begin();
            refresh();
            revalidate();
            repaint();
        } else if (isPutBack()) {
            shown.get().run().takeBack();
        }
    }

    /** Puts the part back on the page; one that can't even be put there stays aside. */
    private boolean isPutBack() {
        try {
            JComponent component = ForeignCall.make(whose, shown.orElseThrow().part()::component);
            removeAll();
            add(component);
        } catch (RuntimeException | Error e) { // the border to add-ons
            stop(e);
            return false;
        }
        revalidate();
        repaint();
        return true;
    }

    /** Painting took too long, again and again. */
    private static final class SlowPaintException extends GlinteryException {
        private static final long serialVersionUID = 1L;

        SlowPaintException() {
            super("paints longer than 100 ms");
        }
    }
}
