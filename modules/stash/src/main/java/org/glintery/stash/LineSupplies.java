package org.glintery.stash;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.LineSupply;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.workshop.View;

/** How the lines of one legend stand. Lines that share a drill are told of together, on the first of them. */
final class LineSupplies {

    private final View view;
    private final UUID piece;
    private final PieceReservations reservations;

    LineSupplies(View view, UUID piece) {
        this.view = view;
        this.piece = piece;
        this.reservations = new PieceReservations(view, piece);
    }

    List<LineSupply> tell() {
        List<LegendLine> lines = Legend.of(view, piece).lines();
        Map<Drill, Integer> firsts = new LinkedHashMap<>();
        Map<Drill, Optional<Long>> needs = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            LegendLine line = lines.get(i);
            firsts.putIfAbsent(line.drill(), i);
            needs.merge(line.drill(), line.needed(), LineSupplies::sum);
        }
        List<LineSupply> supplies = new ArrayList<>();
        firsts.forEach((drill, index) -> supplies.add(supply(index, lines.get(index), needs.get(drill))));
        return supplies;
    }

    private LineSupply supply(int index, LegendLine line, Optional<Long> needed) {
        Drill drill = line.drill();
        Balance laid = view.balance(new Spot.OnCanvas(piece), drill);
        long forOthers = Math.max(0, view.reserved(drill) - reservations.of(drill));
        Balance there = DrillPlaces.forLaying(view, drill);
        Balance atHand = there.plus(-Math.min(there.count(), forOthers), 0, 0);
        boolean counted = laid.uncounted() == 0 && atHand.uncounted() == 0;
        Optional<Balance> missing =
                needed.map(n -> beyond(n, laid.plus(atHand))).filter(more -> more.count() == 0 || counted);
        return new LineSupply(index, line, laid, atHand, missing);
    }

    /** What is left over may be less than how unsure all of it is: then it is only perhaps enough. */
    private static Balance beyond(long needed, Balance there) {
        long more = needed - there.count();
        boolean enough = more <= 0 && -more >= there.uncertainty();
        return enough ? Balance.ZERO : new Balance(Math.max(0, more), there.variance(), 0);
    }

    private static Optional<Long> sum(Optional<Long> first, Optional<Long> second) {
        return first.flatMap(a -> second.map(b -> a + b));
    }
}
