package org.glintery.activework;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.planning.CompletionForecast;
import org.glintery.planning.Outlook;

/** When a piece will be done, if work goes on as it did. Any thread. */
final class PieceForecast {

    /** The same workshop on the same day always gives the same answer. */
    private static final long SEED = 1;

    private record Asked(UUID piece, LocalDate today) implements Derived<Forecast> {
        @Override
        public Forecast from(View view) {
            return view.find(Piece.TYPE, piece)
                    .map(stored -> new PieceForecast(view, stored, today).forecast())
                    .orElseGet(ForecastWords::gone);
        }
    }

    private final LocalDate today;
    private final Piece piece;
    private final Whole whole;
    private final List<Sitting> sittings;
    private final Progress progress;

    private PieceForecast(View view, Stored<Piece> stored, LocalDate today) {
        this.today = today;
        this.piece = stored.value();
        this.whole = Whole.of(view, stored.id(), piece);
        this.sittings =
                PieceSittings.of(view, stored.id()).stream().map(Stored::value).toList();
        this.progress = new PieceProgress(view, stored.id()).progress();
    }

    static Forecast of(View view, UUID piece, LocalDate today) {
        return view.derived(new Asked(piece, today));
    }

    private Forecast forecast() {
        if (piece.standing() == Standing.MADE) {
            return ForecastWords.made();
        }
        if (piece.standing() == Standing.LET_GO) {
            return ForecastWords.letGo();
        }
        if (sittings.isEmpty()) {
            return ForecastWords.noSitting();
        }
        if (progress.share().isEmpty()) {
            return ForecastWords.missing(whole, sittings);
        }
        Function<Laid, Optional<Double>> measure = whole.drills().isPresent() ? whole::drillsOf : whole::shareOf;
        double all = whole.drills().map(Long::doubleValue).orElse(1.0);
        double laid = sittings.stream()
                .flatMap(sitting -> measure.apply(sitting.laid()).stream())
                .mapToDouble(Double::doubleValue)
                .sum();
        if (laid >= all) {
            return ForecastWords.allLaid(today);
        }
        return Pace.of(sittings, measure, DeclaredRest.of(piece, sittings), today)
                .map(pace -> outlook(pace, all - laid))
                .orElseGet(ForecastWords::noPace);
    }

    private Forecast outlook(Pace pace, double remaining) {
        Outlook outlook = new CompletionForecast(SEED).outlook(pace.history(), remaining);
        String figures = ForecastWords.figures(progress, pace);
        return outlook instanceof Outlook.InDays days
                ? ForecastWords.inDays(days, pace.last(), today, figures)
                : ForecastWords.noPace();
    }
}
