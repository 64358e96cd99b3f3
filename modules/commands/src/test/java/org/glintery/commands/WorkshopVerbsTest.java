package org.glintery.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.glintery.api.Json;
import org.glintery.api.verb.Verb;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.Lookup;

class WorkshopVerbsTest {

    private static final List<Verb> VERBS = new ArrayList<>(Lookup.getDefault().lookupAll(Verb.class));

    @TempDir
    Path home;

    @BeforeEach
    void make() {
        assertThat(VERBS).hasSizeGreaterThanOrEqualTo(9);
        assertThat(run("workshop", "new", "--currency", "nok").out())
                .isEqualTo("Made a workshop in " + usual() + ".\n");
    }

    @Test
    void undoesAndRedoes_andTellsTheHistory() {
        assertThat(run("workshop", "undo").out()).isEqualTo("Undone: Set the workshop up.\n");
        assertThat(run("workshop", "undo").ending()).isEqualTo(Ending.REFUSED);
        assertThat(run("workshop", "redo").out()).isEqualTo("Done again: Set the workshop up.\n");
        assertThat(run("workshop", "history").out().lines()).hasSize(4);
        assertThat(run("workshop", "history", "--most", "1").out().lines()).hasSize(2);
        assertThat(run("workshop", "history", "--most", "0").ending()).isEqualTo(Ending.WRONG_USAGE);
    }

    @Test
    void exportsAndImports_andRefusesToImportIntoAFullWorkshop() {
        assertThat(run("workshop", "export", "all.json").out()).startsWith("Exported to " + home.resolve("all.json"));
        assertThat(run("workshop", "import", "all.json").ending()).isEqualTo(Ending.REFUSED);
        run("workshop", "new", "--workshop", "empty");
        assertThat(run("workshop", "import", "all.json", "--workshop", "empty").out())
                .startsWith("Imported ");
        assertThat(run("workshop", "export").err()).startsWith("Name either FILE.json or --tables FILE.zip.\n");
    }

    @Test
    void backsUpAndRestores_intoTheNamedFolder() {
        run("workshop", "backup", "copy.zip");
        assertThat(home.resolve("copy.zip")).isNotEmptyFile();
        CapturedRun restored = run("workshop", "restore", "copy.zip", "--workshop", "second", "--json");
        assertThat(restored.ending()).isEqualTo(Ending.DONE);
        assertThat(restored.json().number("documents"))
                .hasValueSatisfying(n -> assertThat(n).isOne());
        assertThat(run("workshop", "check", "--workshop", "second").out())
                .isEqualTo("All is well: 1 document, 0 movements, 0 pictures.\n");
        assertThat(run("workshop", "restore", "copy.zip", "--workshop", "second")
                        .ending())
                .isEqualTo(Ending.REFUSED);
    }

    @Test
    void copiesIntoASecondFolder_onceForWhatChanged() throws Exception {
        Path stick = Files.createDirectory(home.resolve("stick"));
        CapturedRun first = run("workshop", "copy", "stick", "--json");
        assertThat(first.json().get("made")).contains(new Json.Flag(true));
        Path copy = Path.of(first.json().text("file").orElseThrow());
        assertThat(copy).isNotEmptyFile().hasParent(stick);

        assertThat(run("workshop", "copy", "stick").out())
                .isEqualTo("Nothing changed since it was copied to " + copy + ".\n");
        run("workshop", "undo");
        assertThat(run("workshop", "copy", "stick").out()).startsWith("Copied to " + stick);
        assertThat(stick.toFile().list()).hasSize(2);
    }

    @Test
    void refusesToCopy_whereNoFolderIsOrInsideTheWorkshop() {
        CapturedRun nowhere = run("workshop", "copy", "stick", "--json");
        assertThat(nowhere.ending()).isEqualTo(Ending.REFUSED);
        assertThat(nowhere.refused().text("code")).contains("no-folder");
        assertThat(run("workshop", "copy", "Glintery").err()).contains("inside the workshop's own folder");
    }

    @Test
    void helpOfAnImportTellsOfImports() {
        assertThat(run("workshop", "import", "--help").out())
                .contains("an export as JSON", "an export as tables instead")
                .doesNotContain("everything as");
        assertThat(run("workshop", "export", "--help").out())
                .contains("everything as JSON", "everything as tables for a spreadsheet instead");
    }

    @Test
    void makesAndRestores_intoAFolderGivenByItsPlace() {
        assertThat(run("workshop", "new", "third").out())
                .isEqualTo("Made a workshop in " + home.resolve("third") + ".\n");
        run("workshop", "backup", "copy.zip", "--workshop", "third");
        assertThat(run("workshop", "restore", "copy.zip", "fourth").ending()).isEqualTo(Ending.DONE);
        assertThat(run("workshop", "check", "--workshop", "fourth").ending()).isEqualTo(Ending.DONE);
    }

    @Test
    void refusesAFolderWithoutAWorkshop_whenItIsNamed() {
        CapturedRun run = run("workshop", "check", "--workshop", "nowhere", "--json");
        assertThat(run.ending()).isEqualTo(Ending.REFUSED);
        assertThat(run.refused().text("code")).contains("no-workshop");
        assertThat(Files.exists(home.resolve("nowhere"))).isFalse();
    }

    @Test
    void saysThatThereIsNoSuchFile() {
        String none = "There is no file " + home.resolve("none") + ". Nothing was changed.\n";
        assertThat(run("workshop", "restore", "none", "--workshop", "x").err()).isEqualTo(none);
        assertThat(run("workshop", "import", "none").err()).isEqualTo(none);
        assertThat(run("workshop", "import", "--tables", "none").err()).isEqualTo(none);
        assertThat(Files.exists(home.resolve("x"))).isFalse();
    }

    @Test
    void refusesACurrencyThatIsNone() {
        assertThat(run("workshop", "new", "--workshop", "x", "--currency", "shells")
                        .ending())
                .isEqualTo(Ending.WRONG_USAGE);
        assertThat(Files.exists(home.resolve("x"))).isFalse();
    }

    private Path usual() {
        return home.resolve("Glintery");
    }

    private CapturedRun run(String... words) {
        return CapturedRun.of(home, VERBS, new KnownVerbs(Map.of()), words);
    }
}
