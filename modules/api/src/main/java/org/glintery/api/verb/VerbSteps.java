package org.glintery.api.verb;

import java.util.function.Function;
import java.util.function.Supplier;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ByName;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Stored;

/** Steps that most verbs take. Verb thread only. */
@Preview(since = "1.0")
public final class VerbSteps {

    private VerbSteps() {}

    /** Goes on with the document that an id or a name means; else ends as wrong usage with what may have been meant. */
    public static <T extends Record> VerbResult named(
            VerbCall call,
            DocumentType<T> type,
            Function<T, String> name,
            String written,
            Function<Stored<T>, VerbResult> next) {
        var view = call.workshop().view();
        Result<Stored<T>> found = ByName.find(view, type, name, written);
        if (found instanceof Result.Ok<Stored<T>> ok) {
            return next.apply(ok.value());
        }
        String text = ((Result.Refused<Stored<T>>) found).refusal().text();
        return new VerbResult.WrongUsage(text, ByName.candidates(view, type, name, written));
    }

    /** Applies a change, says its warnings on standard error and answers; a refusal ends the verb. */
    public static VerbResult apply(VerbCall call, Result<ChangeSet> change, Supplier<VerbResult> answer) {
        Result<Applied> applied = change.then(call.workshop()::apply);
        if (applied instanceof Result.Refused<Applied> no) {
            return VerbResult.refused(no.refusal());
        }
        ((Result.Ok<Applied>) applied).warnings().forEach(call::say);
        return answer.get();
    }
}
