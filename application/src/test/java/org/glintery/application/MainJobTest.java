package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One piece from the shelf to the wall through the packaged application, then out and in again. */
class MainJobTest {
    private static final String LEGEND =
            """
            Symbol;Colour code;Colour name;Hex;Shape;Needed;Bags;Remark
            A;4R2-K;Slate blue;#4a6a8a;square;1.840;10;sky
            B;2C1-M;Tar black;#22252a;square;960;5;
            B;7D3-P;Rope yellow;#d8b36a;square;420;3;"the ""long"" rope"
            """;
    private static final String PIECE = "Rope-walk";

    @TempDir
    Path folder;

    @Test
    void carriesAPieceFromShelfToWall_andIntoASecondWorkshop() throws IOException {
        GlinteryDo first = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "one");
        first.file("legend.csv", LEGEND);
        first.run("workshop", "new").done();
        Ran shelved = first.run("kit", "add", "--title", PIECE, "--legend", "legend.csv").done();
        assertThat(shelved.err()).as("a repeated symbol is told").contains("B");
        first.run("holder", "add", "Case A", "--rows", "2", "--columns", "3", "--capacity", "1200").done();
        first.run("kitup", PIECE, "Case A").done();
        first.run("bench", "start", PIECE, "--on", "2026-10-02").done();
        first.run("bench", "sit", PIECE, "--symbol", "A=700", "--minutes", "50", "--on", "2026-10-02").done();
        first.run("bench", "sit", PIECE, "--percent", "20", "--on", "about October").done();
        first.run("bench", "sit", PIECE, "--drills", "500", "--on", "2026-10-08").done();
        first.run("bench", "forecast", PIECE).done();
        first.run("bench", "complete", PIECE, "--on", "2026-10-30", "--score", "4").done();

        first.run("workshop", "export", "before-kit-down.json").done();
        assertThat(onCanvas(export("before-kit-down.json"))).as("every drill of the legend is on the canvas").isEqualTo(1840 + 960 + 420);

        first.run("kitdown", PIECE).done();
        assertThat(first.run("drills", "find", "4R2-K").done().out()).contains("bag");
        first.run(
                        "piece", "frame", PIECE, "--frame", "--width", "300", "--height", "400", "--moulding-width", "20",
                        "--lip", "6", "--rebate", "14", "--lives-at", "wall by the stairs")
                .done();
        first.run("finish", "edit", PIECE, "--comments", "Looks best from across the room.").done();
        first.run("workshop", "check").done();
        first.run("workshop", "export", "one.json").done();

        GlinteryDo second = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "two");
        second.run("workshop", "new").done();
        second.run("workshop", "import", "one.json").done();
        second.run("workshop", "export", "two.json").done();
        assertEqual(export("one.json"), export("two.json"));

        first.run("workshop", "backup", "one.zip").done();
        GlinteryDo third = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "three");
        third.run("workshop", "restore", "one.zip").done();
        third.run("workshop", "export", "three.json").done();
        assertEqual(export("one.json"), export("three.json"));
        third.run("workshop", "undo").done();
        assertThat(third.run("finish", "show", PIECE).done().out()).doesNotContain("across the room");
    }

    private JsonNode export(String name) throws IOException {
        return Ran.parse(Files.readString(folder.resolve(name)));
    }

    private static long onCanvas(JsonNode export) {
        return items(export, "ledger").stream()
                .filter(entry -> entry.path("to").asText().startsWith("canvas:"))
                .mapToLong(entry -> entry.path("amount").path("count").asLong())
                .sum();
    }

    private static void assertEqual(JsonNode one, JsonNode two) {
        for (String part : List.of("documents", "ledger", "blobs")) {
            assertThat(items(two, part)).as(part).isEqualTo(items(one, part));
        }
        assertThat(items(one, "ledger")).hasSizeGreaterThan(10);
        Set<String> types = items(one, "documents").stream()
                .map(document -> document.path("type").asText())
                .collect(Collectors.toSet());
        assertThat(types).contains("kit", "piece", "legend", "card", "sitting", "finish", "holder", "bag", "plan");
    }

    private static List<JsonNode> items(JsonNode export, String part) {
        return StreamSupport.stream(export.path(part).spliterator(), false).toList();
    }
}
