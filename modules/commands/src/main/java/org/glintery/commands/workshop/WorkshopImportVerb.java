package org.glintery.commands.workshop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop import}: an export into an empty workshop. */
@ServiceProvider(service = Verb.class)
public final class WorkshopImportVerb extends WorkshopVerb {

    public WorkshopImportVerb() {
        super("import", Copied.class);
    }

    @Override
    @Messages("WorkshopImportVerb.summary=Bring an export into a workshop that is still empty")
    public String summary() {
        return Bundle.WorkshopImportVerb_summary();
    }

    @Override
    @Messages({"WorkshopImportVerb.file=an export as JSON", "WorkshopImportVerb.tables=an export as tables instead"})
    public List<Param> params() {
        return List.of(Tables.json(Bundle.WorkshopImportVerb_file()), Tables.zip(Bundle.WorkshopImportVerb_tables()));
    }

    @Override
    @Messages({"# {0} - file", "# {1} - how much of each", "WorkshopImportVerb.done=Imported {0}: {1}."})
    public VerbResult run(VerbCall call) {
        return Stream.of(call.value("file"), call.value("tables"))
                .flatMap(Optional::stream)
                .map(call::path)
                .flatMap(file -> Copied.missing(file).stream())
                .findFirst()
                .orElseGet(() -> Tables.carry(
                        call, Bundle::WorkshopImportVerb_done, Workshop::importJson, TableFiles::importTables));
    }
}
