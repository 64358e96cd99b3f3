package org.glintery.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import javax.swing.Action;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import javax.swing.UIManager;
import org.assertj.core.api.SoftAssertions;
import org.glintery.api.finishes.Finish;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Stored;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.parts.Tone;
import org.glintery.workbench.spi.Desk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.openide.awt.Actions;
import org.openide.filesystems.FileObject;
import org.openide.filesystems.FileUtil;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** Every window of the application on the demo workshop, in light and dark. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class WindowsTest {
    private static final int PLAIN_GROUND_COLOURS = 12;
    private static final int LEAST_EXPLAINED = 40;
    private static final Set<String> EXPLAINED = new TreeSet<>();
    private final SoftAssertions reading = new SoftAssertions();
    private Desk desk;
    private final Path shots =
            SelfTestRun.folder().resolve(System.getProperty("glintery.selftest.name", "screenshots"));

    @BeforeEach
    void waitForTheDemo() {
        Screen.until(
                "the demo workshop to be open", () -> OpenDesk.get().current().isPresent());
        desk = OpenDesk.get().current().orElseThrow();
        assertThat(desk.view().all(Piece.TYPE)).as("pieces of the demo").hasSizeGreaterThanOrEqualTo(30);
    }

    @Test
    @Order(1)
    void opensEveryWindow_inLightAndDark() throws Exception {
        List<String> windows = ourWindows();
        assertThat(windows)
                .as("windows of ours")
                .containsExactlyInAnyOrder("TodayWindow", "ShelvesWindow", "CabinetWindow", "FramingBenchWindow");
        for (String look : List.of("light", "dark")) {
            switchTo(look.equals("dark"));
            for (String id : windows) {
                Screen.onEventThread(() -> {
                    TopComponent window = WindowManager.getDefault().findTopComponent(id);
                    assertThat(window).as(id).isNotNull();
                    window.open();
                    window.requestActive();
                    return null;
                });
                Screen.until(
                        id + " to show",
                        () -> WindowManager.getDefault().findTopComponent(id).isShowing());
                assertThat(Screen.shoot(shots, look + "-" + id))
                        .as("colours on " + id)
                        .isGreaterThan(PLAIN_GROUND_COLOURS);
                read(id, WindowManager.getDefault().findTopComponent(id));
            }
        }
        switchTo(false);
        reading.assertAll();
    }

    private void read(String what, Container shown) {
        Screen.onEventThread(() -> {
            reading.assertThat(Reading.cutOff(shown)).as("cut off in " + what).isEmpty();
            reading.assertThat(Reading.nameless(shown))
                    .as("without a name in " + what)
                    .isEmpty();
            EXPLAINED.addAll(Reading.explained(shown));
            return null;
        });
    }

    @Test
    @Order(2)
    void showsEveryTab_ofAPieceOfEachStanding() throws Exception {
        Map<Standing, UUID> pieces = new EnumMap<>(Standing.class);
        List<Stored<Piece>> all = new ArrayList<>(desk.view().all(Piece.TYPE));
        all.sort(Comparator.comparing(this::isBare)); // those of which there is most to show
        for (Stored<Piece> piece : all) {
            pieces.putIfAbsent(piece.value().standing(), piece.id());
        }
        assertThat(pieces).as("standings in the demo").hasSizeGreaterThanOrEqualTo(5);
        for (Map.Entry<Standing, UUID> piece : pieces.entrySet()) {
            assertThat(showTabs("piece-" + piece.getKey().name().toLowerCase(), piece.getValue()))
                    .as("tabs of a piece that is " + piece.getKey())
                    .containsExactly("Story", "Legend", "Sittings", "Questions", "Pictures", "Finish", "Frame");
        }
        switchTo(true);
        for (Standing standing : List.of(Standing.ON_THE_BENCH, Standing.MADE)) {
            showTabs("dark-piece-" + standing.name().toLowerCase(), pieces.get(standing));
        }
        switchTo(false);
        reading.assertAll();
    }

    private boolean isBare(Stored<Piece> piece) {
        boolean made = piece.value().standing() == Standing.MADE;
        Optional<Integer> score = desk.view()
                .find(Finish.TYPE, piece.id())
                .flatMap(finish -> finish.value().score());
        return piece.value().pictures().isEmpty() || made && score.isEmpty();
    }

    /** @param shot how the names of its screenshots begin @return the titles */
    private List<String> showTabs(String shot, UUID piece) throws Exception {
        Screen.onEventThread(() -> {
            desk.openPiece(piece);
            return null;
        });
        Screen.settle();
        JTabbedPane tabs =
                Screen.onEventThread(() -> Screen.all(TopComponent.getRegistry().getActivated(), JTabbedPane.class)
                        .get(0));
        List<String> titles = new ArrayList<>();
        int count = Screen.onEventThread(tabs::getTabCount);
        for (int i = 0; i < count; i++) {
            int index = i;
            String title = Screen.onEventThread(() -> {
                tabs.setSelectedIndex(index);
                return tabs.getTitleAt(index);
            });
            String name = shot + "-" + (i + 1) + "-" + title.toLowerCase();
            Screen.shoot(shots, name);
            read(name, tabs.getParent());
            titles.add(title);
        }
        return titles;
    }

    @Test
    @Order(3)
    void findsAPiece_asItsTitleIsTyped() throws Exception {
        String title = desk.view().all(Piece.TYPE).get(0).value().title();
        TopComponent shelves = Screen.onEventThread(() -> {
            TopComponent window = WindowManager.getDefault().findTopComponent("ShelvesWindow");
            window.open();
            window.requestActive();
            return window;
        });
        Screen.until("rows on the shelves", () -> rows(shelves) > 0);
        int before = Screen.onEventThread(() -> rows(shelves));
        JTextField search =
                Screen.onEventThread(() -> Screen.all(shelves, JTextField.class).get(0));
        int found = Screen.onEventThread(() -> {
            search.setText(title);
            return rows(shelves);
        });
        Screen.shoot(shots, "shelves-search");
        Screen.onEventThread(() -> {
            search.setText("");
            return null;
        });
        assertThat(found).isPositive().isLessThan(before);
    }

    @Test
    @Order(4)
    void explainsTheWordsOfTheTrade_whereTheyStand() {
        assertThat(EXPLAINED)
                .as("labels, buttons, column heads and tabs with an explanation")
                .contains("Kit up", "Kit down", "Legend", "Sittings", "Symbol", "Needed", "At hand", "Holders")
                .hasSizeGreaterThanOrEqualTo(LEAST_EXPLAINED);
    }

    @Test
    @Order(9)
    void logsNoWarning_fromOurPackages() {
        assertThat(OwnWarnings.seen()).isEmpty();
    }

    private static int rows(TopComponent shelves) {
        List<JList<?>> lists = new ArrayList<>();
        Screen.all(shelves, JList.class).forEach(lists::add);
        return lists.get(lists.size() - 1).getModel().getSize();
    }

    private static void switchTo(boolean dark) {
        Screen.onEventThread(() -> {
            if (Tone.isDark() != dark) {
                Action action = Actions.forID("View", "org.glintery.workbench.menu.DarkAction");
                action.actionPerformed(new ActionEvent(action, ActionEvent.ACTION_PERFORMED, ""));
            }
            return null;
        });
        Color ground = Screen.onEventThread(() -> UIManager.getColor("Panel.background"));
        assertThat(ground.getRed() < 128).as("dark ground").isEqualTo(dark);
    }

    /** The windows that our modules register, by what is in the platform's configuration. */
    static List<String> ourWindows() {
        List<String> ids = new ArrayList<>();
        for (FileObject file : FileUtil.getConfigFile("Windows2/Components").getChildren()) {
            TopComponent window =
                    Screen.onEventThread(() -> WindowManager.getDefault().findTopComponent(file.getName()));
            if (window != null && window.getClass().getName().startsWith("org.glintery.")) {
                ids.add(file.getName());
            }
        }
        return ids;
    }
}
