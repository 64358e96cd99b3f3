package org.glintery.commands.workshop;

import java.util.List;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop.CheckReport;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop check}: compares everything that is kept with everything else. */
@ServiceProvider(service = Verb.class)
public final class WorkshopCheckVerb extends WorkshopVerb {

    /** What was compared. @param problems empty, or the call is refused and names them */
    public record Checked(long documents, long movements, long blobs, List<String> problems) {}

    public WorkshopCheckVerb() {
        super("check", Checked.class);
    }

    @Override
    @Messages("WorkshopCheckVerb.summary=Compare balances, documents and pictures with each other")
    public String summary() {
        return Bundle.WorkshopCheckVerb_summary();
    }

    @Override
    @Messages({"# {0} - how much of each", "WorkshopCheckVerb.done=All is well: {0}."})
    public VerbResult run(VerbCall call) {
        CheckReport report = call.workshop().check();
        if (!report.problems().isEmpty()) {
            return VerbResult.refused("problems", String.join("\n", report.problems()));
        }
        String text =
                Bundle.WorkshopCheckVerb_done(Copied.counts(report.documents(), report.movements(), report.blobs()));
        return VerbResult.said(
                new Checked(report.documents(), report.movements(), report.blobs(), report.problems()), text);
    }
}
