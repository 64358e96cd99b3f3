package org.glintery.commands.workshop;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Applied;

/**
 * A step back or forth in the history.
 *
 * @param sentence of the change that was taken back or made again
 * @param change the one that did so
 * @param revision of the workshop after it
 */
public record Stepped(String sentence, UUID change, long revision) {

    /** Ends a verb. @param done in words, such as "Undone" */
    static VerbResult end(VerbCall call, String done, Optional<String> sentence, Result<Applied> result) {
        if (result instanceof Result.Refused<Applied> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<Applied> ok = (Result.Ok<Applied>) result;
        ok.warnings().forEach(call::say);
        String what = sentence.orElse("the last change");
        return VerbResult.said(new Stepped(what, ok.value().change(), ok.value().revision()), done + ": " + what + ".");
    }
}
