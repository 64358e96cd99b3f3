package org.glintery.api.stash;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.activework.CompletionPart;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.View;

/**
 * Kits, pieces, legends and drills. Methods compute from the view and change nothing: apply what they give.
 * Any thread.
 */
@Stable
public interface Stash extends CompletionPart {

    /**
     * Shelves a kit: its documents, what its legends say of codes and, when the workshop keeps drills, the
     * supplied drills into a bag named after each piece, reserved to the piece. Refused with {@code no-title},
     * {@code already-there}, or for a legend as {@link #saveLegend(View, UUID, List)} is.
     */
    Result<ChangeSet> shelve(View view, NewKit kit);

    /**
     * Adds a piece that no kit was bought for: from an own picture, or made again. Supplied drills as in
     * {@link #shelve}, and refused like it.
     */
    Result<ChangeSet> addPiece(View view, UUID id, Piece piece, List<LegendLine> legend);

    /**
     * Adds a piece that is a new making of another: hoped for, of the same canvas and legend, with no kit and nothing
     * supplied yet. Refused with {@code no-piece}.
     *
     * @param again the id of the new piece
     */
    Result<ChangeSet> makeAgain(View view, UUID piece, UUID again);

    /** Replaces a piece. Refused with {@code no-piece} when it is not there, or {@code no-title} when its title is blank. */
    Result<ChangeSet> editPiece(View view, UUID id, Piece piece);

    /** Replaces a kit. Refused with {@code no-kit} when it is not there, or {@code no-title} when its title is blank. */
    Result<ChangeSet> editKit(View view, UUID id, Kit kit);

    /**
     * Puts a piece where it is now in its life, whatever it was before; nothing else follows from it. To start, rest or
     * complete a piece with all that goes with it is {@code ActiveWork}'s. Refused with {@code no-piece}.
     *
     * @param since when it came there, as exactly as is known
     */
    Result<ChangeSet> setStanding(View view, UUID piece, Standing standing, Optional<About> since);

    /**
     * Replaces a legend. A repeated symbol is a warning; both lines stay. Supplies that are new or grew are
     * booked; corrections downwards are booked as {@code lost} only as far as drills are there. Refused with
     * {@code no-piece}, {@code too-long} beyond {@link Legend#MOST_LINES} lines, or {@code out-of-range} for an amount, whose
     * line is named.
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

    /** Keeps a photo of a printed legend, in place of an earlier one. Refused with {@code no-piece}. */
    Result<ChangeSet> keepLegendPhoto(View view, UUID piece, NewPicture photo);

    /**
     * Names a code or corrects its colour, once and everywhere. Refused with {@code no-code} or {@code not-a-colour}.
     */
    Result<ChangeSet> describe(View view, String card, String code, CardEntry entry);

    /**
     * From now on the drills are kept as well: the setting, and what came with the pieces that are in the house. Changes
     * nothing where they are kept already.
     */
    Result<ChangeSet> keepDrills(View view);

    /**
     * How each legend line of a piece stands, in the legend's order; empty when there is no legend. Lines that share a drill
     * are told of together on the first of them.
     */
    List<LineSupply> supplies(View view, UUID piece);

    /**
     * Moves drills; drills drawn to the canvas of a piece are released from its reservation. Refused with {@code no-amount},
     * {@code same-spot}, {@code outside} from one boundary to another, {@code no-spot}, or {@code not-enough} when the one
     * who asks is not believed.
     */
    default Result<ChangeSet> move(View view, MoveRequest request) {
        return move(view, request, List.of());
    }

    /**
     * The same, after making what is not there yet.
     *
     * @param making such as a bag that is named for the first time
     */
    Result<ChangeSet> move(View view, MoveRequest request, List<Operation> making);

    /**
     * Pins what lies in a bag, a pocket or on a canvas: the difference to what is booked goes to {@code lost} or comes from
     * {@code found}. Refused with {@code not-a-place} for a boundary, {@code no-amount} for an unknown amount, or
     * {@code no-spot}.
     */
    default Result<ChangeSet> stocktake(View view, Spot spot, Drill drill, Amount amount, Optional<About> happenedOn) {
        return stocktake(view, spot, drill, amount, happenedOn, List.of());
    }

    /**
     * The same, after making what is not there yet.
     *
     * @param making such as a bag that is named for the first time
     */
    Result<ChangeSet> stocktake(
            View view, Spot spot, Drill drill, Amount amount, Optional<About> happenedOn, List<Operation> making);

    /** The drills whose code, name or card holds the text, in use anywhere, with what is known of each. */
    List<KnownDrill> find(View view, String text);

    /**
     * A drill as the workshop knows it.
     *
     * @param inTheHouse in bags and pockets
     * @param available of these, neither reserved nor kept for repairs; below zero where more is set aside than is left
     */
    record KnownDrill(Drill drill, CardEntry entry, Balance inTheHouse, Balance available) {}
}
