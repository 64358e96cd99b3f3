package org.glintery.stash.verbs;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.WrittenDecimal;
import org.glintery.api.verb.WrittenWhole;
import org.openide.util.NbBundle.Messages;

/** Options whose value is a number or one of a few words. What can't be understood is refused as {@code usage}. */
final class WordOption {

    static final String USAGE = "usage";

    private WordOption() {}

    /** One of an enum's constants, written in lower case with hyphens. */
    @Messages({
        "# {0} - option",
        "# {1} - words",
        "# {2} - what is written",
        "WordOption.word=--{0} is one of {1}, not ''{2}''."
    })
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
                : Result.refused(USAGE, Bundle.WordOption_word(option, all(words), written.get()));
    }

    static <E extends Enum<E>> String all(Class<E> words) {
        return Arrays.stream(words.getEnumConstants()).map(WordOption::written).collect(Collectors.joining(", "));
    }

    static String written(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Messages({
        "# {0} - option",
        "# {1} - least",
        "# {2} - most",
        "# {3} - what is written",
        "WordOption.whole=--{0} is a whole number from {1} to {2}, not ''{3}''."
    })
    static Result<Optional<Long>> whole(VerbCall call, String option, long least, long most) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        Optional<Long> number = WrittenWhole.of(written.get()).filter(n -> n >= least && n <= most);
        return number.isPresent()
                ? Result.ok(number)
                : Result.refused(
                        USAGE,
                        Bundle.WordOption_whole(option, Balance.grouped(least), Balance.grouped(most), written.get()));
    }

    /** A decimal number with a point or a comma, above 0. */
    @Messages({
        "# {0} - option",
        "# {1} - most",
        "# {2} - what is written",
        "WordOption.millimetres=--{0} is a number of millimetres up to {1}, not ''{2}''."
    })
    static Result<Optional<Double>> millimetres(VerbCall call, String option, double most) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        Optional<Double> number =
                WrittenDecimal.of(written.get()).map(BigDecimal::doubleValue).filter(mm -> mm > 0 && mm <= most);
        return number.isPresent()
                ? Result.ok(number)
                : Result.refused(
                        USAGE,
                        WrittenDecimal.doubt(option, written.get())
                                .orElseGet(() -> Bundle.WordOption_millimetres(
                                        option, Balance.grouped((long) most), written.get())));
    }
}
