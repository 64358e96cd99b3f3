package org.glintery.activework.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Completion;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code bench complete}: the piece is made. */
@ServiceProvider(service = Verb.class)
public final class BenchCompleteVerb implements Verb {

    private static final int MOST_SCORE = 5;

    /** A piece that was completed. */
    public record Completed(UUID piece, String title, About on, Optional<Integer> score) {}

    @Override
    public String name() {
        return "bench complete";
    }

    @Override
    @Messages("BenchCompleteVerb.summary=Complete a piece: book the last drills and begin its finish")
    public String summary() {
        return Bundle.BenchCompleteVerb_summary();
    }

    @Override
    public String feature() {
        return "activework";
    }

    @Override
    @Messages({
        "BenchCompleteVerb.piece=its title or id",
        "BenchCompleteVerb.score=1 to 5",
        "BenchCompleteVerb.comments=what there is to say"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("piece", "PIECE", Bundle.BenchCompleteVerb_piece()),
                SaidOptions.when(),
                Param.option("score", "N", Bundle.BenchCompleteVerb_score()),
                Param.option("comments", "TEXT", Bundle.BenchCompleteVerb_comments()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Completed.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> complete(call, piece));
    }

    @Messages({
        "# {0} - title",
        "BenchCompleteVerb.done={0} is made.",
        "BenchCompleteVerb.writeUp=Write it up with 'finish edit'.",
        "BenchCompleteVerb.clear=Clear its holder with 'kitdown'."
    })
    private static VerbResult complete(VerbCall call, Stored<Piece> piece) {
        SaidOptions said = new SaidOptions(call);
        Completion completion = new Completion(
                piece.id(),
                said.on(),
                said.number("score", 1, MOST_SCORE),
                call.value("comments").orElse("").strip());
        if (said.misunderstood().isPresent()) {
            return VerbResult.wrongUsage(said.misunderstood().get());
        }
        String title = piece.value().title();
        return VerbSteps.apply(
                call,
                BenchOfCall.of(call).complete(call.workshop().view(), completion),
                () -> VerbResult.said(
                        new Completed(piece.id(), title, completion.on(), completion.score()), next(call, piece)));
    }

    /** What is next, by verbs that are there. */
    private static String next(VerbCall call, Stored<Piece> piece) {
        List<String> words = new ArrayList<>();
        words.add(Bundle.BenchCompleteVerb_done(piece.value().title()));
        if (call.workshop().find(Finishes.class).isPresent()) {
            words.add(Bundle.BenchCompleteVerb_writeUp());
        }
        boolean inHolder = KitUp.of(call.workshop().view(), piece.id()).isPresent();
        if (inHolder && call.workshop().find(Storage.class).isPresent()) {
            words.add(Bundle.BenchCompleteVerb_clear());
        }
        return String.join(" ", words);
    }
}
