package org.glintery.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.spi.Desk;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** A first start: the question, the empty workshop with only the book, and the same workshop with 400 pieces. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class FirstUseTest {
    private static final int MANY = 400;
    private static final List<String> WINDOWS =
            List.of("ShelvesWindow", "FramingBenchWindow", "CabinetWindow", "TodayWindow");

    @Test
    @Order(1)
    void asksHowMuchIsKept_andOpensAnEmptyWorkshop() throws Exception {
        Screen.until("the first question", () -> Dialogs.inFront().isPresent());
        JDialog question = Screen.onEventThread(() -> Dialogs.inFront().orElseThrow());
        Screen.shoot(question, SelfTestRun.shots(), "first-question");
        assertThat(Screen.onEventThread(() -> Reading.cutOff(question))).isEmpty();
        assertThat(Screen.onEventThread(() -> Reading.nameless(question))).isEmpty();
        Screen.onEventThread(() -> {
            Screen.all(question, JTextField.class).get(0).setText(newFolder().toString());
            Screen.all(question, JRadioButton.class).stream()
                    .filter(choice -> choice.getText().startsWith("Only the book"))
                    .forEach(AbstractButton::doClick);
            return null;
        });
        Dialogs.press(question, "Set up the workshop");
        Screen.until(
                "the new workshop to be open", () -> OpenDesk.get().current().isPresent());
        assertThat(Settings.keepsDrills(desk().view())).isFalse();
        shootWindows("empty-book");
    }

    @Test
    @Order(2)
    void showsTheDrillsToo_whenTheyAreKept() throws Exception {
        keepDrills(true);
        shootWindows("empty-drills");
    }

    @Test
    @Order(3)
    void shows400Pieces() throws Exception {
        keepDrills(false);
        ChangeSet.Builder many = ChangeSet.named("Many pieces");
        for (int i = 0; i < MANY; i++) {
            many.create(Piece.TYPE, UUID.randomUUID(), piece(i));
        }
        desk().workshop().apply(many.build()).orThrow();
        TopComponent shelves =
                Screen.onEventThread(() -> WindowManager.getDefault().findTopComponent("ShelvesWindow"));
        Screen.until("all pieces on the shelves", () -> longest(shelves) == MANY);
        shootWindows("many");
    }

    @Test
    @Order(9)
    void logsNoWarning_fromOurPackages() {
        assertThat(OwnWarnings.seen()).isEmpty();
    }

    private static Piece piece(int i) {
        Piece plain = Piece.titled("Jetty " + (i + 1) + ", drawn from the landing stage", Standing.values()[i % 7]);
        return new Piece(
                plain.title(),
                plain.kit(),
                plain.madeAgainFrom(),
                plain.standing(),
                plain.standingSince(),
                plain.coverage(),
                plain.drillShape(),
                Canvas.drilled(300 + i % 5 * 50, 400 + i % 7 * 50),
                plain.sections(),
                plain.pictures(),
                plain.keptAt(),
                plain.story());
    }

    private static Desk desk() {
        return OpenDesk.get().current().orElseThrow();
    }

    private static Path newFolder() {
        return Path.of(System.getProperty("glintery.selftest.new"));
    }

    private static void keepDrills(boolean keep) {
        Settings usual = Settings.USUAL;
        Settings.Depth depth = keep ? Settings.Depth.DRILLS_AS_WELL : Settings.Depth.ONLY_THE_BOOK;
        ChangeSet change = ChangeSet.named("Change how much is kept")
                .put(Settings.TYPE, Settings.ID, new Settings(depth, usual.currency(), false))
                .build();
        desk().workshop().apply(change).orThrow();
    }

    private static int longest(TopComponent in) {
        return Screen.all(in, JList.class).stream()
                .map(list -> list.getModel().getSize())
                .max(Comparator.naturalOrder())
                .orElse(0);
    }

    private static void shootWindows(String name) throws Exception {
        for (String id : WINDOWS) {
            TopComponent window = Screen.onEventThread(() -> {
                TopComponent found = WindowManager.getDefault().findTopComponent(id);
                found.open();
                found.requestActive();
                return found;
            });
            Screen.until(id + " to show", window::isShowing);
            Screen.shoot(SelfTestRun.shots(), name + "-" + id);
            assertThat(Screen.onEventThread(() -> Reading.cutOff(window)))
                    .as(id)
                    .isEmpty();
            assertThat(Screen.onEventThread(() -> Reading.nameless(window)))
                    .as(id)
                    .isEmpty();
        }
    }
}
