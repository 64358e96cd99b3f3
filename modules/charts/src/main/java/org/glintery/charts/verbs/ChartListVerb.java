package org.glintery.charts.verbs;

import java.util.List;
import java.util.UUID;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.Designs;
import org.glintery.api.ledger.Balance;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code chart list}: the charts that are kept. */
@ServiceProvider(service = Verb.class)
@Messages({
    "ChartListVerb.summary=List the charts that are kept in the workshop",
    "ChartListVerb.title=Title",
    "ChartListVerb.size=Cells",
    "ChartListVerb.drills=Drills",
    "ChartListVerb.laid=Laid",
    "ChartListVerb.id=Id",
    "# {0} - columns",
    "# {1} - rows",
    "ChartListVerb.cells={0} x {1}",
    "ChartListVerb.none=No chart is kept."
})
public final class ChartListVerb implements Verb {

    /** The charts, in the order they came. */
    public record KeptCharts(List<KeptChart> charts) {}

    /** One of them. @param laid how many of its drills are laid */
    public record KeptChart(UUID id, String title, int columns, int rows, long drills, long laid) {}

    @Override
    public String name() {
        return "chart list";
    }

    @Override
    public String summary() {
        return Bundle.ChartListVerb_summary();
    }

    @Override
    public String feature() {
        return "charts";
    }

    @Override
    public List<Param> params() {
        return List.of();
    }

    @Override
    public Class<? extends Record> answers() {
        return KeptCharts.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        Designs designs = DesignsOfCall.of(call);
        var view = call.workshop().view();
        List<KeptChart> kept = view.all(Design.TYPE).stream()
                .map(design -> DesignAnswer.of(view, designs, design))
                .map(one -> new KeptChart(one.id(), one.title(), one.columns(), one.rows(), one.drills(), one.laid()))
                .toList();
        TextTable table = new TextTable(
                Bundle.ChartListVerb_title(),
                Bundle.ChartListVerb_size(),
                Bundle.ChartListVerb_drills(),
                Bundle.ChartListVerb_laid(),
                Bundle.ChartListVerb_id());
        kept.forEach(one -> table.row(
                one.title(),
                Bundle.ChartListVerb_cells(Balance.grouped(one.columns()), Balance.grouped(one.rows())),
                Balance.grouped(one.drills()),
                Balance.grouped(one.laid()),
                one.id()));
        return VerbResult.said(new KeptCharts(kept), table.isEmpty() ? Bundle.ChartListVerb_none() : table.toString());
    }
}
