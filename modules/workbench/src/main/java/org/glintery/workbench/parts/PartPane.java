package org.glintery.workbench.parts;

import java.awt.BorderLayout;
import java.awt.event.HierarchyEvent;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Workshop.Registration;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/**
 * Shows a part and keeps it fresh: after every change while it can be seen, else when it is seen again. A part that
 * throws or needs longer than five seconds is named, reported once and set aside until the user takes it back.
 * Event thread.
 */
@Stable
public final class PartPane extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final Logger LOG = Logger.getLogger(PartPane.class.getName());
    private static final long DEADLINE_MS = 5_000;
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
    private final transient ScreenPart<?> part;
    private final transient PartRun<?> run;
    private transient Registration changes;
    private boolean stale = true;

    /** @param name what the user knows the part by */
    public PartPane(String name, Desk desk, ScreenPart<?> part) {
        super(new BorderLayout());
        setOpaque(false);
        this.name = name;
        this.desk = desk;
        this.part = part;
        run = new PartRun<>(part, desk::view, BACKGROUND, SwingUtilities::invokeLater, DEADLINE_MS, this::setAside);
        add(part.component());
        addHierarchyListener(e -> {
            if ((e.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isShowing() && stale) {
                refresh();
            }
        });
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
        run.refresh();
    }

    @Messages({
        "# {0} - name of the part",
        "PartPane.failed={0} could not be shown and was set aside. Your workshop is as it was.",
        "# {0} - name of the part",
        "PartPane.slow={0} took longer than five seconds and was set aside. Your workshop is as it was.",
        "PartPane.heading=Set aside",
        "PartPane.again=Try again"
    })
    private void setAside(Throwable trouble) {
        boolean slow = PartRun.tookTooLong(trouble);
        if (REPORTED.add(part.getClass().getName())) {
            LOG.log(Level.WARNING, "Set aside: " + part.getClass().getName(), trouble);
        }
        removeAll();
        add(new EmptyNote(
                Pictogram.WARNING,
                Bundle.PartPane_heading(),
                slow ? Bundle.PartPane_slow(name) : Bundle.PartPane_failed(name),
                Buttons.plain(Bundle.PartPane_again(), this::takeBack)));
        revalidate();
        repaint();
    }

    private void takeBack() {
        removeAll();
        add(part.component());
        revalidate();
        repaint();
        run.takeBack();
    }
}
