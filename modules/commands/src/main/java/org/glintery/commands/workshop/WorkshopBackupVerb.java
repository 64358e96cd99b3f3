package org.glintery.commands.workshop;

import java.nio.file.Path;
import java.util.List;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop backup}: everything in one file. */
@ServiceProvider(service = Verb.class)
public final class WorkshopBackupVerb extends WorkshopVerb {

    public WorkshopBackupVerb() {
        super("backup", Copied.class);
    }

    @Override
    @Messages("WorkshopBackupVerb.summary=Write everything into one file that can be read without us")
    public String summary() {
        return Bundle.WorkshopBackupVerb_summary();
    }

    @Override
    @Messages("WorkshopBackupVerb.file=the file to make")
    public List<Param> params() {
        return List.of(Param.positional("file", "FILE", Bundle.WorkshopBackupVerb_file()));
    }

    @Override
    @Messages({"# {0} - file", "# {1} - how much of each", "WorkshopBackupVerb.done=Backed up to {0}: {1}."})
    public VerbResult run(VerbCall call) {
        Path file = call.path(call.need("file"));
        return Copied.end(
                call, Bundle::WorkshopBackupVerb_done, file, call.workshop().backup(file));
    }
}
