package org.glintery.activework.verbs;

import org.glintery.api.GlinteryException;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.verb.VerbCall;

/** The bench of the workshop that a verb was called for. */
final class BenchOfCall {

    private BenchOfCall() {}

    static ActiveWork of(VerbCall call) {
        return call.workshop()
                .find(ActiveWork.class)
                .orElseThrow(() -> new GlinteryException("the bench brings this verb but not its service"));
    }
}
