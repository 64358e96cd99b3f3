package org.glintery.storage.verbs;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.glintery.api.time.About;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;

/** Numbers and dates among a verb's options; what can't be understood ends the verb as wrong usage. */
final class Asked {

    private Asked() {}

    static VerbResult whole(
            VerbCall call, String option, long least, long most, Function<Optional<Long>, VerbResult> next) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return next.apply(Optional.empty());
        }
        Optional<Long> number = number(written.get());
        if (number.filter(n -> n >= least && n <= most).isPresent()) {
            return next.apply(number);
        }
        return VerbResult.wrongUsage(
                "--" + option + " is a whole number from " + least + " to " + most + ", not '" + written.get() + "'.");
    }

    static VerbResult date(VerbCall call, String option, Function<Optional<About>, VerbResult> next) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return next.apply(Optional.empty());
        }
        Optional<About> said = About.said(written.get(), LocalDate.now(call.clock()));
        return said.isPresent()
                ? next.apply(said)
                : VerbResult.wrongUsage("--" + option + " '" + written.get()
                        + "' is not a date. Write it like 2025-03-31 or 'about October 2024'.");
    }

    private static Optional<Long> number(String written) {
        try {
            return Optional.of(Long.parseLong(written.strip()));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
