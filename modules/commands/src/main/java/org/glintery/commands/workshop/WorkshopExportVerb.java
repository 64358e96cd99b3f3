package org.glintery.commands.workshop;

import java.util.List;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop export}: everything as JSON or as tables. */
@ServiceProvider(service = Verb.class)
public final class WorkshopExportVerb extends WorkshopVerb {

    public WorkshopExportVerb() {
        super("export", Copied.class);
    }

    @Override
    @Messages("WorkshopExportVerb.summary=Write everything as JSON, or as tables")
    public String summary() {
        return Bundle.WorkshopExportVerb_summary();
    }

    @Override
    @Messages({
        "WorkshopExportVerb.file=everything as JSON",
        "WorkshopExportVerb.tables=everything as tables for a spreadsheet instead"
    })
    public List<Param> params() {
        return List.of(Tables.json(Bundle.WorkshopExportVerb_file()), Tables.zip(Bundle.WorkshopExportVerb_tables()));
    }

    @Override
    @Messages({"# {0} - file", "# {1} - how much of each", "WorkshopExportVerb.done=Exported to {0}: {1}."})
    public VerbResult run(VerbCall call) {
        return Tables.carry(call, Bundle::WorkshopExportVerb_done, Workshop::exportJson, TableFiles::exportTables);
    }
}
