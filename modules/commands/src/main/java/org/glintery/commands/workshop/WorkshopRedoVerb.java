package org.glintery.commands.workshop;

import java.util.Optional;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop redo}: makes again what was undone last. */
@ServiceProvider(service = Verb.class)
public final class WorkshopRedoVerb extends WorkshopVerb {

    public WorkshopRedoVerb() {
        super("redo", Stepped.class);
    }

    @Override
    @Messages("WorkshopRedoVerb.summary=Make again what was undone last")
    public String summary() {
        return Bundle.WorkshopRedoVerb_summary();
    }

    @Override
    @Messages({"# {0} - what was changed", "WorkshopRedoVerb.done=Done again: {0}."})
    public VerbResult run(VerbCall call) {
        Optional<String> sentence = call.workshop().redoable();
        return Stepped.end(
                call, Bundle::WorkshopRedoVerb_done, sentence, call.workshop().redo());
    }
}
