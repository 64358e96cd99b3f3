package org.glintery.charts.verbs;

import java.util.List;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code chart show}: what a kept chart takes, line by line. */
@ServiceProvider(service = Verb.class)
@Messages({
    "ChartShowVerb.summary=Show what a kept chart takes of each drill, and how much of it is laid",
    "ChartShowVerb.design=the title or id of a kept chart"
})
public final class ChartShowVerb implements Verb {

    @Override
    public String name() {
        return "chart show";
    }

    @Override
    public String summary() {
        return Bundle.ChartShowVerb_summary();
    }

    @Override
    public String feature() {
        return "charts";
    }

    @Override
    public List<Param> params() {
        return List.of(Param.positional("design", "CHART", Bundle.ChartShowVerb_design()));
    }

    @Override
    public Class<? extends Record> answers() {
        return DesignAnswer.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return DesignsOfCall.named(call, design -> {
            DesignAnswer answer = DesignAnswer.of(call.workshop().view(), DesignsOfCall.of(call), design);
            return VerbResult.said(answer, answer.table());
        });
    }
}
