package org.glintery.commands.workshop;

import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Applied;
import org.openide.util.NbBundle.Messages;

/**
 * A step back or forth in the history.
 *
 * @param sentence of the change that was taken back or made again
 * @param change the one that did so
 * @param revision of the workshop after it
 */
public record Stepped(String sentence, UUID change, long revision) {

    /** Ends a verb. @param done says so, of the change */
    @Messages("Stepped.last=the last change")
    static VerbResult end(
            VerbCall call, UnaryOperator<String> done, Optional<String> sentence, Result<Applied> result) {
        if (result instanceof Result.Refused<Applied> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<Applied> ok = (Result.Ok<Applied>) result;
        ok.warnings().forEach(call::say);
        String what = sentence.orElseGet(Bundle::Stepped_last);
        return VerbResult.said(new Stepped(what, ok.value().change(), ok.value().revision()), done.apply(what));
    }
}
