package org.glintery.commands.workshop;

import org.glintery.api.exchange.TableFiles;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop import}: an export into an empty workshop. */
@ServiceProvider(service = Verb.class)
public final class WorkshopImportVerb extends WorkshopVerb {

    public WorkshopImportVerb() {
        super("import", "Bring an export into a workshop that is still empty", Copied.class, Tables.params());
    }

    @Override
    public VerbResult run(VerbCall call) {
        return Tables.carry(call, "Imported", Workshop::importJson, TableFiles::importTables);
    }
}
