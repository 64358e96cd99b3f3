package org.glintery.commands.workshop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.disk.SecondFolder;
import org.glintery.api.disk.SecondFolder.Last;
import org.glintery.api.disk.SecondFolder.Made;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop copy}: into a second folder, as the window does it by itself. */
@ServiceProvider(service = Verb.class)
public final class WorkshopCopyVerb extends WorkshopVerb {

    /**
     * What was copied.
     *
     * @param file the newest copy
     * @param made false when nothing had changed since that copy, so that no other was made
     * @param removed older copies
     */
    public record CopiedInto(String file, boolean made, List<String> removed) {}

    public WorkshopCopyVerb() {
        super("copy", CopiedInto.class);
    }

    @Override
    @Messages(
            "WorkshopCopyVerb.summary=Back up into a second folder if something changed, and remove the oldest copies there")
    public String summary() {
        return Bundle.WorkshopCopyVerb_summary();
    }

    @Override
    @Messages("WorkshopCopyVerb.folder=the folder; its newest ten copies and one a month stay")
    public List<Param> params() {
        return List.of(Param.positional("folder", "DIR", Bundle.WorkshopCopyVerb_folder()));
    }

    @Override
    public VerbResult run(VerbCall call) {
        SecondFolder second = new SecondFolder(call.path(call.need("folder")), call.workshop(), call.clock());
        Optional<Last> last = second.objection().isPresent() || second.isBehind() ? Optional.empty() : second.last();
        return last.map(WorkshopCopyVerb::unchanged).orElseGet(() -> copied(call, second.copy()));
    }

    @Messages({"# {0} - file", "WorkshopCopyVerb.unchanged=Nothing changed since it was copied to {0}."})
    private static VerbResult unchanged(Last last) {
        return VerbResult.said(
                new CopiedInto(last.file().toString(), false, List.of()),
                Bundle.WorkshopCopyVerb_unchanged(last.file()));
    }

    @Messages({
        "# {0} - file",
        "WorkshopCopyVerb.done=Copied to {0}.",
        "# {0} - file",
        "# {1} - how many were removed",
        "WorkshopCopyVerb.removed=Copied to {0}. {1,choice,1#One older copy was|1<Older copies were} removed."
    })
    private static VerbResult copied(VerbCall call, Result<Made> result) {
        if (result instanceof Result.Refused<Made> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<Made> ok = (Result.Ok<Made>) result;
        ok.warnings().forEach(call::say);
        Path file = ok.value().report().file();
        List<String> removed = ok.value().removed().stream().map(Path::toString).toList();
        return VerbResult.said(
                new CopiedInto(file.toString(), true, removed),
                removed.isEmpty()
                        ? Bundle.WorkshopCopyVerb_done(file)
                        : Bundle.WorkshopCopyVerb_removed(file, removed.size()));
    }
}
