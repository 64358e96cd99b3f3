package org.glintery.api.charts;

import java.util.BitSet;
import java.util.List;
import java.util.UUID;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.activework.Laid;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;

/**
 * Charts that are kept in the workshop. Methods compute from the view and change nothing: apply what they give; where nothing
 * would change, that has no operations. Sets of cells are as {@link DesignCells} says; all of them are refused with
 * {@code no-design}, {@code off-the-chart} for a cell that is not there and {@code no-line} for a line that is not. Any thread.
 */
@Preview(since = "1.0")
public interface Designs {

    /** Keeps a chart. Refused with {@code no-title}, {@code already-there}, {@code other-grid} or {@code no-piece}. */
    Result<ChangeSet> keep(View view, UUID id, NewDesign design);

    /**
     * Replaces title, piece or lines; there may be more lines, but not fewer. Refused as {@link #keep} is, or with
     * {@code fewer-lines}.
     */
    Result<ChangeSet> edit(View view, UUID id, Design design);

    /**
     * Puts a line into cells, or none with {@link Chart#NO_DRILL}. Laid cells that had another are no longer laid, which is
     * warned of.
     */
    Result<ChangeSet> paint(View view, UUID id, BitSet cells, int line);

    /** Puts another line wherever one lies among these cells, as {@link #paint} does. */
    Result<ChangeSet> swap(View view, UUID id, BitSet among, int line, int other);

    /** Marks cells as laid, or as not laid. */
    Result<ChangeSet> mark(View view, UUID id, BitSet cells, boolean laid);

    /** Removes a design with its cells. Its picture stays. */
    Result<ChangeSet> remove(View view, UUID id);

    /** What each line takes, counted from the cells, in the order of the lines; empty when the design is not there. */
    List<LineNeed> needs(View view, UUID id);

    /**
     * Makes the lines the legend of a piece, with what they need, and the grid its canvas where none is said. What else its
     * legend has of drills that came with it stays, as not needed. Refused with {@code no-piece}, {@code no-stash}, or as
     * {@code Stash} refuses.
     */
    Result<ChangeSet> intoLegend(View view, UUID id, UUID piece);

    /** Adds a piece that is made after the design, hoped for, with its legend. Refused with {@code no-stash}. */
    Result<ChangeSet> intoPiece(View view, UUID id, UUID newPiece);

    /**
     * What is marked as laid and no sitting of its piece tells of yet: by symbol of the piece's legend, as far as that can be
     * told, else as a number of drills. Nothing when the design has no piece.
     */
    Laid untold(View view, UUID id);
}
