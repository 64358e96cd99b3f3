package org.glintery.activework.verbs;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Progress;
import org.glintery.api.stash.Piece;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code bench forecast}: when a piece will be done. */
@ServiceProvider(service = Verb.class)
public final class BenchForecastVerb implements Verb {

    /**
     * When a piece will be done.
     *
     * @param early one in ten futures is done by then
     * @param likely half of them
     * @param late nine in ten
     * @param rough whether too little is known for more than a guess
     */
    public record Foreseen(
            UUID piece,
            String title,
            Optional<LocalDate> early,
            Optional<LocalDate> likely,
            Optional<LocalDate> late,
            boolean rough,
            String words,
            String howWeKnow,
            Progress progress) {}

    @Override
    public String name() {
        return "bench forecast";
    }

    @Override
    @Messages("BenchForecastVerb.summary=Tell when a piece will be done")
    public String summary() {
        return Bundle.BenchForecastVerb_summary();
    }

    @Override
    public String feature() {
        return "activework";
    }

    @Override
    @Messages("BenchForecastVerb.piece=its title or id")
    public List<Param> params() {
        return List.of(Param.positional("piece", "PIECE", Bundle.BenchForecastVerb_piece()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Foreseen.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> foresee(call, piece));
    }

    @Messages({"# {0} - title", "# {1} - forecast", "BenchForecastVerb.said={0}: {1}"})
    private static VerbResult foresee(VerbCall call, Stored<Piece> piece) {
        ActiveWork bench = BenchOfCall.of(call);
        var view = call.workshop().view();
        Forecast forecast = bench.forecast(view, piece.id(), LocalDate.now(call.clock()));
        Progress progress = bench.progress(view, piece.id());
        String title = piece.value().title();
        Foreseen foreseen = new Foreseen(
                piece.id(),
                title,
                forecast.early(),
                forecast.likely(),
                forecast.late(),
                forecast.rough(),
                forecast.words(),
                forecast.howWeKnow(),
                progress);
        String figures = forecast.howWeKnow().isBlank() ? "" : "\n  " + forecast.howWeKnow();
        return VerbResult.said(foreseen, Bundle.BenchForecastVerb_said(title, forecast.words()) + figures);
    }
}
