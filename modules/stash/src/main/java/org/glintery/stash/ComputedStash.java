package org.glintery.stash;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.LineSupply;
import org.glintery.api.stash.MoveRequest;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.View;

/** The stash, computed from views. Holds nothing; any thread. */
public final class ComputedStash implements Stash {

    @Override
    public Result<ChangeSet> shelve(View view, NewKit kit) {
        return new KitShelving(view).shelve(kit);
    }

    @Override
    public Result<ChangeSet> addPiece(View view, UUID id, Piece piece, List<LegendLine> legend) {
        return new KitShelving(view).addPiece(id, piece, legend);
    }

    @Override
    public Result<ChangeSet> makeAgain(View view, UUID piece, UUID again) {
        return new MakingAgain(view).of(piece, again);
    }

    @Override
    public Result<ChangeSet> editPiece(View view, UUID id, Piece piece) {
        return new PieceEdits(view).editPiece(id, piece);
    }

    @Override
    public Result<ChangeSet> editKit(View view, UUID id, Kit kit) {
        return new PieceEdits(view).editKit(id, kit);
    }

    @Override
    public Result<ChangeSet> setStanding(View view, UUID piece, Standing standing, Optional<About> since) {
        return new PieceEdits(view).setStanding(piece, standing, since);
    }

    @Override
    public Result<ChangeSet> saveLegend(View view, UUID piece, List<LegendLine> lines) {
        return new LegendSaving(view).save(piece, lines, Map.of());
    }

    @Override
    public Result<ChangeSet> saveLegend(
            View view, UUID piece, List<LegendLine> lines, Map<String, Map<String, CardEntry>> cards) {
        return new LegendSaving(view).save(piece, lines, cards);
    }

    @Override
    public Result<ChangeSet> keepLegendPhoto(View view, UUID piece, NewPicture photo) {
        return new LegendSaving(view).keepPhoto(piece, photo);
    }

    @Override
    public Result<ChangeSet> describe(View view, String card, String code, CardEntry entry) {
        return CardLearning.describe(view, card, code, entry);
    }

    @Override
    public Result<ChangeSet> keepDrills(View view) {
        return new DepthRaising(view).raise();
    }

    @Override
    public List<LineSupply> supplies(View view, UUID piece) {
        return new LineSupplies(view, piece).tell();
    }

    @Override
    public Result<ChangeSet> move(View view, MoveRequest request, List<Operation> making) {
        return new DrillMoves(view, making).move(request);
    }

    @Override
    public Result<ChangeSet> stocktake(
            View view, Spot spot, Drill drill, Amount amount, Optional<About> happenedOn, List<Operation> making) {
        return new DrillMoves(view, making).stocktake(spot, drill, amount, happenedOn);
    }

    @Override
    public List<KnownDrill> find(View view, String text) {
        return DrillSearch.of(view).find(text);
    }

    @Override
    public Result<ChangeSet> completing(View view, Completion completion) {
        return new PieceCompletion(view, completion).complete();
    }
}
