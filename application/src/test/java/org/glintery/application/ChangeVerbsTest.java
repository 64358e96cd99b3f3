package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.glintery.application.ScriptedVerbs.Step;
import org.glintery.records.FaultyWorkshops;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openide.util.Lookup;

/** What a verb changes can be taken back and brought back exactly, and is made whole or not at all. */
class ChangeVerbsTest {

    /** Verbs that change nothing in a workshop that is open: they tell, make files or folders, or walk the history. */
    private static final Set<String> OTHERS = Set.of(
            "bench forecast",
            "chart list",
            "chart make",
            "chart show",
            "colour compare",
            "colour name",
            "drills find",
            "drills ledger",
            "finish list",
            "finish show",
            "holder list",
            "holder show",
            "kit list",
            "kit schema",
            "kit show",
            "piece list",
            "piece show",
            "workshop backup",
            "workshop check",
            "workshop copy",
            "workshop demo",
            "workshop export",
            "workshop history",
            "workshop new",
            "workshop redo",
            "workshop restore",
            "workshop undo");

    private static final Set<String> COVERED = new TreeSet<>();

    @TempDir
    static Path files;

    @TempDir
    Path temp;

    private final FaultyWorkshops faulty = new FaultyWorkshops();

    static Stream<Step> inTurn() {
        return ScriptedVerbs.in(files).steps().stream();
    }

    @ParameterizedTest
    @MethodSource("inTurn")
    void isTakenBackAndBroughtBackExactly_andMadeWholeOrNotAtAll(Step step) throws Exception {
        try (Workshop workshop = before(step)) {
            holds(step, workshop);
        }
    }

    @ParameterizedTest
    @MethodSource("last")
    void takesAnImportBackToo(Step last) throws Exception {
        try (Workshop full = before(last);
                Workshop empty =
                        faulty.workshops().create(temp.resolve("empty")).orThrow()) {
            holds(
                    ScriptedVerbs.in(Files.createDirectory(temp.resolve("export")))
                            .importOf(full),
                    empty);
            assertThat(empty.view().contentDigest()).isEqualTo(full.view().contentDigest());
        }
    }

    static Stream<Step> last() {
        return inTurn().reduce((earlier, later) -> later).stream();
    }

    /** A workshop in which all was done that comes before a step. */
    private Workshop before(Step step) throws Exception {
        Workshop workshop = faulty.workshops().create(temp.resolve("w")).orThrow();
        for (Step earlier : ScriptedVerbs.in(files).steps()) {
            if (earlier.verb().equals(step.verb())) {
                return workshop;
            }
            done(earlier, workshop);
        }
        throw new AssertionError("no such step: " + step);
    }

    private static void done(Step step, Workshop workshop) throws Exception {
        assertThat(step.on(workshop))
                .as(step.verb())
                .satisfiesAnyOf(
                        result -> assertThat(result).isInstanceOf(VerbResult.Said.class),
                        result -> assertThat(result).isEqualTo(new VerbResult.Streamed(false)));
    }

    private void holds(Step step, Workshop workshop) throws Exception {
        String before = workshop.view().contentDigest();
        long revision = workshop.view().revision();
        int faults = 0;
        for (faulty.breakBefore(faults); isBroken(step, workshop); faulty.breakBefore(++faults)) {
            assertThat(workshop.view().contentDigest())
                    .as("after a fault before step %d", faults)
                    .isEqualTo(before);
            assertThat(workshop.view().revision()).isEqualTo(revision);
        }
        faulty.mend();
        assertThat(faults).as("operations that were broken").isPositive();
        String after = workshop.view().contentDigest();
        assertThat(workshop.view().revision()).as("one change").isEqualTo(revision + 1);
        assertThat(after).isNotEqualTo(before);
        for (int again = 0; again < 2; again++) {
            workshop.undo().orThrow();
            assertThat(workshop.view().contentDigest()).as("taken back").isEqualTo(before);
            workshop.redo().orThrow();
            assertThat(workshop.view().contentDigest()).as("brought back").isEqualTo(after);
        }
        assertThat(workshop.check().problems()).isEmpty();
        COVERED.add(step.verb());
    }

    /** Whether the fault came; without it the verb is done. */
    private boolean isBroken(Step step, Workshop workshop) throws Exception {
        try {
            done(step, workshop);
        } catch (FaultyWorkshops.Fault fault) {
            return true;
        }
        assertThat(faulty.wasMet()).as("a fault that nobody was told of").isFalse();
        return false;
    }

    @AfterAll
    static void coveredEveryVerbThatChangesAWorkshop() {
        Set<String> changing = Lookup.getDefault().lookupAll(Verb.class).stream()
                .map(Verb::name)
                .filter(name -> !OTHERS.contains(name))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(changing).as("registered").hasSizeGreaterThanOrEqualTo(14);
        assertThat(COVERED).as("covered").isEqualTo(changing);
    }
}
