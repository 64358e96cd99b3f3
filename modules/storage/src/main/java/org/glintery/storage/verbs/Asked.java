package org.glintery.storage.verbs;

import java.util.Optional;
import java.util.function.Function;
import org.glintery.api.ledger.Balance;
import org.glintery.api.time.About;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.WrittenDay;
import org.glintery.api.verb.WrittenWhole;
import org.openide.util.NbBundle.Messages;

/** Numbers and dates among a verb's options; what can't be understood ends the verb as wrong usage. */
final class Asked {

    private Asked() {}

    @Messages({
        "# {0} - option",
        "# {1} - least",
        "# {2} - most",
        "# {3} - written",
        "Asked.noNumber=--{0} is a whole number from {1} to {2}, not ''{3}''."
    })
    static VerbResult whole(
            VerbCall call, String option, long least, long most, Function<Optional<Long>, VerbResult> next) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return next.apply(Optional.empty());
        }
        Optional<Long> number = WrittenWhole.of(written.get());
        if (number.filter(n -> n >= least && n <= most).isPresent()) {
            return next.apply(number);
        }
        return VerbResult.wrongUsage(
                Bundle.Asked_noNumber(option, Balance.grouped(least), Balance.grouped(most), written.get()));
    }

    @Messages({
        "# {0} - option",
        "# {1} - written",
        "Asked.noDate=--{0} ''{1}'' is not a date. Write it like 2025-03-31 or ''about October 2024''."
    })
    static VerbResult date(VerbCall call, String option, Function<Optional<About>, VerbResult> next) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return next.apply(Optional.empty());
        }
        Optional<About> said = WrittenDay.of(call, written.get());
        return said.isPresent() ? next.apply(said) : VerbResult.wrongUsage(Bundle.Asked_noDate(option, written.get()));
    }
}
