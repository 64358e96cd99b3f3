package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sample add-on beside the packaged application, and what stays of it when it is not there. */
@Order(6)
class AddonSampleTest {
    @TempDir
    Path folder;

    private GlinteryDo without;
    private GlinteryDo with;

    @BeforeEach
    void makeAPiece() {
        assertThat(Jars.SAMPLE).as("the sample").exists();
        without = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "mine");
        with = without.with("extra_clusters", Jars.SAMPLE_CLUSTER.toString());
        without.run("workshop", "new").done();
        without.run("kit", "add", "--title", "Net loft").done();
        without.run("bench", "start", "Net loft").done();
        without.run("bench", "complete", "Net loft").done();
    }

    @Test
    void runsItsVerb() {
        JsonNode noted = with.run("care", "note", "Net loft", "Dusted", "--on", "about March 2026", "--json")
                .done()
                .json();
        assertThat(noted.path("on").asText()).isEqualTo("2026-03~");
        assertThat(noted.path("words").asText()).isEqualTo("Dusted");
        assertThat(noted.path("notes").asInt()).isEqualTo(1);

        with.run("care", "note", "Net loft", " ").refused(2, "WORDS is empty");
        with.run("kit", "add", "--title", "Crane").done();
        with.run("care", "note", "Crane", "Dusted").refused(1, "Crane is not made yet");
        with.run("care", "note", "Breakwater", "Dusted").refused(2, "Breakwater");
    }

    @Test
    void saysThatThereIsNoSuchVerb_andKeepsItsDocuments_whenItIsAbsent() throws IOException {
        with.run("care", "note", "Net loft", "Dusted", "--on", "2026-03-31").done();

        without.run("care", "note", "Net loft", "Dusted").refused(2, "There is no verb 'care note");
        assertThat(without.run("--help").done().out()).doesNotContain("care note");
        without.run("workshop", "check").done();
        assertThat(careNotes("one.json"))
                .singleElement()
                .matches(note -> note.path("body").path("words").asText().equals("Dusted"))
                .matches(note -> note.path("body").path("on").asText().equals("2026-03-31"));
        without.run("workshop", "new", "--workshop", "second").done();
        without.run("workshop", "import", "one.json", "--workshop", "second").done();

        JsonNode again = with.run("care", "note", "Net loft", "Pressed a drill back", "--json", "--workshop", "second")
                .done()
                .json();
        assertThat(again.path("notes").asInt()).as("notes found again").isEqualTo(2);
    }

    private List<JsonNode> careNotes(String file) throws IOException {
        without.run("workshop", "export", file).done();
        JsonNode export = Ran.parse(Files.readString(folder.resolve(file)));
        return StreamSupport.stream(export.path("documents").spliterator(), false)
                .filter(document -> document.path("owner").asText().equals("care"))
                .toList();
    }
}
