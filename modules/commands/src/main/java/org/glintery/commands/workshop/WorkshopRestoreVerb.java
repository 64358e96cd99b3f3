package org.glintery.commands.workshop;

import java.nio.file.Path;
import java.util.List;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop restore}: a backup into a new folder. */
@ServiceProvider(service = Verb.class)
public final class WorkshopRestoreVerb extends WorkshopVerb {

    public WorkshopRestoreVerb() {
        super("restore", Copied.class);
    }

    @Override
    @Messages("WorkshopRestoreVerb.summary=Lay a backup out in a new or empty folder")
    public String summary() {
        return Bundle.WorkshopRestoreVerb_summary();
    }

    @Override
    @Messages("WorkshopRestoreVerb.file=the backup")
    public List<Param> params() {
        return List.of(Param.positional("file", "FILE", Bundle.WorkshopRestoreVerb_file()), newFolder());
    }

    @Override
    @Messages({
        "# {0} - folder",
        "# {1} - file",
        "# {2} - how much of each",
        "WorkshopRestoreVerb.done=Restored into {0} from {1}: {2}."
    })
    public VerbResult run(VerbCall call) {
        Path file = call.path(call.need("file"));
        Path folder = newFolder(call);
        return Copied.missing(file)
                .orElseGet(() -> Copied.end(
                        call,
                        (from, counts) -> Bundle.WorkshopRestoreVerb_done(folder, from, counts),
                        file,
                        call.workshops().restore(file, folder)));
    }
}
