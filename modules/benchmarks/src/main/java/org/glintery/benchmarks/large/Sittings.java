package org.glintery.benchmarks.large;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.time.About;

/** Evenings at a piece, some told in drills, some by symbol. */
final class Sittings {

    private static final int BY_SYMBOL_ONE_IN = 3;
    private static final int MOST_SYMBOLS = 4;
    private static final List<String> PLACES = List.of("kitchen table", "by the window", "ferry", "club evening");

    private final SplittableRandom random;

    Sittings(SplittableRandom random) {
        this.random = random;
    }

    Sitting next(UUID piece, List<LegendLine> legend, LocalDate on) {
        return new Sitting(
                piece,
                About.on(on),
                Optional.of(on.atTime(LocalTime.of(18 + random.nextInt(4), random.nextInt(60)))),
                Optional.of("Europe/Oslo"),
                Optional.of(30 + random.nextInt(120)),
                random.nextInt(15),
                laid(legend),
                Optional.of(PLACES.get(random.nextInt(PLACES.size()))),
                random.nextInt(5) == 0 ? "a quiet evening" : "");
    }

    private Laid laid(List<LegendLine> legend) {
        if (random.nextInt(BY_SYMBOL_ONE_IN) > 0) {
            return Laid.drills(500 + random.nextInt(2_500));
        }
        Map<String, Long> bySymbol = new LinkedHashMap<>();
        int symbols = 1 + random.nextInt(MOST_SYMBOLS);
        for (int i = 0; i < symbols; i++) {
            bySymbol.put(legend.get(random.nextInt(legend.size())).symbol(), 20L + random.nextInt(200));
        }
        return new Laid(Optional.empty(), Optional.empty(), Optional.empty(), bySymbol);
    }
}
