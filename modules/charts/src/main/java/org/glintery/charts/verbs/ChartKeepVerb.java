package org.glintery.charts.verbs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.DesignLine;
import org.glintery.api.charts.Grid;
import org.glintery.api.charts.NewDesign;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Piece;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.charts.file.ChartReading;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code chart keep}: a chart from a file into the workshop. */
@ServiceProvider(service = Verb.class)
@Messages({
    "ChartKeepVerb.summary=Keep a chart in the workshop, to be changed, laid and printed",
    "ChartKeepVerb.file=the chart, as chart make writes it",
    "ChartKeepVerb.title=what it is called; the file's name when not said",
    "ChartKeepVerb.card=the short name of the card that its codes are of; the own card when not said",
    "ChartKeepVerb.piece=the piece that is made after it",
    "ChartKeepVerb.pitch=from cell to cell; 2.5 when not said"
})
public final class ChartKeepVerb implements Verb {

    @Override
    public String name() {
        return "chart keep";
    }

    @Override
    public String summary() {
        return Bundle.ChartKeepVerb_summary();
    }

    @Override
    public String feature() {
        return "charts";
    }

    @Override
    public List<Param> params() {
        return Stream.of(
                        List.of(
                                Param.positional("file", "CHART.json", Bundle.ChartKeepVerb_file()),
                                Param.option("title", "TEXT", Bundle.ChartKeepVerb_title()),
                                Param.option("card", "NAME", Bundle.ChartKeepVerb_card()),
                                Param.option("piece", "PIECE", Bundle.ChartKeepVerb_piece()),
                                Param.option("pitch", "MM", Bundle.ChartKeepVerb_pitch())),
                        DrillKind.PARAMS)
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public Class<? extends Record> answers() {
        return DesignAnswer.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        OptionNumbers numbers = new OptionNumbers(call);
        DrillKind kind = DrillKind.of(numbers);
        double pitch = numbers.number("pitch", 0.1, 100).orElse(Grid.USUAL_PITCH_MM);
        if (numbers.wrong().isPresent()) {
            return VerbResult.wrongUsage(numbers.wrong().get());
        }
        Result<Chart> chart = InputFile.read(call, "file").then(bytes -> ChartReading.read(bytes, pitch, call.codec()));
        if (chart instanceof Result.Refused<Chart> no) {
            return VerbResult.refused(no.refusal());
        }
        return call.value("piece")
                .map(written -> VerbSteps.named(
                        call,
                        Piece.TYPE,
                        Piece::title,
                        written,
                        piece -> keep(call, chart.orThrow(), kind, Optional.of(piece.id()))))
                .orElseGet(() -> keep(call, chart.orThrow(), kind, Optional.empty()));
    }

    private static VerbResult keep(VerbCall call, Chart chart, DrillKind kind, Optional<UUID> piece) {
        String card = call.value("card").orElse(ColourCard.OWN);
        List<DesignLine> lines = chart.lines().stream()
                .map(line -> new DesignLine(line.symbol(), kind.drill(card, line.code()), line.hex()))
                .toList();
        Design design = new Design(
                call.value("title").orElseGet(() -> fileName(call)), piece, chart.grid(), lines, Optional.empty());
        UUID id = UUID.randomUUID();
        NewDesign made = new NewDesign(design, DesignCells.of(chart), Optional.empty());
        return VerbSteps.apply(call, DesignsOfCall.of(call).keep(call.workshop().view(), id, made), () -> {
            var view = call.workshop().view();
            DesignAnswer answer = DesignAnswer.of(
                    view, DesignsOfCall.of(call), view.find(Design.TYPE, id).orElseThrow());
            return VerbResult.said(answer, answer.text());
        });
    }

    private static String fileName(VerbCall call) {
        Path file = call.path(call.need("file"));
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
