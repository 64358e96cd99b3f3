package org.glintery.charts.verbs;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.charts.MadeChart;
import org.glintery.api.charts.Watch;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.charts.ChartSupply;
import org.glintery.charts.MakingCharts;
import org.glintery.charts.card.CardFile;
import org.glintery.charts.card.CountFile;
import org.glintery.charts.file.ChartJson;
import org.glintery.charts.file.ChartPicture;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code chart make}: a chart from a picture and a colour card, on files alone. */
@ServiceProvider(service = Verb.class)
@Messages("ChartMakeVerb.summary=Make a chart from a picture and a colour card")
public final class ChartMakeVerb implements Verb {

    @Override
    public String name() {
        return "chart make";
    }

    @Override
    public String summary() {
        return Bundle.ChartMakeVerb_summary();
    }

    @Override
    public String feature() {
        return "charts";
    }

    @Override
    public List<Param> params() {
        return ChartOptions.PARAMS;
    }

    @Override
    public Class<? extends Record> answers() {
        return ChartMade.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        ChartOptions options = new ChartOptions(call);
        Optional<String> wrong = options.wrong().or(() -> sameFile(call));
        if (wrong.isPresent()) {
            return VerbResult.wrongUsage(wrong.get());
        }
        Result<Drawn> made = InputFile.read(call, "card")
                .then(bytes -> new CardFile(call.codec()).read(cardName(call), bytes))
                .then(card -> InputFile.read(call, "picture")
                        .then(picture -> make(call, options, options.request(picture, card))));
        if (made instanceof Result.Refused<Drawn> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<Drawn> ok = (Result.Ok<Drawn>) made;
        ok.warnings().forEach(call::say);
        return written(call, options, ok.value(), ok.warnings());
    }

    private record Drawn(MadeChart chart, Optional<FromStock> stock) {}

    private static Result<Drawn> make(VerbCall call, ChartOptions options, ChartRequest request) {
        MakingCharts charts = new MakingCharts();
        Optional<String> from = call.value("from-stock");
        if (from.isEmpty()) {
            return charts.make(request, Watch.NONE).then(made -> Result.ok(new Drawn(made, Optional.empty())));
        }
        Result<Map<String, Long>> counts = from.get().strip().equalsIgnoreCase("house")
                ? options.inTheHouse().counts(call, request.card().name())
                : InputFile.read(call, "from-stock").then(CountFile::read);
        return counts.then(there -> charts.makeFromStock(request, there, Watch.NONE))
                .then(made -> Result.ok(new Drawn(made.made(), Optional.of(FromStock.of(made)))));
    }

    @Messages("ChartMakeVerb.sameFile=--out and --png are two files. Give them two names.")
    private static Optional<String> sameFile(VerbCall call) {
        Optional<Path> out = call.value("out").map(call::path).map(Path::normalize);
        return out.isPresent() && out.equals(call.value("png").map(call::path).map(Path::normalize))
                ? Optional.of(Bundle.ChartMakeVerb_sameFile())
                : Optional.empty();
    }

    private static VerbResult written(VerbCall call, ChartOptions options, Drawn drawn, List<String> warnings) {
        MadeChart made = drawn.chart();
        Optional<Path> out = call.value("out").map(call::path);
        Optional<Path> png = call.value("png").map(call::path);
        List<FilesOut.Content> files = new ArrayList<>();
        out.ifPresent(file -> files.add(new FilesOut.Content(
                file, ChartJson.of(made.chart(), call.codec()).getBytes(StandardCharsets.UTF_8))));
        png.ifPresent(file -> files.add(new FilesOut.Content(file, ChartPicture.png(made.chart()))));
        Optional<Refusal> refusal = FilesOut.write(files);
        if (refusal.isPresent()) {
            return VerbResult.refused(refusal.get());
        }
        ChartSupply supply = ChartSupply.of(made.chart(), options.drillsPerBag(), options.drillsAnHour());
        ChartMade answer = ChartMade.of(made, supply, drawn.stock(), out, png, warnings);
        return VerbResult.said(answer, answer.text());
    }

    private static String cardName(VerbCall call) {
        String file = call.path(call.need("card")).getFileName().toString();
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }
}
