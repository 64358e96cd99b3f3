package org.glintery.charts.design;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.glintery.api.Result;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Laid;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.Designs;
import org.glintery.api.charts.LineNeed;
import org.glintery.api.charts.NewDesign;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** Designs, computed from views. Holds nothing but the services it asks; any thread. */
public final class KeptDesigns implements Designs {

    private final Optional<Stash> stash;
    private final Optional<ActiveWork> activeWork;

    /** @param stash and {@code activeWork}: empty when they are switched off */
    public KeptDesigns(Optional<Stash> stash, Optional<ActiveWork> activeWork) {
        this.stash = stash;
        this.activeWork = activeWork;
    }

    @Override
    public Result<ChangeSet> keep(View view, UUID id, NewDesign design) {
        return new DesignKeeping(view).keep(id, design);
    }

    @Override
    public Result<ChangeSet> edit(View view, UUID id, Design design) {
        return new DesignKeeping(view).edit(id, design);
    }

    @Override
    public Result<ChangeSet> remove(View view, UUID id) {
        return new DesignKeeping(view).remove(id);
    }

    @Override
    public Result<ChangeSet> paint(View view, UUID id, BitSet cells, int line) {
        return CellEditing.at(view, id, cells).then(editing -> editing.paint(line));
    }

    @Override
    public Result<ChangeSet> swap(View view, UUID id, BitSet among, int line, int other) {
        return CellEditing.at(view, id, among).then(editing -> editing.swap(line, other));
    }

    @Override
    public Result<ChangeSet> mark(View view, UUID id, BitSet cells, boolean laid) {
        return CellEditing.at(view, id, cells).then(editing -> editing.mark(laid));
    }

    @Override
    public List<LineNeed> needs(View view, UUID id) {
        Optional<DesignCells> cells = DesignCells.of(view, id);
        return view.find(Design.TYPE, id)
                .map(Stored::value)
                .map(design -> needs(design, cells.orElseThrow()))
                .orElse(List.of());
    }

    static List<LineNeed> needs(Design design, DesignCells cells) {
        int lines = design.lines().size();
        long[] drills = cells.drills(lines);
        long[] laid = cells.laidDrills(lines);
        return IntStream.range(0, lines)
                .mapToObj(line -> new LineNeed(line, design.lines().get(line), drills[line], laid[line]))
                .toList();
    }

    @Override
    public Result<ChangeSet> intoLegend(View view, UUID id, UUID piece) {
        return DesignKeeping.found(view, id)
                .then(design -> DesignLegend.of(view, design, stash).then(legend -> legend.into(piece)));
    }

    @Override
    public Result<ChangeSet> intoPiece(View view, UUID id, UUID newPiece) {
        return DesignKeeping.found(view, id)
                .then(design -> DesignLegend.of(view, design, stash).then(legend -> legend.intoNew(newPiece)));
    }

    @Override
    public Laid untold(View view, UUID id) {
        Optional<Stored<Design>> design = view.find(Design.TYPE, id);
        return design.isEmpty() || activeWork.isEmpty()
                ? Laid.NOT_SAID
                : new UntoldLaying(view, activeWork.get()).of(id, design.get().value());
    }
}
