package org.glintery.stash.verbs;

import org.glintery.api.GlinteryException;
import org.glintery.api.stash.Stash;
import org.glintery.api.verb.VerbCall;

/** The stash of the workshop that a verb was called for. */
final class StashOfCall {

    private StashOfCall() {}

    static Stash of(VerbCall call) {
        return call.workshop()
                .find(Stash.class)
                .orElseThrow(() -> new GlinteryException("the stash brings this verb but not its service"));
    }
}
