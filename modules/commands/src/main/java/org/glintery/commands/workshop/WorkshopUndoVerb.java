package org.glintery.commands.workshop;

import java.util.Optional;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop undo}: takes the last change back. */
@ServiceProvider(service = Verb.class)
public final class WorkshopUndoVerb extends WorkshopVerb {

    public WorkshopUndoVerb() {
        super("undo", Stepped.class);
    }

    @Override
    @Messages("WorkshopUndoVerb.summary=Take the last change back")
    public String summary() {
        return Bundle.WorkshopUndoVerb_summary();
    }

    @Override
    @Messages({"# {0} - what was changed", "WorkshopUndoVerb.done=Undone: {0}."})
    public VerbResult run(VerbCall call) {
        Optional<String> sentence = call.workshop().undoable();
        return Stepped.end(
                call, Bundle::WorkshopUndoVerb_done, sentence, call.workshop().undo());
    }
}
