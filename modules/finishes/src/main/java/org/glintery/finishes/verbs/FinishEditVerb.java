package org.glintery.finishes.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code finish edit}: writes the record of a made piece, or an old finish that comes with its piece. */
@ServiceProvider(service = Verb.class)
public final class FinishEditVerb implements Verb {

    @Override
    public String name() {
        return "finish edit";
    }

    @Override
    @Messages("FinishEditVerb.summary=Write or correct the finish of a piece; with --old, write a finish from before")
    public String summary() {
        return Bundle.FinishEditVerb_summary();
    }

    @Override
    public String feature() {
        return "finishes";
    }

    @Override
    @Messages({
        "FinishEditVerb.piece=its title or id; with --old, the title of the finish",
        "FinishEditVerb.old=a finish from before: its piece is added as made"
    })
    public List<Param> params() {
        List<Param> params = new ArrayList<>(List.of(
                Param.positional("piece", "PIECE", Bundle.FinishEditVerb_piece()),
                Param.flag("old", Bundle.FinishEditVerb_old())));
        params.addAll(FinishOptions.params());
        return params;
    }

    @Override
    public Class<? extends Record> answers() {
        return FinishShown.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        String written = call.need("piece");
        if (call.flag("old")) {
            return edit(call, UUID.randomUUID(), Finish.titled(written.strip(), Optional.empty()));
        }
        return VerbSteps.named(
                call, Piece.TYPE, Piece::title, written, piece -> edit(call, piece.id(), before(call, piece)));
    }

    private static Finish before(VerbCall call, Stored<Piece> piece) {
        return call.workshop()
                .view()
                .find(Finish.TYPE, piece.id())
                .map(Stored::value)
                .orElseGet(() -> Finish.titled(
                        piece.value().title(),
                        piece.value().standing() == Standing.MADE
                                ? piece.value().standingSince()
                                : Optional.empty()));
    }

    @Messages({
        "# {0} - fields",
        "# {1} - title",
        "# {2} - how many fields",
        "FinishEditVerb.written={2,choice,1#This is|1<These are} written already for {1}: {0}. Only what is empty is left for later. Empty {2,choice,1#it|1<them} first, or leave out --later. Nothing was changed."
    })
    private static VerbResult edit(VerbCall call, UUID piece, Finish before) {
        Result<GivenPictures> pictures = GivenPictures.of(call);
        if (pictures instanceof Result.Refused<GivenPictures> no) {
            return VerbResult.refused(no.refusal());
        }
        GivenPictures given = pictures.orThrow();
        FinishOptions options = new FinishOptions(call);
        Finish now = options.over(before, given);
        if (options.misunderstood().isPresent()) {
            return VerbResult.wrongUsage(options.misunderstood().get());
        }
        Set<Field> written = options.writtenButLater(now);
        if (!written.isEmpty()) {
            return VerbResult.refused(new Refusal(
                    "written",
                    Bundle.FinishEditVerb_written(FinishWords.fields(written), now.title(), written.size())));
        }
        return VerbSteps.apply(
                call,
                FinishesOfCall.of(call).write(call.workshop().view(), piece, now, given.blobs()),
                () -> answer(call, piece));
    }

    private static VerbResult answer(VerbCall call, UUID piece) {
        Finish kept =
                call.workshop().view().find(Finish.TYPE, piece).orElseThrow().value();
        FinishShown shown = FinishShown.of(piece, kept);
        return VerbResult.said(shown, shown.text());
    }
}
