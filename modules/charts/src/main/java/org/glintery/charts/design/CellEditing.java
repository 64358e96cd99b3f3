package org.glintery.charts.design;

import java.util.BitSet;
import java.util.List;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.charts.CellBand;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.DesignLine;
import org.glintery.api.charts.LaidBand;
import org.glintery.api.ledger.Balance;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Paints and marks cells of one design; only the documents of rows that differ are written. Any thread. */
@Messages({
    "# {0} - how many",
    "# {1} - the same in figures",
    "# {2} - symbol and code",
    "# {3} - title",
    "CellEditing.paint=Paint {0,choice,1#one cell|1<{1} cells} of {3} with {2}",
    "# {0} - how many",
    "# {1} - the same in figures",
    "# {2} - title",
    "CellEditing.bare=Take the drills out of {0,choice,1#one cell|1<{1} cells} of {2}",
    "# {0} - symbol and code",
    "# {1} - those of the other",
    "# {2} - title",
    "CellEditing.swap=Swap {0} for {1} in {2}",
    "# {0} - how many",
    "# {1} - the same in figures",
    "# {2} - title",
    "CellEditing.laid=Mark {0,choice,1#one cell|1<{1} cells} of {2} as laid",
    "# {0} - how many",
    "# {1} - the same in figures",
    "# {2} - title",
    "CellEditing.notLaid=Mark {0,choice,1#one cell|1<{1} cells} of {2} as not laid",
    "# {0} - symbol",
    "# {1} - code",
    "CellEditing.drill={0} ({1})",
    "CellEditing.offTheChart=Some of these cells are not on the chart. Nothing was changed.",
    "CellEditing.noLine=The design has no such line. Nothing was changed.",
    "# {0} - how many",
    "# {1} - the same in figures",
    "CellEditing.lift={0,choice,1#One of these cells is laid already. Lift its drill first; it now counts as not laid.|1<{1} of these cells are laid already. Lift their drills first; they now count as not laid.}"
})
final class CellEditing {

    private final View view;
    private final Stored<Design> design;
    private final DesignCells before;
    private final BitSet cells;

    private CellEditing(View view, Stored<Design> design, DesignCells before, BitSet cells) {
        this.view = view;
        this.design = design;
        this.before = before;
        this.cells = cells;
    }

    static Result<CellEditing> at(View view, UUID id, BitSet cells) {
        return DesignKeeping.found(view, id).then(design -> {
            DesignCells before = DesignCells.of(view, id).orElseThrow();
            return cells.length() > before.count()
                    ? Result.refused("off-the-chart", Bundle.CellEditing_offTheChart())
                    : Result.ok(new CellEditing(view, design, before, cells));
        });
    }

    Result<ChangeSet> paint(int line) {
        if (isUnknown(line) && line != Chart.NO_DRILL) {
            return noLine();
        }
        DesignCells after = before.painted(cells, line);
        BitSet differing = differing(cells, after);
        int count = differing.cardinality();
        String sentence = line == Chart.NO_DRILL
                ? Bundle.CellEditing_bare(count, Balance.grouped(count), title())
                : Bundle.CellEditing_paint(count, Balance.grouped(count), words(line), title());
        return changed(sentence, after, differing);
    }

    Result<ChangeSet> swap(int line, int other) {
        if (isUnknown(line) || isUnknown(other)) {
            return noLine();
        }
        BitSet of = new BitSet();
        cells.stream().filter(cell -> before.line(cell) == line).forEach(of::set);
        DesignCells after = before.painted(of, other);
        return changed(Bundle.CellEditing_swap(words(line), words(other), title()), after, differing(of, after));
    }

    Result<ChangeSet> mark(boolean laid) {
        DesignCells after = before.marked(cells, laid);
        BitSet differing = differing(cells, after);
        int count = differing.cardinality();
        String sentence = laid
                ? Bundle.CellEditing_laid(count, Balance.grouped(count), title())
                : Bundle.CellEditing_notLaid(count, Balance.grouped(count), title());
        return changed(sentence, after, differing);
    }

    private Result<ChangeSet> changed(String sentence, DesignCells after, BitSet differing) {
        ChangeSet.Builder change = ChangeSet.named(sentence)
                .require(new Precondition.DocumentAt(Design.TYPE.ref(design.id()), design.version()));
        int cellsABand = CellBand.rowsABand(before.columns()) * before.columns();
        for (int cell = differing.nextSetBit(0); cell >= 0; ) {
            int firstRow = cell / cellsABand * cellsABand / before.columns();
            writeLines(change, after, firstRow);
            writeLaid(change, after, firstRow);
            cell = differing.nextSetBit(firstRow * before.columns() + cellsABand);
        }
        long lifted = differing.stream()
                .filter(cell -> before.isLaid(cell) && before.line(cell) != after.line(cell))
                .count();
        return Result.ok(
                change.build(),
                lifted == 0 ? List.of() : List.of(Bundle.CellEditing_lift(lifted, Balance.grouped(lifted))));
    }

    private void writeLines(ChangeSet.Builder change, DesignCells after, int firstRow) {
        CellBand now = after.band(design.id(), firstRow);
        UUID id = CellBand.idOf(design.id(), firstRow);
        var old = view.find(CellBand.TYPE, id);
        if (old.isEmpty()) {
            change.create(CellBand.TYPE, id, now);
        } else if (!old.get().value().equals(now)) {
            change.replace(CellBand.TYPE, old.get(), now);
        }
    }

    private void writeLaid(ChangeSet.Builder change, DesignCells after, int firstRow) {
        var now = after.laidBand(design.id(), firstRow);
        UUID id = LaidBand.idOf(design.id(), firstRow);
        var old = view.find(LaidBand.TYPE, id);
        if (old.isEmpty()) {
            now.ifPresent(band -> change.create(LaidBand.TYPE, id, band));
        } else if (now.isEmpty()) {
            DesignKeeping.remove(change, LaidBand.TYPE, old.get());
        } else if (!old.get().value().equals(now.get())) {
            change.replace(LaidBand.TYPE, old.get(), now.get());
        }
    }

    private BitSet differing(BitSet among, DesignCells after) {
        BitSet differing = new BitSet();
        among.stream()
                .filter(cell -> before.line(cell) != after.line(cell) || before.isLaid(cell) != after.isLaid(cell))
                .forEach(differing::set);
        return differing;
    }

    private boolean isUnknown(int line) {
        return line < 0 || line >= design.value().lines().size();
    }

    private static Result<ChangeSet> noLine() {
        return Result.refused("no-line", Bundle.CellEditing_noLine());
    }

    private String title() {
        return design.value().title();
    }

    private String words(int line) {
        DesignLine one = design.value().lines().get(line);
        return Bundle.CellEditing_drill(one.symbol(), one.drill().code());
    }
}
