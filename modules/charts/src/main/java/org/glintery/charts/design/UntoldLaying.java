package org.glintery.charts.design;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Progress;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.LineNeed;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.Legend;
import org.glintery.api.workshop.View;

/**
 * What is marked as laid on a chart and told by no sitting: nothing has to be remembered for it, so that it is right again
 * after whatever was undone. Any thread.
 */
final class UntoldLaying {

    /** Percent and sections are told in round numbers: so small a part of the whole says nothing. */
    private static final double ROUNDING = 0.01;

    private final View view;
    private final ActiveWork activeWork;

    UntoldLaying(View view, ActiveWork activeWork) {
        this.view = view;
        this.activeWork = activeWork;
    }

    Laid of(UUID id, Design design) {
        return design.piece()
                .map(piece -> of(piece, design, DesignCells.of(view, id).orElseThrow()))
                .orElse(Laid.NOT_SAID);
    }

    private Laid of(UUID piece, Design design, DesignCells cells) {
        Map<Drill, String> symbols = new HashMap<>();
        Legend.of(view, piece).lines().forEach(line -> symbols.putIfAbsent(line.drill(), line.symbol()));
        Map<String, Long> bySymbol = new LinkedHashMap<>();
        long laid = 0;
        for (LineNeed need : KeptDesigns.needs(design, cells)) {
            laid += need.laid();
            Optional.ofNullable(symbols.get(need.line().drill()))
                    .ifPresent(symbol -> bySymbol.merge(symbol, need.laid(), Long::sum));
        }
        activeWork
                .sittings(view, piece)
                .forEach(sitting -> sitting.value()
                        .laid()
                        .bySymbol()
                        .forEach((symbol, told) -> bySymbol.computeIfPresent(symbol, (s, all) -> all - told)));
        bySymbol.values().removeIf(left -> left <= 0);
        return offered(laid, bySymbol, activeWork.progress(view, piece), cells.count());
    }

    private static Laid offered(long laid, Map<String, Long> bySymbol, Progress progress, int whole) {
        long left = laid - progress.laidDrills().orElse(0L);
        if (left <= 0 || progress.estimated() && left < ROUNDING * whole) {
            return Laid.NOT_SAID;
        }
        long named = bySymbol.values().stream().mapToLong(Long::longValue).sum();
        // by symbol only if that is all of it: a sitting that also told a bare number may have told of these very
        // drills
        return named == left
                ? new Laid(Optional.empty(), Optional.empty(), Optional.empty(), bySymbol)
                : Laid.drills(left);
    }
}
