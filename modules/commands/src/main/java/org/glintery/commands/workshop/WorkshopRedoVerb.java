package org.glintery.commands.workshop;

import java.util.Optional;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop redo}: makes again what was undone last. */
@ServiceProvider(service = Verb.class)
public final class WorkshopRedoVerb extends WorkshopVerb {

    public WorkshopRedoVerb() {
        super("redo", "Make again what was undone last", Stepped.class);
    }

    @Override
    public VerbResult run(VerbCall call) {
        Optional<String> sentence = call.workshop().redoable();
        return Stepped.end(call, "Done again", sentence, call.workshop().redo());
    }
}
