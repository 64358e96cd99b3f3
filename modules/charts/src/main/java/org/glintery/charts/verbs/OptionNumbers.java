package org.glintery.charts.verbs;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.WrittenDecimal;

/** Reads options and keeps what was first wrong with them. Used once; not safe for several threads. */
final class OptionNumbers {

    private final VerbCall call;
    private Optional<String> wrong = Optional.empty();

    OptionNumbers(VerbCall call) {
        this.call = call;
    }

    Optional<String> wrong() {
        return wrong;
    }

    void say(String text) {
        wrong = wrong.or(() -> Optional.of(text));
    }

    /** A decimal comma is understood. */
    Optional<Double> number(String option, double least, double most) {
        return call.value(option).flatMap(written -> {
            Optional<Double> number = within(WrittenDecimal.of(written), least, most);
            if (number.isEmpty()) {
                say(WrittenDecimal.doubt(option, written).orElseGet(() -> Bundle.ChartOptions_wrong(option, written)));
            }
            return number;
        });
    }

    Optional<Integer> whole(String option, int least, int most) {
        Optional<Double> number = number(option, least, most);
        if (number.isPresent() && number.get() != Math.rint(number.get())) {
            say(Bundle.ChartOptions_wrong(option, call.need(option)));
            return Optional.empty();
        }
        return number.map(Double::intValue);
    }

    /** Numbers with commas between them; none when there are not so many, or the option is not said. */
    List<Double> list(String option, int count, double least, double most) {
        if (call.value(option).isEmpty()) {
            return List.of();
        }
        List<Double> numbers = new ArrayList<>();
        for (String part : call.need(option).split(",", -1)) {
            within(WrittenDecimal.of(part), least, most).ifPresent(numbers::add);
        }
        if (numbers.size() != count) {
            say(Bundle.ChartOptions_wrong(option, call.need(option)));
            return List.of();
        }
        return numbers;
    }

    <E extends Enum<E>> Optional<E> word(String option, Class<E> words) {
        return call.value(option).flatMap(written -> {
            for (E word : words.getEnumConstants()) {
                if (word.name().toLowerCase(Locale.ROOT).equals(written.strip().toLowerCase(Locale.ROOT))) {
                    return Optional.of(word);
                }
            }
            say(Bundle.ChartOptions_wrong(option, written));
            return Optional.empty();
        });
    }

    private static Optional<Double> within(Optional<BigDecimal> number, double least, double most) {
        return number.map(BigDecimal::doubleValue).filter(read -> read >= least && read <= most);
    }
}
