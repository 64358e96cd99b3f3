package org.glintery.workbench.today;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.time.About;
import org.glintery.workbench.copies.FolderCopying;
import org.glintery.workbench.copies.FolderCopying.Standing;
import org.glintery.workbench.desk.CurrentDesk;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.menu.SecondFolderMenu;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** How it stands with the folder that the workshop is copied into by itself, and what can be done about it. Event thread. */
final class SecondFolderRow extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ICON_PX = 16;
    private final transient Desk desk;
    private final JLabel warning = new JLabel(Pictogram.WARNING.at(ICON_PX));
    private final WrappedText words = Texts.body("");
    private final JButton choose = Buttons.link("", () -> here(SecondFolderMenu::choose));
    private final JButton now = Buttons.link(
            Bundle.SecondFolderRow_now(), () -> here(d -> FolderCopying.at(d).copyNow()));
    private final JButton stop = Buttons.link(
            Bundle.SecondFolderRow_stop(), () -> here(d -> FolderCopying.at(d).stop()));

    @Messages({"SecondFolderRow.now=Copy there now", "SecondFolderRow.stop=Stop copying"})
    SecondFolderRow(Desk desk) {
        super(new MigLayout("insets 0, fillx, hidemode 3, gap " + Space.NEAR, "[][grow, fill]"));
        this.desk = desk;
        setOpaque(false);
        JPanel links = new JPanel(new MigLayout("insets 0, hidemode 3, wrap 2, gap " + Space.APART + " " + Space.NEAR));
        links.setOpaque(false);
        links.add(now);
        links.add(stop);
        links.add(choose, "spanx 2"); // below: all three are wider than the narrowest card
        add(warning, "top");
        add(words, "wmin 0, wrap");
        add(links, "spanx 2, growx 0");
    }

    /** Copying at this desk, while it is the one that is open. Any thread. */
    static Optional<FolderCopying> copying(Desk desk) {
        return open(desk).map(FolderCopying::at);
    }

    @Messages({
        "SecondFolderRow.none=Choose a second folder, best on another disk or stick, and the workshop is copied there by itself.",
        "# {0} - folder",
        "SecondFolderRow.never=Copied into {0} by itself, but not yet.",
        "# {0} - folder",
        "# {1} - day",
        "SecondFolderRow.last=Copied into {0} by itself. Last copied on {1}.",
        "SecondFolderRow.choose=Choose a folder",
        "SecondFolderRow.other=Choose another folder"
    })
    void show(Optional<Standing> standing) {
        Optional<String> trouble = standing.flatMap(Standing::trouble);
        words.setText(
                standing.map(chosen -> trouble.orElseGet(() -> words(chosen))).orElseGet(Bundle::SecondFolderRow_none));
        warning.setVisible(trouble.isPresent());
        now.setVisible(standing.isPresent());
        stop.setVisible(standing.isPresent());
        choose.setText(standing.isPresent() ? Bundle.SecondFolderRow_other() : Bundle.SecondFolderRow_choose());
    }

    private String words(Standing chosen) {
        return chosen.lastCopied()
                .map(at -> LocalDate.ofInstant(at, desk.clock().getZone()))
                .map(day -> Bundle.SecondFolderRow_last(
                        chosen.folder(), About.on(day).words()))
                .orElseGet(() -> Bundle.SecondFolderRow_never(chosen.folder()));
    }

    private void here(Consumer<WorkshopDesk> act) {
        open(desk).ifPresent(act);
    }

    private static Optional<WorkshopDesk> open(Desk desk) {
        return CurrentDesk.get().desk().filter(d -> d == desk);
    }
}
