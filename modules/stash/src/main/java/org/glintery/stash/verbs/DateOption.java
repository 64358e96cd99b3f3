package org.glintery.stash.verbs;

import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.time.About;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.WrittenDay;
import org.openide.util.NbBundle.Messages;

/** Options that say when, as people say it. */
final class DateOption {

    private DateOption() {}

    @Messages({
        "# {0} - option",
        "# {1} - what is written",
        "DateOption.noDate=--{0} ''{1}'' is not a date. Write it like 2025-03-31, ''about October 2024'' or ''spring 2023''."
    })
    static Result<Optional<About>> of(VerbCall call, String option) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        Optional<About> said = WrittenDay.of(call, written.get());
        return said.isPresent()
                ? Result.ok(said)
                : Result.refused(WordOption.USAGE, Bundle.DateOption_noDate(option, written.get()));
    }
}
