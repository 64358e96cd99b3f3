package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher script does with words, folders, streams, signals and temporary files. */
@Order(7)
class LauncherTest {

    @TempDir
    Path folder;

    private GlinteryDo glinteryDo;

    @BeforeEach
    void open() {
        glinteryDo = GlinteryDo.in(folder);
    }

    @Test
    void listsTheVerbsByFeature_onStandardOutputAlone() {
        Ran ran = glinteryDo.run("--help").done();
        assertThat(ran.out()).contains("\nstash\n  drills find ", "\nworkshop\n  workshop backup ");
        assertThat(ran.err()).isEmpty();
        assertNothingIsLeft();
    }

    @Test
    void passesWordsUntouched_whateverTheyHold() {
        String odd = "a b'c\"d\n$(touch gone) `touch gone` ü\u2728 * \\ %s";
        Ran ran = glinteryDo.with("LC_ALL", "C").run(odd, "--", "");
        ran.refused(2, "There is no verb '" + odd + " --'.");
        assertThat(folder.resolve("gone")).doesNotExist();
        assertNothingIsLeft();
    }

    @Test
    void makesTheUsualWorkshopInTheHomeOfTheUser_onceSomethingIsAdded_andSaysSo() {
        Path usual = folder.resolve("Glintery");
        assertThat(glinteryDo.run("kit", "list").done().err()).isEmpty();
        glinteryDo.run("kit", "add", "--title", "Rope-walk", "--preview").done();
        glinteryDo.run("kit", "add", "none.csv").refused(1, "none.csv");
        assertThat(usual).as("made without anything to put into it").doesNotExist();

        Ran made = glinteryDo.run("kit", "add", "--title", "Rope-walk").done();
        assertThat(made.err()).contains("A new one was made in " + usual);
        assertThat(glinteryDo.run("workshop", "check").done().err()).isEmpty();
    }

    @Test
    void takesPathsAsTheCallerMeansThem_alsoThroughALink() throws IOException {
        Path elsewhere = Files.createDirectories(folder.resolve("Über das Wasser/a $HOME"));
        Path link = Files.createSymbolicLink(folder.resolve("short"), GlinteryDo.LAUNCHER);
        GlinteryDo linked = new GlinteryDo(elsewhere, glinteryDo.variables(), List.of());
        Process process =
                linked.with("LC_ALL", "C").start(List.of(link.toString(), "workshop", "new", "--workshop", "mine"));
        GlinteryDo.finish(process, "").done();
        assertThat(elsewhere.resolve("mine")).isDirectory();
        linked.with("GLINTERY_WORKSHOP", "mine").run("workshop", "check").done();
    }

    @Test
    void saysWhatIsMissing_whenThereIsNoJava() throws IOException {
        Path tools =
                Files.createDirectories(Path.of("target/tools-without-java").toAbsolutePath());
        for (String tool : List.of("bash", "env", "uname", "dirname", "readlink", "mktemp", "rm", "mkdir", "cat")) {
            Path real = Stream.of("/usr/bin/" + tool, "/bin/" + tool)
                    .map(Path::of)
                    .filter(Files::exists)
                    .findFirst()
                    .orElseThrow();
            Files.deleteIfExists(tools.resolve(tool));
            Files.createSymbolicLink(tools.resolve(tool), real);
        }
        Ran ran =
                glinteryDo.with("PATH", tools.toString()).with("JAVA_HOME", "").run("--help");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).startsWith("Glintery needs Java 17 or newer and found none.");
    }

    @Test
    void saysThatItCouldNotStart_whenJavaItselfFails() {
        Ran ran = glinteryDo.with("JAVA_TOOL_OPTIONS", "-agentlib:nosuchagent").run("workshop", "check");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).endsWith("Glintery could not be started. Nothing was changed.\n");
        assertThat(ran.out()).isEmpty();
        assertNothingIsLeft();
    }

    @Test
    void endsQuietly_whenNobodyReadsOn() throws Exception {
        glinteryDo.run("workshop", "new").done();
        glinteryDo.withInput(Posts.lines(3000), "drills", "post", "-").done();
        Process process =
                glinteryDo.start(List.of("/bin/bash", "-c", "'" + GlinteryDo.LAUNCHER + "' drills ledger | head -n 1"));
        Ran ran = GlinteryDo.finish(process, "").done();
        assertThat(ran.out().lines()).hasSize(1);
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void saysHowFarItCame_whenNobodyReadsWhatIsBooked() throws Exception {
        glinteryDo.run("workshop", "new").done();
        Path lines = glinteryDo.file("lines", Posts.lines(3000));
        Ran ran = inShell(
                "'" + GlinteryDo.LAUNCHER + "' drills post - <'" + lines + "' | head -n 5; exit ${PIPESTATUS[0]}");
        ran.refused(1, "Stopped at answer ", "because nobody reads the answers any more");
        assertThat(ran.out().lines()).hasSize(5);
        String booked = glinteryDo.run("drills", "ledger", "--json").done().out();
        assertThat(ran.out().lines()).allMatch(booked::contains);
        assertThat(booked.lines().count()).as("the rest was not booked").isLessThan(3000);
    }

    @Test
    void readsNothing_whenStandardInputIsClosed() {
        glinteryDo.run("workshop", "new").done();
        Ran ran = inShell("'" + GlinteryDo.LAUNCHER + "' drills post - <&-").done();
        assertThat(ran.out() + ran.err()).isEmpty();
    }

    @Test
    void refuses_whenStandardOutputIsClosed() {
        Ran ran = inShell("'" + GlinteryDo.LAUNCHER + "' kit add --title Ferry >&-");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo("Standard output is closed, so nothing could be answered. Nothing was done.\n");
        assertThat(folder.resolve("Glintery")).doesNotExist();
        assertNothingIsLeft();
    }

    @Test
    void answersAllTheSame_whenStandardErrorIsClosed() {
        glinteryDo.run("workshop", "new").done();
        Ran ran = inShell("'" + GlinteryDo.LAUNCHER + "' kit list --json 2>&-").done();
        assertThat(ran.json().size()).isPositive();
    }

    private Ran inShell(String line) {
        return GlinteryDo.finish(glinteryDo.start(List.of("/bin/bash", "-c", line)), "");
    }

    @Test
    void clearsAwayAfterItself_whenItIsToldToStop() throws Exception {
        glinteryDo.run("workshop", "new").done();
        Process process = glinteryDo.start("drills", "post", "-");
        process.getOutputStream().write(Posts.lines(1).getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().flush();
        var out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        assertThat(out.readLine()).isNotBlank();
        ProcessHandle java = Posts.java(process);
        process.destroy();
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(143);
        java.onExit().get(30, TimeUnit.SECONDS);
        assertNothingIsLeft();
    }

    private void assertNothingIsLeft() {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .noneMatch(name -> name.startsWith("glintery-do."));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
