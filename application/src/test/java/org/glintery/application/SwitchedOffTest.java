package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.glintery.testkit.LeftOut;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each feature switched off in the platform's own way: the others go on, its verbs say so, its data stay. */
@TestInstance(Lifecycle.PER_CLASS)
@Order(1)
class SwitchedOffTest {

    /** A feature with one of its verbs. */
    private record Feature(String name, String... verb) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static final List<Feature> FEATURES = List.of(
            new Feature("stash", "kit", "list"),
            new Feature("activework", "bench", "forecast", "Net loft"),
            new Feature("finishes", "finish", "list"),
            new Feature("storage", "holder", "list"),
            new Feature("framing", "piece", "frame", "Net loft"),
            new Feature("charts", "colour", "name", "a0522d"));

    /** What each feature does for a piece that is on the bench. */
    private static final Map<String, List<String>> WORK = Map.of(
            "stash", List.of("kit", "add", "--title", "Rope-walk"),
            "activework", List.of("bench", "sit", "Net loft", "--minutes", "30"),
            "finishes", List.of("finish", "edit", "Net loft", "--comments", "quiet evenings"),
            "storage", List.of("holder", "add", "Case B"),
            "framing", List.of("piece", "frame", "Net loft", "--not-framed"),
            "charts", List.of("colour", "compare", "50,10,10", "50,10,12"));

    private static final String LAUNCHER =
            GlinteryDo.HOME.resolve("bin/glintery").toString();
    private static final int TESTS_INSIDE = 4;

    private Path folder;
    private JsonNode contents;

    static Stream<Feature> features() {
        return FEATURES.stream();
    }

    @BeforeAll
    void switchOff(@TempDir Path scratch) throws IOException {
        folder = scratch;
        GlinteryDo glinteryDo = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "all");
        glinteryDo.run("workshop", "new").done();
        glinteryDo.run("kit", "add", "--title", "Net loft").done();
        glinteryDo.run("bench", "start", "Net loft").done();
        glinteryDo.run("holder", "add", "Case A").done();
        glinteryDo.withInput(Posts.lines(3), "drills", "post", "-").done();
        contents = exported(glinteryDo);
        List<CompletableFuture<Ran>> disabling = new ArrayList<>();
        for (Feature feature : FEATURES) {
            copy(folder.resolve("all"), folder.resolve("without-" + feature.name()));
            // direct: a plain --disable drops what has to be done at the next start, so that nothing is switched off;
            // side by side: the platform idles for a quarter of a minute after an option without an end of its own
            Process process = glinteryDo.start(command(
                    feature,
                    "--nogui",
                    "-J-Djava.awt.headless=true",
                    "--modules",
                    "--direct-disable",
                    "org.glintery." + feature.name()));
            disabling.add(CompletableFuture.supplyAsync(() -> GlinteryDo.finish(process, ""), GlinteryDo.THREADS));
        }
        disabling.forEach(ran -> ran.join().done());
    }

    @ParameterizedTest
    @MethodSource("features")
    void itsVerbsSayThatItIsOff(Feature feature) {
        without(feature).run(feature.verb()).refused(2, "The " + feature.name() + " feature is switched off.");
    }

    @ParameterizedTest
    @MethodSource("features")
    void theOthersGoOn_andItsDataStay(Feature feature) {
        GlinteryDo glinteryDo = without(feature);
        List<String> names = new ArrayList<>();
        glinteryDo
                .run("--help", "--json")
                .done()
                .json()
                .get("features")
                .forEach(f -> names.add(f.get("name").asText()));
        assertThat(names).doesNotContain(feature.name());
        FEATURES.stream()
                .filter(f -> !f.equals(feature))
                .forEach(f -> assertThat(names).contains(f.name()));
        Feature other = feature.name().equals("stash") ? FEATURES.get(3) : FEATURES.get(0);
        assertThat(glinteryDo.run(other.verb()).done().out())
                .contains(other.name().equals("stash") ? "Net loft" : "Case A");
        assertThat(exported(glinteryDo)).isEqualTo(contents);
    }

    @ParameterizedTest
    @MethodSource("features")
    void eachOfTheOthersDoesItsWork(Feature feature) throws IOException {
        Map<String, CompletableFuture<Ran>> work = new TreeMap<>();
        for (Feature other : FEATURES) {
            if (!other.equals(feature)) {
                String workshop = other.name() + "-without-" + feature.name();
                copy(folder.resolve("all"), folder.resolve(workshop));
                GlinteryDo glinteryDo = without(feature).with("GLINTERY_WORKSHOP", workshop);
                String[] verb = WORK.get(other.name()).toArray(String[]::new);
                work.put(other.name(), CompletableFuture.supplyAsync(() -> glinteryDo.run(verb), GlinteryDo.THREADS));
            }
        }
        assertThat(work).hasSize(FEATURES.size() - 1);
        work.values().forEach(ran -> ran.join().done());
    }

    /** The self-test that runs inside tells its windows, its tabs and what others say. */
    @ParameterizedTest
    @MethodSource("features")
    @ResourceLock(Display.LOCK)
    void theWindowOpensAllTheSame(Feature feature) throws Exception {
        LeftOut.unless(Display.isThere(), "a display, such as xvfb-run makes");
        Path told = folder.resolve("told-" + feature.name());
        GlinteryDo glinteryDo = without(feature)
                .with("DISPLAY", Display.name())
                .with("extra_clusters", Display.selfTest().toString());
        Process process = glinteryDo.start(command(
                feature,
                "-J-Dglintery.workshop=" + folder.resolve("without-" + feature.name()),
                "-J-Dglintery.selftest=" + told,
                "-J-Dglintery.selftest.what=switched-off",
                "-J-Dglintery.selftest.off=" + feature.name()));
        Ran ran = GlinteryDo.finish(process, "");

        assertThat(told.resolve("results.xml")).as(ran.out() + ran.err()).exists();
        assertThat(Files.readString(told.resolve("results.xml")))
                .contains("tests=\"" + TESTS_INSIDE + "\"")
                .contains("failures=\"0\"");
        ran.done();
        assertThat(Files.readString(userDirectory(feature).resolve("var/log/messages.log")))
                .doesNotContain("WARNING [org.glintery", "SEVERE [org.glintery");
    }

    private List<String> command(Feature feature, String... more) {
        List<String> command = new ArrayList<>(List.of(
                LAUNCHER,
                "--userdir",
                userDirectory(feature).toString(),
                "--cachedir",
                folder.resolve("cache-" + feature.name()).toString(),
                "--nosplash",
                "-J-XX:TieredStopAtLevel=1",
                "-J-XX:+UseSerialGC"));
        command.addAll(List.of(more));
        return command;
    }

    private Path userDirectory(Feature feature) {
        return folder.resolve("user-" + feature.name());
    }

    private GlinteryDo without(Feature feature) {
        Map<String, String> variables = new HashMap<>(GlinteryDo.in(folder).variables());
        variables.put("GLINTERY_WORKSHOP", "without-" + feature.name());
        variables.put("GLINTERY_USERDIR", userDirectory(feature).toString());
        return new GlinteryDo(folder, variables, List.of());
    }

    private JsonNode exported(GlinteryDo glinteryDo) {
        try {
            Path file = Files.createTempDirectory(folder, "export").resolve("all.json");
            glinteryDo.run("workshop", "export", file.toString()).done();
            return Ran.parse(Files.readString(file)).get("documents");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectory(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
    }
}
