package org.glintery.application;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.FakeCall;
import org.openide.util.Lookup;

/**
 * One piece's whole job as verbs that change the workshop, in an order in which each is possible, with the files they need.
 *
 * @param folder where those files are
 */
record ScriptedVerbs(Path folder) {
    private static final String PIECE = "Rope-walk";
    private static final String LEGEND = """
        symbol;code;name;shape;needed;supplied
        A;4R2-K;rope brown;round;1840;2000
        B;4R3-M;tar;round;960;1000
        """;
    private static final String CHART = """
        {"columns":3,"rows":2,"lines":[{"symbol":"A","code":"4R2-K","hex":"#a0522d"}],"cells":[[0,0,0],[0,-1,0]]}
        """;

    /** A verb with what it is given. */
    record Step(String verb, UnaryOperator<FakeCall> given) {
        VerbResult on(Workshop workshop) throws Exception {
            return Lookup.getDefault().lookupAll(Verb.class).stream()
                    .filter(registered -> registered.name().equals(verb))
                    .findFirst()
                    .orElseThrow()
                    .run(given.apply(new FakeCall(workshop)));
        }

        @Override
        public String toString() {
            return verb;
        }
    }

    static ScriptedVerbs in(Path folder) {
        try {
            Files.writeString(folder.resolve("legend.csv"), LEGEND);
            Files.writeString(folder.resolve("chart.json"), CHART);
            ImageIO.write(
                    new BufferedImage(30, 40, BufferedImage.TYPE_INT_RGB),
                    "png",
                    folder.resolve("picture.png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new ScriptedVerbs(folder);
    }

    List<Step> steps() {
        String line = Posts.line(UUID.fromString("5a0c1f0e-52b4-4a58-8f3e-1d1b7c0a9e11"), 12);
        return List.of(
                new Step(
                        "kit add",
                        call -> call.with("legend", file("legend.csv"))
                                .with("title", PIECE)
                                .with("source", "Quay shop")
                                .with("cover", file("picture.png"))),
                new Step(
                        "piece edit",
                        call -> call.with("piece", PIECE)
                                .with("sections", "9")
                                .with("kept-at", "Tall shelf")
                                .with("price", "34.50")),
                new Step(
                        "holder add",
                        call -> call.with("name", "Case A")
                                .with("rows", "2")
                                .with("columns", "3")
                                .with("capacity", "1200")),
                new Step("kitup", call -> call.with("piece", PIECE).with("holder", "Case A")),
                new Step("bench start", call -> call.with("piece", PIECE).with("on", "2025-03-02")),
                new Step(
                        "bench sit",
                        call -> call.with("piece", PIECE)
                                .with("symbol", "A=700")
                                .with("minutes", "50")
                                .with("on", "2025-03-02")),
                new Step("bench rest", call -> call.with("piece", PIECE).with("on", "2025-03-03")),
                new Step(
                        "bench complete",
                        call -> call.with("piece", PIECE)
                                .with("on", "2025-04-30")
                                .with("score", "4")),
                new Step("kitdown", call -> call.with("piece", PIECE)),
                new Step("piece again", call -> call.with("piece", PIECE)),
                new Step(
                        "piece frame",
                        call -> call.flagged("not-framed").with("piece", PIECE).with("lives-at", "wall by the stairs")),
                new Step(
                        "finish edit",
                        call -> call.with("piece", PIECE)
                                .with("comments", "Looks best from across the room.")
                                .with("photo", file("picture.png"))),
                new Step("drills post", call -> call.with("file", "-").reading(line.getBytes(StandardCharsets.UTF_8))),
                new Step(
                        "drills move",
                        call -> call.with("code", "T1")
                                .with("from", "bag:b1")
                                .with("to", "bag:b2")
                                .with("count", "5")),
                new Step(
                        "drills stocktake",
                        call -> call.with("code", "T1").with("spot", "bag:b2").with("count", "7")),
                new Step(
                        "chart keep",
                        call -> call.with("file", file("chart.json"))
                                .with("piece", PIECE)
                                .with("title", "Crane")),
                new Step("chart lay", call -> call.with("design", "Crane").with("rows", "1")),
                new Step("workshop keep", call -> call.with("what", "book")));
    }

    /** Brings another workshop in; only an empty one takes it. */
    Step importOf(Workshop other) {
        Path file = folder.resolve("other.json");
        other.exportJson(file).orThrow();
        return new Step("workshop import", call -> call.with("file", file.toString()));
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }
}
