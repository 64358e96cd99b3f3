package org.glintery.commands.workshop;

import java.util.Optional;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop undo}: takes the last change back. */
@ServiceProvider(service = Verb.class)
public final class WorkshopUndoVerb extends WorkshopVerb {

    public WorkshopUndoVerb() {
        super("undo", "Take the last change back", Stepped.class);
    }

    @Override
    public VerbResult run(VerbCall call) {
        Optional<String> sentence = call.workshop().undoable();
        return Stepped.end(call, "Undone", sentence, call.workshop().undo());
    }
}
