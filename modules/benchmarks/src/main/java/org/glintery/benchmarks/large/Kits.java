package org.glintery.benchmarks.large;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;

/** Kits of one piece each, one after another. The same seed gives the same kits. */
final class Kits {

    private static final int SHOPS = 30;
    private static final int LEAST_NEEDED = 80;
    private static final int MOST_NEEDED = 3_000;
    private static final int SPARE_PERCENT = 10;

    private final SplittableRandom random;
    private final Card card;
    private final int lines;

    Kits(SplittableRandom random, int lines) {
        this.random = random;
        this.card = new Card(random.split());
        this.lines = lines;
    }

    NewKit next(int number, Standing standing, LocalDate on) {
        String title = Titles.of(number % Titles.most());
        Shape shape = random.nextInt(3) == 0 ? Shape.ROUND : Shape.SQUARE;
        Piece piece = new Piece(
                title,
                Optional.empty(),
                Optional.empty(),
                standing,
                Optional.of(About.on(on)),
                Coverage.FULL,
                Optional.of(shape),
                Canvas.drilled(50.0 * (4 + random.nextInt(13)), 50.0 * (4 + random.nextInt(17))),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                "");
        Kit kit = new Kit(
                title,
                Optional.of("Quay " + (1 + random.nextInt(SHOPS))),
                Optional.of(About.on(on.minusDays(20))),
                Optional.of(About.on(on)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "");
        return new NewKit(
                id(),
                kit,
                List.of(new NewKit.NewPiece(id(), piece, Legend.of(legend(shape)))),
                Map.of(Card.NAME, card.entries()),
                List.of());
    }

    private List<LegendLine> legend(Shape shape) {
        List<LegendLine> legend = new ArrayList<>();
        for (int line = 0; line < lines; line++) {
            long needed = random.nextInt(LEAST_NEEDED, MOST_NEEDED);
            legend.add(new LegendLine(
                    symbol(line),
                    card.drill(shape),
                    Optional.of(needed),
                    Amount.counted(needed + needed * SPARE_PERCENT / 100),
                    Optional.empty(),
                    Map.of()));
        }
        return legend;
    }

    /** A to Z, then AA, AB and on. */
    private static String symbol(int line) {
        String last = String.valueOf((char) ('A' + line % 26));
        return line < 26 ? last : symbol(line / 26 - 1) + last;
    }

    private UUID id() {
        return new UUID(random.nextLong(), random.nextLong());
    }
}
