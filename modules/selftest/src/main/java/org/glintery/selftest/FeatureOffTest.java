package org.glintery.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.text.JTextComponent;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Stored;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.spi.Desk;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** One feature is switched off: its windows and tabs are absent, and others say where they need it. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class FeatureOffTest {
    private static final String OFF = System.getProperty("glintery.selftest.off", "");
    private static final List<String> WINDOWS =
            List.of("TodayWindow", "ShelvesWindow", "CabinetWindow", "FramingBenchWindow");
    private static final List<String> TABS =
            List.of("Story", "Legend", "Sittings", "Questions", "Pictures", "Finish", "Frame");
    private static final Map<String, Set<String>> ITS_OWN = Map.of(
            "stash", Set.of("Legend"),
            "activework", Set.of("Sittings", "Questions"),
            "finishes", Set.of("Finish"),
            "storage", Set.of("CabinetWindow"),
            "framing", Set.of("Frame", "FramingBenchWindow"),
            "charts", Set.of());
    /** Nothing that others show asks framing or charts for anything. */
    private static final Map<String, List<String>> SAID = Map.of(
            "stash",
            List.of(
                    "Completing it books no last drills to its canvas. Needs kits and pieces",
                    "Drills can't be moved or counted here. Needs kits and pieces",
                    "Needs kits and pieces, which are switched off."),
            "activework",
            List.of("Made. Needs sittings"),
            "finishes",
            List.of("Completing it begins no finish. Needs finishes", "Write old finishes. Needs finishes"),
            "storage",
            List.of("Completing it leaves its holder as it is. Needs the cabinet"),
            "framing",
            List.of(),
            "charts",
            List.of());

    private static final List<String> READ = new ArrayList<>();

    @Test
    @Order(1)
    void leavesItsWindowsOut() throws Exception {
        assertThat(ITS_OWN).containsKey(OFF);
        Screen.until("the workshop to be open", () -> OpenDesk.get().current().isPresent());
        List<String> windows = WindowsTest.ourWindows();

        assertThat(windows).containsExactlyInAnyOrderElementsOf(without(WINDOWS));
        for (String id : windows) {
            TopComponent window = Screen.onEventThread(() -> {
                TopComponent found = WindowManager.getDefault().findTopComponent(id);
                found.open();
                found.requestActive();
                return found;
            });
            Screen.until(id + " to show", window::isShowing);
            look(window, id);
        }
    }

    @Test
    @Order(2)
    void leavesItsTabsOut() throws Exception {
        Desk desk = OpenDesk.get().current().orElseThrow();
        Stored<Piece> piece = desk.view().all(Piece.TYPE).stream()
                .filter(p -> p.value().standing() == Standing.ON_THE_BENCH)
                .findFirst()
                .orElseThrow();
        Screen.onEventThread(() -> {
            desk.openPiece(piece.id());
            return null;
        });
        Screen.settle();
        TopComponent page =
                Screen.onEventThread(() -> TopComponent.getRegistry().getActivated());
        JTabbedPane tabs =
                Screen.onEventThread(() -> Screen.all(page, JTabbedPane.class).get(0));
        List<String> titles = new ArrayList<>();
        for (int i = 0; i < Screen.onEventThread(tabs::getTabCount); i++) {
            int index = i;
            titles.add(Screen.onEventThread(() -> {
                tabs.setSelectedIndex(index);
                return tabs.getTitleAt(index);
            }));
            look(page, "page-" + titles.get(i).toLowerCase());
        }

        assertThat(titles).containsExactlyElementsOf(without(TABS));
    }

    @Test
    @Order(3)
    void saysWhereOthersNeedIt() {
        TopComponent shelves =
                Screen.onEventThread(() -> WindowManager.getDefault().findTopComponent("ShelvesWindow"));
        Screen.onEventThread(() -> {
            READ.addAll(Menus.opened(() -> Dialogs.button(shelves, "Add").doClick()));
            List<JList<?>> lists = new ArrayList<>();
            Screen.all(shelves, JList.class).forEach(lists::add);
            JList<?> pieces = lists.get(lists.size() - 1);
            pieces.setSelectedIndex(0);
            READ.addAll(Menus.ofRow(pieces));
            return null;
        });
        for (String said : SAID.get(OFF)) {
            assertThat(READ).as("what is said on screen").anyMatch(text -> text.contains(said));
        }
        ITS_OWN.keySet().stream()
                .filter(other -> !other.equals(OFF))
                .forEach(other -> SAID.get(other)
                        .forEach(said ->
                                assertThat(READ).as(other + " is there").noneMatch(text -> text.contains(said))));
    }

    @Test
    @Order(9)
    void logsNoWarning_fromOurPackages() {
        assertThat(OwnWarnings.seen()).isEmpty();
    }

    private static List<String> without(List<String> all) {
        return all.stream().filter(one -> !ITS_OWN.get(OFF).contains(one)).toList();
    }

    private static void look(Container shown, String name) throws Exception {
        Screen.shoot(SelfTestRun.shots(), name);
        Screen.onEventThread(() -> {
            assertThat(Reading.cutOff(shown)).as(name).isEmpty();
            assertThat(Reading.nameless(shown)).as(name).isEmpty();
            Screen.all(shown, JTextComponent.class).stream()
                    .filter(JTextComponent::isShowing)
                    .forEach(text -> READ.add(text.getText()));
            Screen.all(shown, AbstractButton.class).stream()
                    .filter(button -> button.isShowing() && !button.isEnabled())
                    .forEach(button -> READ.add(String.valueOf(button.getToolTipText())));
            return null;
        });
    }
}
