package org.glintery.stash.verbs;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;

/** Options whose value is a number or one of a few words. What can't be understood is refused as {@code usage}. */
final class WordOption {

    static final String USAGE = "usage";

    private WordOption() {}

    /** One of an enum's constants, written in lower case with hyphens. */
    static <E extends Enum<E>> Result<Optional<E>> word(VerbCall call, String option, Class<E> words) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        Optional<E> found = Arrays.stream(words.getEnumConstants())
                .filter(word -> written(word).equals(written.get().strip().toLowerCase(Locale.ROOT)))
                .findFirst();
        return found.isPresent()
                ? Result.ok(found)
                : Result.refused(USAGE, "--" + option + " is one of " + all(words) + ", not '" + written.get() + "'.");
    }

    static <E extends Enum<E>> String all(Class<E> words) {
        return Arrays.stream(words.getEnumConstants()).map(WordOption::written).collect(Collectors.joining(", "));
    }

    static String written(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** In plain words: "on the bench". */
    static String words(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static Result<Optional<Long>> whole(VerbCall call, String option, long least, long most) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        try {
            long number = Long.parseLong(written.get().strip());
            if (number >= least && number <= most) {
                return Result.ok(Optional.of(number));
            }
        } catch (NumberFormatException e) {
            // told below, as for a number that is out of range
        }
        return Result.refused(
                USAGE,
                "--" + option + " is a whole number from " + least + " to " + most + ", not '" + written.get() + "'.");
    }

    /** A decimal number with a point or a comma, above 0. */
    static Result<Optional<Double>> millimetres(VerbCall call, String option, double most) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        try {
            double number = Double.parseDouble(written.get().strip().replace(',', '.'));
            if (number > 0 && number <= most) {
                return Result.ok(Optional.of(number));
            }
        } catch (NumberFormatException e) {
            // told below, as for a number that is out of range
        }
        return Result.refused(
                USAGE,
                "--" + option + " is a number of millimetres up to " + (long) most + ", not '" + written.get() + "'.");
    }
}
