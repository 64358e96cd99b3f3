package org.glintery.commands;

import org.glintery.api.verb.VerbResult;

/** Ends a verb from within what it asked for, such as a workshop that can't be opened. */
final class VerbEnds extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient VerbResult result;

    VerbEnds(VerbResult result) {
        super("the verb ends here", null, false, false);
        this.result = result;
    }

    VerbResult result() {
        return result;
    }
}
