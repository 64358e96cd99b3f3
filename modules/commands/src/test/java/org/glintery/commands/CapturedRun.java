package org.glintery.commands;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.Verb;
import org.glintery.api.workshop.Workshops;
import org.openide.util.Lookup;

/** One call with what it printed. */
record CapturedRun(Ending ending, String out, String err) {

    private static final JsonCodec CODEC = Lookup.getDefault().lookup(JsonCodec.class);

    static CapturedRun of(Path home, List<? extends Verb> verbs, KnownVerbs known, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        return run(out, out, home, verbs, known, words);
    }

    static CapturedRun into(OutputStream answers, Path home, List<? extends Verb> verbs, String... words) {
        return run(answers, new ByteArrayOutputStream(), home, verbs, new KnownVerbs(Map.of()), words);
    }

    private static CapturedRun run(
            OutputStream answers,
            ByteArrayOutputStream seen,
            Path home,
            List<? extends Verb> verbs,
            KnownVerbs known,
            String... words) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                Lookup.getDefault().lookup(Workshops.class),
                CODEC,
                Clock.systemDefaultZone(),
                home,
                home,
                Map.of(),
                new ByteArrayInputStream(new byte[0]));
        Terminal terminal = new Terminal(new PrintStream(answers, true), new PrintStream(err, true));
        Ending ending = new VerbRun(new VerbCatalogue(verbs, known), around, terminal).run(CallWords.of(words));
        return new CapturedRun(ending, seen.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Standard output as the one JSON object it has to be. */
    Json.Obj json() {
        return (Json.Obj) CODEC.parse(out);
    }

    Json.Obj refused() {
        return (Json.Obj) json().get("refused").orElseThrow();
    }
}
