package org.glintery.commands.workshop;

import java.nio.file.Path;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop restore}: a backup into a new folder. */
@ServiceProvider(service = Verb.class)
public final class WorkshopRestoreVerb extends WorkshopVerb {

    public WorkshopRestoreVerb() {
        super(
                "restore",
                "Lay a backup out in a new or empty folder",
                Copied.class,
                Param.positional("file", "FILE", "the backup"),
                NEW_FOLDER);
    }

    @Override
    public VerbResult run(VerbCall call) {
        Path file = call.path(call.need("file"));
        Path folder = newFolder(call);
        return Copied.end(
                call,
                "Restored into " + folder + " from",
                file,
                call.workshops().restore(file, folder));
    }
}
