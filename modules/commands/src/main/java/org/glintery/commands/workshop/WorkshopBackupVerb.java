package org.glintery.commands.workshop;

import java.nio.file.Path;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop backup}: everything in one file. */
@ServiceProvider(service = Verb.class)
public final class WorkshopBackupVerb extends WorkshopVerb {

    public WorkshopBackupVerb() {
        super(
                "backup",
                "Write everything into one file that can be read without us",
                Copied.class,
                Param.positional("file", "FILE", "the file to make"));
    }

    @Override
    public VerbResult run(VerbCall call) {
        Path file = call.path(call.need("file"));
        return Copied.end(call, "Backed up to", file, call.workshop().backup(file));
    }
}
