package org.glintery.workbench.parts;

import java.awt.CardLayout;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.glintery.api.Stable;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.View;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** A part that has something to show only where the drills are kept as well; else it says so and offers to. */
@Stable
public final class WhereDrillsAreKept<M> implements ScreenPart<Optional<M>> {
    private final ScreenPart<M> part;
    private final JPanel page = new JPanel(new CardLayout());

    /** @param what the part shows, in a sentence */
    @Messages({
        "WhereDrillsAreKept.heading=This workshop keeps only the book",
        "# {0} - what is shown here",
        "WhereDrillsAreKept.text={0} It can be kept from now on. Nobody has to count drills."
    })
    public WhereDrillsAreKept(Desk desk, ScreenPart<M> part, String what, Pictogram icon) {
        this.part = part;
        page.setOpaque(false);
        page.add(part.component(), "part");
        page.add(
                new EmptyNote(
                        icon,
                        Bundle.WhereDrillsAreKept_heading(),
                        Bundle.WhereDrillsAreKept_text(what),
                        Buttons.plain(
                                KeptDepth.words(Settings.Depth.DRILLS_AS_WELL),
                                () -> desk.change(KeptDepth.change(
                                        desk.workshop().find(Stash.class), Settings.Depth.DRILLS_AS_WELL)))),
                "note");
    }

    @Override
    public Optional<M> prepare(View view) {
        return Settings.keepsDrills(view) ? Optional.of(part.prepare(view)) : Optional.empty();
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(Optional<M> model) {
        model.ifPresent(part::show);
        ((CardLayout) page.getLayout()).show(page, model.isPresent() ? "part" : "note");
    }
}
