package org.glintery.commands.workshop;

import java.util.List;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop.CheckReport;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop check}: compares everything that is kept with everything else. */
@ServiceProvider(service = Verb.class)
public final class WorkshopCheckVerb extends WorkshopVerb {

    /** What was compared. @param problems empty, or the call is refused and names them */
    public record Checked(long documents, long movements, long blobs, List<String> problems) {}

    public WorkshopCheckVerb() {
        super("check", "Compare balances, documents and pictures with each other", Checked.class);
    }

    @Override
    public VerbResult run(VerbCall call) {
        CheckReport report = call.workshop().check();
        if (!report.problems().isEmpty()) {
            return VerbResult.refused("problems", String.join("\n", report.problems()));
        }
        String text = "All is well: %d documents, %d movements, %d pictures."
                .formatted(report.documents(), report.movements(), report.blobs());
        return VerbResult.said(
                new Checked(report.documents(), report.movements(), report.blobs(), report.problems()), text);
    }
}
