package org.glintery.charts.design;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.charts.CellBand;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.LaidBand;
import org.glintery.api.charts.NewDesign;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Keeps designs, changes what they are called and belong to, and removes them. Any thread. */
@Messages({
    "# {0} - title",
    "DesignKeeping.keep=Keep the design {0}",
    "# {0} - title",
    "DesignKeeping.edit=Change the design {0}",
    "# {0} - title",
    "DesignKeeping.remove=Remove the design {0}",
    "DesignKeeping.gone=That design is no longer in the workshop. Nothing was changed.",
    "DesignKeeping.there=That design is in the workshop already. Nothing was changed.",
    "DesignKeeping.noTitle=A design needs a title. Nothing was changed.",
    "DesignKeeping.noPiece=That piece is no longer in the workshop. Nothing was changed.",
    "DesignKeeping.otherGrid=The cells do not fit the grid of the design. Nothing was changed.",
    "DesignKeeping.fewerLines=A design keeps the lines that it has; others can be added. Nothing was changed.",
    "DesignKeeping.tooMany=A design has at most one thousand lines. Nothing was changed."
})
final class DesignKeeping {

    private final View view;

    DesignKeeping(View view) {
        this.view = view;
    }

    static Result<Stored<Design>> found(View view, UUID id) {
        return view.find(Design.TYPE, id)
                .map(Result::ok)
                .orElseGet(() -> Result.refused("no-design", Bundle.DesignKeeping_gone()));
    }

    Result<ChangeSet> keep(UUID id, NewDesign made) {
        Design design = made.design();
        DesignCells cells = made.cells();
        Optional<Refusal> refusal = view.find(Design.TYPE, id).isPresent()
                ? refused("already-there", Bundle.DesignKeeping_there())
                : refusal(design).or(() -> unfit(design, cells));
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        ChangeSet.Builder change =
                ChangeSet.named(Bundle.DesignKeeping_keep(design.title())).create(Design.TYPE, id, design);
        made.picture().ifPresent(change::blob);
        cells.bands().forEach(row -> {
            change.put(CellBand.TYPE, CellBand.idOf(id, row), cells.band(id, row));
            cells.laidBand(id, row).ifPresent(laid -> change.put(LaidBand.TYPE, LaidBand.idOf(id, row), laid));
        });
        return Result.ok(change.build());
    }

    Result<ChangeSet> edit(UUID id, Design design) {
        return found(view, id).then(old -> {
            Optional<Refusal> refusal = refusal(design).or(() -> lessThan(old.value(), design));
            if (refusal.isPresent()) {
                return Result.refused(refusal.get());
            }
            ChangeSet.Builder change = ChangeSet.named(Bundle.DesignKeeping_edit(design.title()));
            if (!design.equals(old.value())) {
                change.replace(Design.TYPE, old, design);
            }
            return Result.ok(change.build());
        });
    }

    Result<ChangeSet> remove(UUID id) {
        return found(view, id).then(old -> {
            ChangeSet.Builder change =
                    ChangeSet.named(Bundle.DesignKeeping_remove(old.value().title()));
            remove(change, Design.TYPE, old);
            DesignCells.of(view, id).orElseThrow().bands().forEach(row -> {
                view.find(CellBand.TYPE, CellBand.idOf(id, row)).ifPresent(band -> remove(change, CellBand.TYPE, band));
                view.find(LaidBand.TYPE, LaidBand.idOf(id, row)).ifPresent(band -> remove(change, LaidBand.TYPE, band));
            });
            return Result.ok(change.build());
        });
    }

    static <T extends Record> void remove(ChangeSet.Builder change, DocumentType<T> type, Stored<T> old) {
        change.require(new Precondition.DocumentAt(type.ref(old.id()), old.version()))
                .remove(type.ref(old.id()));
    }

    private Optional<Refusal> refusal(Design design) {
        if (design.title().isBlank()) {
            return refused("no-title", Bundle.DesignKeeping_noTitle());
        }
        if (design.lines().size() > Chart.MOST_LINES) {
            return refused("too-many-lines", Bundle.DesignKeeping_tooMany());
        }
        return design.piece()
                        .filter(piece -> view.find(Piece.TYPE, piece).isEmpty())
                        .isPresent()
                ? refused("no-piece", Bundle.DesignKeeping_noPiece())
                : Optional.empty();
    }

    private static Optional<Refusal> unfit(Design design, DesignCells cells) {
        boolean fits = cells.columns() == design.grid().columns()
                && cells.rows() == design.grid().rows();
        long known = 0;
        for (long drills : cells.drills(design.lines().size())) {
            known += drills;
        }
        long all = 0;
        for (long drills : cells.drills(Chart.MOST_LINES)) {
            all += drills;
        }
        return fits && known == all ? Optional.empty() : refused("other-grid", Bundle.DesignKeeping_otherGrid());
    }

    private static Optional<Refusal> lessThan(Design old, Design design) {
        if (!old.grid().equals(design.grid())) {
            return refused("other-grid", Bundle.DesignKeeping_otherGrid());
        }
        return design.lines().size() < old.lines().size()
                ? refused("fewer-lines", Bundle.DesignKeeping_fewerLines())
                : Optional.empty();
    }

    private static Optional<Refusal> refused(String code, String text) {
        return Optional.of(new Refusal(code, text));
    }
}
