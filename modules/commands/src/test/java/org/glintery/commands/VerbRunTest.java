package org.glintery.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerbRunTest {

    private static final KnownVerbs KNOWN = new KnownVerbs(Map.of("sing loud", "music", "say", "speech"));

    @TempDir
    Path home;

    @Test
    void printsTheAnswerAsTextOrAsOneObject() {
        CapturedRun text = run(SpokenVerb.echo("say"), "say", "hello");
        assertThat(text).isEqualTo(new CapturedRun(Ending.DONE, "heard hello\n", ""));
        CapturedRun json = run(SpokenVerb.echo("say"), "say", "hello", "--json");
        assertThat(json.json().text("said")).contains("hello");
        assertThat(json.err()).isEmpty();
    }

    @Test
    void sendsNoControlCharacters_butLineBreaksAndTabs() {
        Verb loud = new SpokenVerb("say", call -> {
            call.say("aside\u001b[2J");
            call.line(new SpokenVerb.Echo(Optional.of("a\u009b"), List.of(), false), "line\u0007\r");
            return VerbResult.said(
                    new SpokenVerb.Echo(Optional.of("b\u007f\u2028"), List.of(), false), "one\n\ttwo\u001b]0;x\u0007");
        });
        CapturedRun text = run(loud, "say", "x");
        assertThat(text.out()).isEqualTo("line\\u0007\\u000d\none\n\ttwo\\u001b]0;x\\u0007\n");
        assertThat(text.err()).isEqualTo("aside\\u001b[2J\n");
        String json = run(loud, "say", "x", "--json").out();
        assertThat(json).contains("a\\u009b").contains("b\\u007f\\u2028");
        assertThat(json.chars().filter(Character::isISOControl)).containsOnly((int) '\n');
    }

    @Test
    void takesCommonOptionsBeforeTheVerbToo() {
        CapturedRun run = run(SpokenVerb.echo("say it"), "--json", "--workshop", "say", "say", "it", "hello");
        assertThat(run.json().text("said")).contains("hello");
    }

    @Test
    void tellsARefusalAside_butUnderJsonAsTheAnswer() {
        Verb refusing = new SpokenVerb("say", call -> VerbResult.refused("too-late", "It is too late."));
        assertThat(run(refusing, "say", "x")).isEqualTo(new CapturedRun(Ending.REFUSED, "", "It is too late.\n"));
        CapturedRun json = run(refusing, "say", "x", "--json");
        assertThat(json.ending()).isEqualTo(Ending.REFUSED);
        assertThat(json.refused().text("code")).contains("too-late");
        assertThat(json.refused().text("text")).contains("It is too late.");
        assertThat(json.err()).isEmpty();
    }

    @Test
    void endsWithOne_whenSomeLinesOfAStreamWereRefused() {
        Verb streaming = new SpokenVerb("say", call -> {
            call.line(new SpokenVerb.Echo(Optional.of("a"), List.of(), false), "a");
            call.say("aside");
            return new VerbResult.Streamed(true);
        });
        assertThat(run(streaming, "say", "x")).isEqualTo(new CapturedRun(Ending.REFUSED, "a\n", "aside\n"));
    }

    @Test
    void printsALongAnswer_asOneObjectOrALineForEachItem() {
        Verb listing = new SpokenVerb("say", call -> {
            call.list("echoes", each -> {
                for (int i = 0; i < 3_000; i++) {
                    each.accept(new SpokenVerb.Echo(Optional.of("é" + i), List.of(), false), "é" + i);
                }
            });
            return new VerbResult.Streamed(false);
        });
        CapturedRun json = run(listing, "say", "x", "--json");
        Json.Arr echoes = (Json.Arr) json.json().get("echoes").orElseThrow();
        assertThat(echoes.items()).hasSize(3_000);
        assertThat(((Json.Obj) echoes.items().get(2_999)).text("said")).contains("é2999");
        assertThat(json.out().lines().skip(1).limit(3_000)).allMatch(line -> line.startsWith("{\"said\":"));
        assertThat(run(listing, "say", "x").out().lines())
                .hasSize(3_000)
                .startsWith("é0")
                .endsWith("é2999");
    }

    @Test
    void printsAnEmptyAnswer_asAnEmptyList() {
        Verb listing = new SpokenVerb("say", call -> {
            call.list("echoes", each -> {});
            return new VerbResult.Streamed(false);
        });
        assertThat(run(listing, "say", "x", "--json")).isEqualTo(new CapturedRun(Ending.DONE, "{\"echoes\":[]}\n", ""));
        assertThat(run(listing, "say", "x")).isEqualTo(new CapturedRun(Ending.DONE, "", ""));
    }

    /** What is printed is not kept: a list of two gigabytes fits into a memory of much less. */
    @Test
    void keepsNothingOfALongAnswer() {
        String item = "x".repeat(1_000);
        long[] printed = {0};
        OutputStream counting = new OutputStream() {
            @Override
            public void write(int b) {
                printed[0]++;
            }

            @Override
            public void write(byte[] some, int from, int length) {
                printed[0] += length;
            }
        };
        Verb listing = new SpokenVerb("say", call -> {
            call.list("echoes", each -> {
                for (int i = 0; i < 2_000_000; i++) {
                    each.accept(item, item);
                }
            });
            return new VerbResult.Streamed(false);
        });
        assertThat(CapturedRun.into(counting, home, List.of(listing), "say", "x")
                        .ending())
                .isEqualTo(Ending.DONE);
        assertThat(printed[0]).isEqualTo(2_000_000L * 1_001);
        assertThat(printed[0]).as("more than could be kept").isGreaterThan(Integer.MAX_VALUE - 200_000_000L);
    }

    @Test
    void saysWhereMoreIsTold_whenCalledWrongly() {
        CapturedRun run = run(SpokenVerb.echo("say"), "say");
        assertThat(run.ending()).isEqualTo(Ending.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo("WORDS is missing: what to say.\n'glintery-do say --help' tells more.\n");
    }

    @Test
    void namesWhatMayHaveBeenMeant() {
        Verb choosy = new SpokenVerb("say", call -> new VerbResult.WrongUsage("Which one?", List.of("a", "b")));
        CapturedRun run = run(choosy, "say", "x", "--json");
        assertThat(run.ending()).isEqualTo(Ending.WRONG_USAGE);
        assertThat(run.err()).contains("Which one?\nPerhaps you mean:\n  a\n  b\n");
        assertThat(run.refused().get("candidates"))
                .contains(new Json.Arr(List.of(new Json.Text("a"), new Json.Text("b"))));
    }

    @Test
    void namesVerbsThatAreNear_whenThereIsNoSuchVerb() {
        CapturedRun run = run(SpokenVerb.echo("say it"), "sya", "it");
        assertThat(run.ending()).isEqualTo(Ending.WRONG_USAGE);
        assertThat(run.err()).startsWith("There is no verb 'sya it'.\nPerhaps you mean:\n  say it\n");
    }

    @Test
    void saysThatAFeatureIsSwitchedOff_whenItsVerbIsCalled() {
        CapturedRun run = run(SpokenVerb.echo("say"), "sing", "loud", "now");
        assertThat(run.ending()).isEqualTo(Ending.WRONG_USAGE);
        assertThat(run.err()).startsWith("The music feature is switched off.\n");
    }

    @Test
    void listsAllVerbsByFeature_whenNoneIsNamed() {
        assertThat(run(SpokenVerb.echo("say"), "--help").out()).contains("\nspeech\n  say  Say something\n");
        assertThat(run(SpokenVerb.echo("say"), "--help").ending()).isEqualTo(Ending.DONE);
        assertThat(run(SpokenVerb.echo("say"), "say", "--help").out())
                .contains("Say something\n", "--times N       how often")
                .contains("Usage: glintery-do say WORDS [--times N] [--loud] [--workshop DIR] [--json] [--help]\n");
    }

    @Test
    void keepsAFaultInAFile_andTellsItWithoutItsTrace() throws IOException {
        Verb broken = new SpokenVerb("say", call -> {
            throw new IllegalStateException("a wheel came off");
        });
        CapturedRun run = run(broken, "say", "x", "--json");
        assertThat(run.ending()).isEqualTo(Ending.FAULT);
        String text = run.refused().text("text").orElseThrow();
        assertThat(run.refused().text("code")).contains("fault");
        assertThat(text).contains("while it did 'say'").doesNotContain("IllegalStateException", "\tat ");
        Path log = Path.of(text.substring(text.indexOf("Details are in ") + 15, text.length() - 1));
        assertThat(log).content().contains("a wheel came off", "\tat ");
        Files.delete(log);
    }

    @Test
    void endsQuietly_whenNobodyReadsAListAnyMore() {
        Verb endless = new SpokenVerb("say", call -> {
            call.list("echoes", each -> {
                while (true) {
                    each.accept(new SpokenVerb.Echo(Optional.empty(), List.of(), false), "on");
                }
            });
            return new VerbResult.Streamed(false);
        });
        CapturedRun run = CapturedRun.into(readSoOften(0), home, List.of(endless), "say", "x");
        assertThat(run).isEqualTo(new CapturedRun(Ending.DONE, "", ""));
    }

    @Test
    void saysHowFarItCame_whenNobodyReadsWhatItAnswersOneByOne() {
        int[] done = {0};
        Verb working = new SpokenVerb("say", call -> {
            while (true) {
                done[0]++;
                call.line(new SpokenVerb.Echo(Optional.empty(), List.of(), false), "done");
            }
        });
        CapturedRun run = CapturedRun.into(readSoOften(6), home, List.of(working), "say", "x");
        assertThat(done[0]).isEqualTo(7);
        assertThat(run.ending()).isEqualTo(Ending.REFUSED);
        assertThat(run.err())
                .isEqualTo(
                        "Stopped at answer 7, because nobody reads the answers any more. What was done up to there is"
                                + " kept; nothing after it was done.\n");
    }

    @Test
    void makesTheUsualWorkshopOnlyForACallThatChangesIt() {
        Verb refusing = new SpokenVerb("say", call -> {
            call.workshop();
            return VerbResult.refused("too-late", "It is too late.");
        });
        assertThat(run(refusing, "say", "x").err()).isEqualTo("It is too late.\n");
        assertThat(home.resolve("Glintery")).doesNotExist();

        Verb looking = new SpokenVerb("say", call -> {
            call.workshop();
            return VerbResult.said(new SpokenVerb.Echo(Optional.empty(), List.of(), false), "nothing yet");
        });
        assertThat(run(looking, "say", "x").err()).isEmpty();
        assertThat(home.resolve("Glintery")).as("nor for one that only looked").doesNotExist();

        Verb changing = new SpokenVerb("say", call -> {
            call.workshop()
                    .apply(ChangeSet.named("Set up")
                            .put(Settings.TYPE, Settings.ID, Settings.USUAL)
                            .build())
                    .orThrow();
            return VerbResult.refused("too-late", "It is too late.");
        });
        assertThat(run(changing, "say", "x").err())
                .isEqualTo("It is too late.\nThere was no workshop yet. A new one was made in "
                        + home.resolve("Glintery") + ".\n");
        assertThat(home.resolve("Glintery")).isDirectory();
        run(refusing, "say", "x");
        assertThat(home.resolve("Glintery")).as("one that was there stays").isDirectory();
    }

    /** A pipe whose reader goes away after so many writes. */
    private static OutputStream readSoOften(int writes) {
        return new OutputStream() {
            private int left = writes;

            @Override
            public void write(byte[] some, int from, int length) throws IOException {
                if (left-- <= 0) {
                    throw new IOException("Broken pipe");
                }
            }

            @Override
            public void write(int b) throws IOException {
                write(new byte[] {(byte) b}, 0, 1);
            }
        };
    }

    @Test
    void listsAllVerbsAside_whenNothingIsSaid() {
        CapturedRun run = run(SpokenVerb.echo("say it"));
        assertThat(run.ending()).isEqualTo(Ending.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("Which verb? Nothing was done.\n").contains("  say it  Say something\n");
        assertThat(run(SpokenVerb.echo("say it"), "--json").refused().get("candidates"))
                .contains(new Json.Arr(List.of(new Json.Text("say it"))));
    }

    private CapturedRun run(Verb verb, String... words) {
        return CapturedRun.of(home, List.of(verb), KNOWN, words);
    }
}
