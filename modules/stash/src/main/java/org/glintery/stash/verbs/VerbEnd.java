package org.glintery.stash.verbs;

import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbResult;

/** How a verb ends that was refused on its way. */
final class VerbEnd {

    private VerbEnd() {}

    /** Wrong usage for what could not be understood, else a refusal. */
    static VerbResult of(Refusal refusal) {
        return refusal.code().equals(WordOption.USAGE) || refusal.code().equals("not-a-spot")
                ? VerbResult.wrongUsage(refusal.text())
                : VerbResult.refused(refusal);
    }

    /** The value as it is, or the end of the verb that a refusal is. */
    static VerbResult of(Result<VerbResult> result) {
        return result instanceof Result.Ok<VerbResult> ok
                ? ok.value()
                : of(((Result.Refused<VerbResult>) result).refusal());
    }
}
