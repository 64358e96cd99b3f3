package org.glintery.stash.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.LineSupply;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.View;
import org.glintery.stash.BagSize;
import org.glintery.workbench.parts.DrillLook;

/**
 * What the legend tab shows. Immutable; made without Swing.
 *
 * @param cards short names of the cards there are
 * @param next the drill that the next typed line is most likely like
 * @param photo of the printed legend
 * @param drillsPerBag what a bag of the piece holds
 */
record LegendSheet(List<Row> rows, List<String> cards, Drill next, Optional<Picture> photo, int drillsPerBag) {

    /**
     * A line.
     *
     * @param supply how its drill stands; empty on further lines of a drill that was told of already
     * @param repeated whether its symbol stands on another line too
     */
    record Row(LegendLine line, DrillLook look, CardEntry entry, Optional<LineSupply> supply, boolean repeated) {}

    LegendSheet {
        rows = List.copyOf(rows);
        cards = List.copyOf(cards);
    }

    static LegendSheet of(View view, Stash stash, UUID piece) {
        Legend legend = Legend.of(view, piece);
        List<LegendLine> lines = legend.lines();
        Map<Integer, LineSupply> supplies = new HashMap<>();
        stash.supplies(view, piece).forEach(supply -> supplies.put(supply.index(), supply));
        Set<String> repeated = repeated(lines);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            LegendLine line = lines.get(i);
            CardEntry entry = ColourCard.entry(
                            view, line.drill().card(), line.drill().code())
                    .orElse(CardEntry.UNKNOWN);
            rows.add(new Row(
                    line,
                    DrillLook.of(line.drill(), entry),
                    entry,
                    Optional.ofNullable(supplies.get(i)),
                    repeated.contains(line.symbol())));
        }
        Optional<Piece> value = view.find(Piece.TYPE, piece).map(stored -> stored.value());
        return new LegendSheet(rows, cards(view), next(lines, value), legend.photo(), BagSize.of(view, piece));
    }

    /** Needed, laid and missing over all lines, as far as they are known. */
    long sumNeeded() {
        return rows.stream().mapToLong(row -> row.line().needed().orElse(0L)).sum();
    }

    Balance sumMissing() {
        return rows.stream()
                .flatMap(row -> row.supply().stream())
                .map(supply -> supply.missing().orElse(Balance.ZERO))
                .reduce(Balance.ZERO, Balance::plus);
    }

    boolean allNeedsKnown() {
        return rows.stream().allMatch(row -> row.line().needed().isPresent());
    }

    private static Set<String> repeated(List<LegendLine> lines) {
        Set<String> seen = new HashSet<>();
        Set<String> repeated = new HashSet<>();
        for (LegendLine line : lines) {
            if (!line.symbol().isBlank() && !seen.add(line.symbol())) {
                repeated.add(line.symbol());
            }
        }
        return repeated;
    }

    private static List<String> cards(View view) {
        List<String> names = new ArrayList<>();
        names.add(ColourCard.OWN);
        view.all(ColourCard.TYPE).stream()
                .map(card -> card.value().name())
                .filter(name -> !name.equals(ColourCard.OWN))
                .forEach(names::add);
        return names;
    }

    private static Drill next(List<LegendLine> lines, Optional<Piece> piece) {
        if (!lines.isEmpty()) {
            return lines.get(lines.size() - 1).drill();
        }
        Shape shape = piece.flatMap(Piece::drillShape).orElse(Shape.ROUND);
        return Drill.of(shape, Drill.usualSizeHundredths(shape), ColourCard.OWN, "?");
    }
}
