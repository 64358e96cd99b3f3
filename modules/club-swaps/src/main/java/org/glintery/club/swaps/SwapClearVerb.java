package org.glintery.club.swaps;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.Result;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.planning.clearing.Clearing;
import org.glintery.planning.clearing.Patience;
import org.glintery.planning.clearing.RoundClearing;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code swap clear}: works out from a file alone who should send what to whom; no workshop is opened. */
@ServiceProvider(service = Verb.class)
public final class SwapClearVerb implements Verb {

    private static final long LONGEST_BYTES = 64L << 20;

    @Override
    public String name() {
        return "swap clear";
    }

    @Override
    @Messages("SwapClearVerb.summary=Work out who should send what to whom in a swap round")
    public String summary() {
        return Bundle.SwapClearVerb_summary();
    }

    @Override
    public String feature() {
        return "swaps";
    }

    @Override
    @Messages({
        "SwapClearVerb.file=the round: members with their offers and wants, and the postage",
        "SwapClearVerb.again=the answer of an earlier run; as much of it as can stays as it was"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("file", "FILE.json", Bundle.SwapClearVerb_file()),
                Param.option("again", "ANSWER.json", Bundle.SwapClearVerb_again()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Cleared.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        Result<VerbResult> answer = read(call, call.need("file"), RoundFile::read)
                .then(round -> clear(call, round).then(clearing -> Result.ok(answer(call, round, clearing))));
        return answer instanceof Result.Refused<VerbResult> no ? VerbResult.refused(no.refusal()) : answer.orThrow();
    }

    private static Result<Clearing> clear(VerbCall call, NamedRound named) {
        Optional<String> again = call.value("again");
        return again.isEmpty()
                ? Result.ok(RoundClearing.clear(named.round(), Patience.USUAL))
                : read(call, again.get(), json -> EarlierPlan.read(json, named))
                        .then(before -> Result.ok(RoundClearing.clearAgain(named.round(), before, Patience.USUAL)));
    }

    private static VerbResult answer(VerbCall call, NamedRound named, Clearing clearing) {
        ClearedWords words = new ClearedWords(named, clearing);
        if (call.json()) {
            call.say(words.parcels());
        }
        return VerbResult.said(Cleared.of(named, clearing), words.text());
    }

    @Messages({
        "# {0} - file",
        "SwapClearVerb.unreadable={0} can''t be read. Is the name right, and may you read it?",
        "# {0} - file",
        "SwapClearVerb.large={0} is larger than 64 MiB, too large for a swap round.",
        "# {0} - file",
        "# {1} - what is wrong",
        "SwapClearVerb.malformed={0} can''t be used: {1}",
        "SwapClearVerb.noText=it is no text in UTF-8."
    })
    private static <T> Result<T> read(VerbCall call, String file, Function<Json, T> reading) {
        try {
            Path path = call.path(file);
            if (Files.size(path) > LONGEST_BYTES) {
                return Result.refused("too-large", Bundle.SwapClearVerb_large(file));
            }
            String text = Files.readString(path, StandardCharsets.UTF_8);
            return Result.ok(reading.apply(call.codec().parse(text)));
        } catch (MalformedException e) {
            return Result.refused("malformed", Bundle.SwapClearVerb_malformed(file, e.getMessage()));
        } catch (CharacterCodingException e) {
            return Result.refused("malformed", Bundle.SwapClearVerb_malformed(file, Bundle.SwapClearVerb_noText()));
        } catch (IOException e) {
            return Result.refused("unreadable", Bundle.SwapClearVerb_unreadable(file));
        }
    }
}
