package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One piece from the shelf to the wall through the packaged application, then out and in again. */
@Order(4)
class MainJobTest {
    private static final String LEGEND = """
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
        ImageIO.write(
                new BufferedImage(30, 40, BufferedImage.TYPE_INT_RGB),
                "png",
                folder.resolve("box.png").toFile());
        answer(first, "workshop", "new");
        Ran shelved = answer(first, "kit", "add", "--title", PIECE, "--legend", "legend.csv", "--cover", "box.png");
        assertThat(shelved.err()).as("a repeated symbol is told").contains("B");
        answer(first, "holder", "add", "Case A", "--rows", "2", "--columns", "3", "--capacity", "1200");
        answer(first, "kitup", PIECE, "Case A");
        answer(first, "bench", "start", PIECE, "--on", "2026-10-02");
        answer(first, "bench", "sit", PIECE, "--symbol", "A=700", "--minutes", "50", "--on", "2026-10-02");
        answer(first, "bench", "sit", PIECE, "--percent", "20", "--on", "about October");
        answer(first, "bench", "sit", PIECE, "--drills", "500", "--on", "2026-10-08");
        answer(first, "bench", "forecast", PIECE);
        answer(first, "bench", "complete", PIECE, "--on", "2026-10-30", "--score", "4");

        answer(first, "workshop", "export", "before-kit-down.json");
        assertThat(onCanvas(export("before-kit-down.json")))
                .as("every drill of the legend is on the canvas")
                .isEqualTo(1840 + 960 + 420);

        answer(first, "kitdown", PIECE);
        assertThat(answer(first, "drills", "find", "4R2-K").out()).contains("bag");
        answer(
                first,
                "piece",
                "frame",
                PIECE,
                "--frame",
                "--width",
                "300",
                "--height",
                "400",
                "--moulding-width",
                "20",
                "--lip",
                "6",
                "--rebate",
                "14",
                "--lives-at",
                "wall by the stairs");
        answer(first, "finish", "edit", PIECE, "--comments", "Looks best from across the room.");
        answer(first, "workshop", "check");
        answer(first, "workshop", "export", "one.json");

        GlinteryDo second = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "two");
        answer(second, "workshop", "new");
        answer(second, "workshop", "import", "one.json");
        answer(second, "workshop", "export", "two.json");
        assertEqual(export("one.json"), export("two.json"));

        answer(first, "workshop", "backup", "one.zip");
        GlinteryDo third = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "three");
        answer(third, "workshop", "restore", "one.zip");
        answer(third, "workshop", "export", "three.json");
        assertEqual(export("one.json"), export("three.json"));
        answer(third, "workshop", "undo");
        assertThat(answer(third, "finish", "show", PIECE).out()).doesNotContain("across the room");
        answer(third, "workshop", "redo");
        assertThat(answer(third, "finish", "show", PIECE).out()).contains("across the room");
        answer(third, "workshop", "history");
    }

    /** Runs a verb, which has to answer as its committed schema says. */
    private static Ran answer(GlinteryDo glinteryDo, String... words) {
        String[] asked =
                Stream.concat(Arrays.stream(words), Stream.of("--json")).toArray(String[]::new);
        Ran ran = glinteryDo.run(asked).done();
        boolean oneWord = words[0].equals("kitup") || words[0].equals("kitdown");
        Schemas.check(oneWord ? words[0] : words[0] + "-" + words[1], ran.out());
        return ran;
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
        assertThat(items(one, "blobs")).hasSize(1);
        Set<String> types = items(one, "documents").stream()
                .map(document -> document.path("type").asText())
                .collect(Collectors.toSet());
        assertThat(types).contains("kit", "piece", "legend", "card", "sitting", "finish", "holder", "bag", "plan");
    }

    private static List<JsonNode> items(JsonNode export, String part) {
        return StreamSupport.stream(export.path(part).spliterator(), false).toList();
    }
}
