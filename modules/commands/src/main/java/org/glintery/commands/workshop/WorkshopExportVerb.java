package org.glintery.commands.workshop;

import org.glintery.api.exchange.TableFiles;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop export}: everything as JSON or as tables. */
@ServiceProvider(service = Verb.class)
public final class WorkshopExportVerb extends WorkshopVerb {

    public WorkshopExportVerb() {
        super("export", "Write everything as JSON, or as tables", Copied.class, Tables.params());
    }

    @Override
    public VerbResult run(VerbCall call) {
        return Tables.carry(call, "Exported to", Workshop::exportJson, TableFiles::exportTables);
    }
}
