package org.glintery.api.stash;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.activework.CompletionPart;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;

/**
 * Kits, pieces, legends and drills. Methods compute from the view and change nothing: apply what they give.
 * Any thread.
 */
@Stable
public interface Stash extends CompletionPart {

    /**
     * Shelves a kit: its documents, what its legends say of codes and, when the workshop keeps drills, the
     * supplied drills into a bag named after each piece, reserved to the piece.
     */
    Result<ChangeSet> shelve(View view, NewKit kit);

    /**
     * Adds a piece that no kit was bought for: from an own picture, or made again. Supplied drills as in
     * {@link #shelve}.
     */
    Result<ChangeSet> addPiece(View view, UUID id, Piece piece, List<LegendLine> legend);

    /** Replaces a piece; its title must not be blank. */
    Result<ChangeSet> editPiece(View view, UUID id, Piece piece);

    Result<ChangeSet> editKit(View view, UUID id, Kit kit);

    Result<ChangeSet> setStanding(View view, UUID piece, Standing standing, Optional<About> since);

    /**
     * Replaces a legend. A repeated symbol is a warning; both lines stay. Supplies that are new or grew are
     * booked; corrections downwards are booked as {@code lost} only as far as drills are there.
     */
    Result<ChangeSet> saveLegend(View view, UUID piece, List<LegendLine> lines);

    /**
     * Replaces a legend as {@link #saveLegend(View, UUID, List)} does, and tells the cards what an imported legend says
     * of codes; what is known already stays.
     *
     * @param cards card name, then code
     */
    Result<ChangeSet> saveLegend(
            View view, UUID piece, List<LegendLine> lines, Map<String, Map<String, CardEntry>> cards);

    /** Names a code or corrects its colour, once and everywhere. */
    Result<ChangeSet> describe(View view, String card, String code, CardEntry entry);

    List<LineSupply> supplies(View view, UUID piece);

    /** Moves drills; drills drawn to the canvas of a piece are released from its reservation. */
    Result<ChangeSet> move(View view, MoveRequest request);

    Result<ChangeSet> stocktake(View view, Spot spot, Drill drill, Amount amount, Optional<About> happenedOn);

    /** The drills whose code, name or card holds the text, in use anywhere, with what is known of each. */
    List<KnownDrill> find(View view, String text);

    /**
     * A drill as the workshop knows it.
     *
     * @param inTheHouse in bags and pockets
     * @param available of these, not reserved
     */
    record KnownDrill(Drill drill, CardEntry entry, long inTheHouse, long available) {}
}
