package org.glintery.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.util.List;
import java.util.UUID;
import javax.swing.Action;
import javax.swing.JDialog;
import javax.swing.JTabbedPane;
import javax.swing.text.JTextComponent;
import org.assertj.core.api.SoftAssertions;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.spi.Desk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openide.awt.Actions;
import org.openide.modules.Modules;
import org.openide.modules.SpecificationVersion;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** Every dialog on the demo workshop: it opens, can be read by eye and aloud, and can be left. */
class DialogsTest {
    private static final int PLAIN_GROUND_COLOURS = 12;
    private Desk desk;

    @BeforeEach
    void waitForTheDemo() {
        Screen.until(
                "the demo workshop to be open", () -> OpenDesk.get().current().isPresent());
        desk = OpenDesk.get().current().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "Workshop, ShelveKitAction",
        "Workshop, OldFinishAction",
        "Workshop, NewWorkshopAction",
        "Help, GlossaryAction",
        "Help, AboutGlinteryAction"
    })
    void opensFromTheMenu(String menu, String name) throws Exception {
        Action action = Screen.onEventThread(() -> Actions.forID(menu, "org.glintery.workbench.menu." + name));
        look(name, () -> action.actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, name)));
    }

    @Test
    void tellsTheVersion_ofTheBuild() {
        SpecificationVersion version =
                Modules.getDefault().ownerOf(OpenDesk.class).getSpecificationVersion();
        Action about =
                Screen.onEventThread(() -> Actions.forID("Help", "org.glintery.workbench.menu.AboutGlinteryAction"));
        JDialog dialog = Dialogs.open(
                "About", () -> about.actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, "About")));
        List<String> texts = Screen.onEventThread(() -> Screen.all(dialog, JTextComponent.class).stream()
                .map(JTextComponent::getText)
                .toList());
        Dialogs.leave(dialog);

        assertThat(texts).anyMatch(text -> text.contains("Version " + version + ", built on "));
    }

    @ParameterizedTest
    @CsvSource({"Kit up", "Kit down", "Add a holder"})
    void opensFromTheCabinet(String button) throws Exception {
        TopComponent cabinet = Screen.onEventThread(() -> {
            TopComponent window = WindowManager.getDefault().findTopComponent("CabinetWindow");
            window.open();
            window.requestActive();
            return window;
        });
        Screen.until("the cabinet to show", cabinet::isShowing);
        Screen.settle();
        look("cabinet " + button, () -> Dialogs.button(cabinet, button).doClick());
    }

    @ParameterizedTest
    @CsvSource({"Sittings, Add a sitting", "Sittings, Complete it", "Questions, Ask", "Questions, Answer", "Story, Edit"
    })
    void opensFromThePage(String tab, String button) throws Exception {
        TopComponent page = openPiece(tab);
        Screen.shoot(SelfTestRun.shots(), "page-" + tab.toLowerCase());
        look(tab + " " + button, () -> Dialogs.button(page, button).doClick());
    }

    private TopComponent openPiece(String tab) {
        UUID piece = desk.view().all(Piece.TYPE).stream()
                .filter(p -> p.value().standing() == Standing.ON_THE_BENCH)
                .filter(p -> p.value().title().startsWith("Net loft"))
                .findFirst()
                .orElseThrow()
                .id();
        Screen.onEventThread(() -> {
            desk.openPiece(piece);
            return null;
        });
        Screen.settle();
        TopComponent page =
                Screen.onEventThread(() -> TopComponent.getRegistry().getActivated());
        JTabbedPane tabs =
                Screen.onEventThread(() -> Screen.all(page, JTabbedPane.class).get(0));
        Screen.onEventThread(() -> {
            tabs.setSelectedIndex(tabs.indexOfTab(tab));
            return null;
        });
        Screen.settle();
        return page;
    }

    private void look(String name, Runnable opening) throws Exception {
        JDialog dialog = Dialogs.open(name, opening);
        int colours = Screen.shoot(
                dialog, SelfTestRun.shots(), "dialog-" + name.toLowerCase().replace(' ', '-'));
        SoftAssertions seen = new SoftAssertions();
        seen.assertThat(colours).as("colours").isGreaterThan(PLAIN_GROUND_COLOURS);
        seen.assertThat(Screen.onEventThread(() -> Reading.cutOff(dialog)))
                .as("cut off")
                .isEmpty();
        seen.assertThat(Screen.onEventThread(() -> Reading.nameless(dialog)))
                .as("without a name")
                .isEmpty();
        Dialogs.leave(dialog);
        seen.assertAll();
    }
}
