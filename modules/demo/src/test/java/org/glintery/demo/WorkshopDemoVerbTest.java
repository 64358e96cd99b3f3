package org.glintery.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.Lookup;

class WorkshopDemoVerbTest {
    private final WorkshopDemoVerb verb = new WorkshopDemoVerb();

    @TempDir
    Path temp;

    private VerbResult run(Path folder, Map<String, String> values) {
        FakeCall call = new FakeCall(folder);
        values.forEach(call::with);
        return verb.run(call);
    }

    @Test
    void makesAndCountsTheDemo_inTheFolderThatIsNamed() {
        Path named = temp.resolve("named");
        var said = (VerbResult.Said) run(temp.resolve("other"), Map.of("folder", named.toString(), "seed", "3"));
        var demo = (WorkshopDemoVerb.Demo) said.answer();
        assertThat(demo.folder()).isEqualTo(named.toString());
        assertThat(demo.kits()).isGreaterThanOrEqualTo(30);
        assertThat(demo.standings()).hasSameSizeAs(Standing.values()).containsEntry("made", 14);
        assertThat(demo.standings().values().stream().mapToInt(i -> i).sum()).isEqualTo(demo.pieces());
        assertThat(demo.movements()).isGreaterThan(1000);
        assertThat(said.text())
                .contains("14 finishes")
                .contains(Balance.grouped(demo.movements()) + " movements")
                .contains("14 made");
        assertThat(Balance.grouped(demo.movements()))
                .as("thousands stand apart")
                .contains("\u2009");
        try (Workshop workshop =
                Lookup.getDefault().lookup(Workshops.class).open(named).orThrow()) {
            assertThat(Settings.of(workshop.view()).orElseThrow().demo()).isTrue();
            assertThat(workshop.check().movements()).isEqualTo(demo.movements());
        }
        assertThat(temp.resolve("other")).doesNotExist();
    }

    @Test
    void isWrongUsage_whenTheSeedIsNoWholeNumber() {
        assertThat(run(temp.resolve("a"), Map.of("seed", "seven"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(temp.resolve("a")).doesNotExist();
    }

    @Test
    void isRefused_whenAWorkshopIsThereAlready() {
        Path folder = temp.resolve("a");
        FilledDemo.empty(folder).close();
        assertThat(run(folder, Map.of())).isInstanceOf(VerbResult.Refused.class);
    }
}
