package org.glintery.stash.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.KeepingPlaces;
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

/** {@code piece edit}: corrects what is known of a piece and its kit. */
@ServiceProvider(service = Verb.class)
public final class PieceEditVerb implements Verb {

    /**
     * A piece as it is now.
     *
     * @param keptAt the place in words; empty when none is said
     * @param kit absent for a piece without one
     */
    public record Edited(UUID id, Piece piece, String keptAt, Optional<Kit> kit) {}

    @Override
    public String name() {
        return "piece edit";
    }

    @Override
    @Messages(
            "PieceEditVerb.summary=Correct what is known of a piece and its kit; an empty value takes away what was known")
    public String summary() {
        return Bundle.PieceEditVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages("PieceEditVerb.piece=its title or id")
    public List<Param> params() {
        List<Param> params = new ArrayList<>(List.of(Param.positional("piece", "PIECE", Bundle.PieceEditVerb_piece())));
        params.addAll(PieceOptions.PARAMS);
        return params;
    }

    @Override
    public Class<? extends Record> answers() {
        return Edited.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> edit(call, piece));
    }

    @Messages({
        "PieceEditVerb.nothing=Say what shall be corrected, such as --title or --sections.",
        "# {0} - title",
        "PieceEditVerb.noKit={0} has no kit that could have a source, dates, prices or notes. Nothing was changed."
    })
    private static VerbResult edit(VerbCall call, Stored<Piece> piece) {
        View view = call.workshop().view();
        PieceOptions options = new PieceOptions(call);
        Optional<Stored<Kit>> kit = piece.value().kit().flatMap(id -> view.find(Kit.TYPE, id));
        if (!options.tellOfPiece() && !options.tellOfKit()) {
            return VerbResult.wrongUsage(Bundle.PieceEditVerb_nothing());
        }
        if (options.tellOfKit() && kit.isEmpty()) {
            return VerbResult.refused(
                    "no-kit", Bundle.PieceEditVerb_noKit(piece.value().title()));
        }
        Optional<KeepingPlaces.Named> place =
                call.value(PieceOptions.KEPT_AT).flatMap(written -> KeepingPlaces.named(view, written));
        Piece now = options.over(piece.value(), place.map(KeepingPlaces.Named::id));
        Optional<Kit> kitNow = kit.filter(found -> options.tellOfKit()).map(found -> options.over(found.value()));
        if (options.misunderstood().isPresent()) {
            return VerbResult.wrongUsage(options.misunderstood().get());
        }
        Stash stash = StashOfCall.of(call);
        Result<ChangeSet> change = !options.tellOfPiece()
                ? Result.ok(ChangeSet.named("").build())
                : stash.editPiece(view, piece.id(), now).then(edited -> Result.ok(withPlace(edited, place)));
        Result<ChangeSet> whole = kitNow.map(newKit -> change.then(
                        edited -> stash.editKit(view, kit.orElseThrow().id(), newKit)
                                .then(more -> Result.ok(edited.operations().isEmpty() ? more : edited.join(more)))))
                .orElse(change);
        return VerbSteps.apply(call, whole, () -> answer(call, piece.id()));
    }

    private static ChangeSet withPlace(ChangeSet change, Optional<KeepingPlaces.Named> place) {
        return place.filter(named -> !named.making().isEmpty())
                .map(named -> change.join(ChangeSet.named(change.sentence())
                        .addAll(named.making())
                        .build()))
                .orElse(change);
    }

    @Messages({"# {0} - title", "PieceEditVerb.done=Corrected {0}."})
    private static VerbResult answer(VerbCall call, UUID id) {
        View view = call.workshop().view();
        Piece piece = view.find(Piece.TYPE, id).orElseThrow().value();
        Optional<Kit> kit = piece.kit().flatMap(of -> view.find(Kit.TYPE, of)).map(Stored::value);
        return VerbResult.said(
                new Edited(id, piece, KeepingPlaces.name(view, piece.keptAt()), kit),
                Bundle.PieceEditVerb_done(piece.title()));
    }
}
