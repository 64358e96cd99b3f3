package org.glintery.finishes.verbs;

import org.glintery.api.GlinteryException;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.verb.VerbCall;

/** The finishes of the workshop that a verb was called for. */
final class FinishesOfCall {

    private FinishesOfCall() {}

    static Finishes of(VerbCall call) {
        return call.workshop()
                .find(Finishes.class)
                .orElseThrow(() -> new GlinteryException("the finishes bring this verb but not their service"));
    }
}
