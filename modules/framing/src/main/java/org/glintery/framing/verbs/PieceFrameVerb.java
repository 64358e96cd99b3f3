package org.glintery.framing.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.GlinteryException;
import org.glintery.api.Result;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Framing;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code piece frame}: decides how a piece will hang and tells what that comes to; without options, shows it. */
@ServiceProvider(service = Verb.class)
public final class PieceFrameVerb implements Verb {

    @Override
    public String name() {
        return "piece frame";
    }

    @Override
    @Messages("PieceFrameVerb.summary=Decide how a piece will hang, with exact rails, or that it stays unframed")
    public String summary() {
        return Bundle.PieceFrameVerb_summary();
    }

    @Override
    public String feature() {
        return "framing";
    }

    @Override
    @Messages({"PieceFrameVerb.piece=its title or id", "PieceFrameVerb.preview=only tells the sums, records nothing"})
    public List<Param> params() {
        List<Param> params = new ArrayList<>(List.of(
                Param.positional("piece", "PIECE", Bundle.PieceFrameVerb_piece()),
                Param.flag("preview", Bundle.PieceFrameVerb_preview())));
        params.addAll(PlanOptions.params());
        return params;
    }

    @Override
    public Class<? extends Record> answers() {
        return PieceFrame.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> {
            Optional<String> place = call.value("place");
            return place.isEmpty()
                    ? frame(call, piece, Optional.empty())
                    : VerbSteps.named(
                            call,
                            KeepingPlace.TYPE,
                            KeepingPlace::name,
                            place.get(),
                            found -> frame(call, piece, Optional.of(found.id())));
        });
    }

    private static VerbResult frame(VerbCall call, Stored<Piece> piece, Optional<UUID> place) {
        View view = call.workshop().view();
        FramePlan before = view.find(FramePlan.TYPE, piece.id())
                .map(Stored::value)
                .orElse(FramePlan.decided(Decision.NOT_DECIDED, ""));
        PlanOptions options = new PlanOptions(call);
        FramePlan plan = options.over(before, place);
        if (options.misunderstood().isPresent()) {
            return VerbResult.wrongUsage(options.misunderstood().get());
        }
        Framing framing = call.workshop()
                .find(Framing.class)
                .orElseThrow(() -> new GlinteryException("framing brings this verb but not its service"));
        Result<ChangeSet> change = framing.decide(view, piece.id(), plan);
        if (change instanceof Result.Refused<ChangeSet> no) {
            return VerbResult.refused(no.refusal());
        }
        List<String> warnings = ((Result.Ok<ChangeSet>) change).warnings();
        Result<FrameFigures> figures = framing.figures(view, piece.id(), plan);
        if (call.flag("preview")) {
            warnings.forEach(call::say);
            return answer(view, piece, plan, figures, warnings, false);
        }
        return options.saySomething()
                ? VerbSteps.apply(call, change, () -> answer(view, piece, plan, figures, warnings, true))
                : answer(
                        view,
                        piece,
                        plan,
                        figures,
                        List.of(),
                        view.find(FramePlan.TYPE, piece.id()).isPresent());
    }

    private static VerbResult answer(
            View view,
            Stored<Piece> piece,
            FramePlan plan,
            Result<FrameFigures> figures,
            List<String> warnings,
            boolean recorded) {
        Optional<FrameFigures> sums =
                figures instanceof Result.Ok<FrameFigures> ok ? Optional.of(ok.value()) : Optional.empty();
        Optional<String> missing = figures instanceof Result.Refused<FrameFigures> no
                ? Optional.of(no.refusal().text())
                : Optional.empty();
        PieceFrame frame = new PieceFrame(
                piece.id(),
                piece.value().title(),
                recorded,
                plan.decision(),
                plan.moulding(),
                plan.allowanceMm(),
                plan.kerfMm(),
                plan.glazing(),
                plan.livesAt(),
                plan.place(),
                plan.place()
                        .flatMap(id -> view.find(KeepingPlace.TYPE, id))
                        .map(p -> p.value().name()),
                plan.decidedOn(),
                plan.notes(),
                sums,
                missing,
                warnings);
        return VerbResult.said(frame, frame.text());
    }
}
