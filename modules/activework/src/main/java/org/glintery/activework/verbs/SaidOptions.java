package org.glintery.activework.verbs;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.activework.Laid;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;

/** Days and numbers among a verb's options. Used once; not safe for several threads. */
final class SaidOptions {

    static final Param ON = Param.option("on", "DATE", "when, as 'about October'; today when not said");

    private final VerbCall call;
    private Optional<String> misunderstood = Optional.empty();

    SaidOptions(VerbCall call) {
        this.call = call;
    }

    /** What was first not understood; what the other methods gave is then not to be used. */
    Optional<String> misunderstood() {
        return misunderstood;
    }

    /** The day that {@code --on} says, else today. */
    About on() {
        LocalDate today = LocalDate.now(call.clock());
        Optional<String> written = call.value("on");
        Optional<About> said = written.flatMap(words -> About.said(words, today));
        if (written.isPresent() && said.isEmpty()) {
            wrong("--on '" + written.get() + "' is not a date. Write it like 2025-03-31 or 'about October 2024'.");
        }
        return said.orElse(About.on(today));
    }

    /** How much was laid: drills, percent, sections, or drills by symbol. */
    Laid laid() {
        return new Laid(
                whole("drills", Long.MAX_VALUE),
                percent(),
                whole("sections", Integer.MAX_VALUE).map(Long::intValue),
                bySymbol());
    }

    Optional<Integer> number(String option, int most) {
        return whole(option, most).map(Long::intValue);
    }

    private Optional<Long> whole(String option, long most) {
        Optional<String> written = call.value(option);
        Optional<Long> number = written.flatMap(SaidOptions::number).filter(n -> n >= 0 && n <= most);
        if (written.isPresent() && number.isEmpty()) {
            String range = most == Long.MAX_VALUE || most == Integer.MAX_VALUE ? "" : " up to " + most;
            wrong("--" + option + " is a whole number" + range + ", not '" + written.get() + "'.");
        }
        return number;
    }

    private Optional<Double> percent() {
        Optional<String> written = call.value("percent");
        if (written.isEmpty()) {
            return Optional.empty();
        }
        try {
            double number =
                    Double.parseDouble(written.get().replace("%", "").strip().replace(',', '.'));
            if (number >= 0 && number <= 100) {
                return Optional.of(number);
            }
        } catch (NumberFormatException e) {
            // told below, as for a number that is out of range
        }
        wrong("--percent is a number from 0 to 100, not '" + written.get() + "'.");
        return Optional.empty();
    }

    /** The last equals sign divides: a symbol may be an equals sign itself. */
    private Map<String, Long> bySymbol() {
        Map<String, Long> counts = new LinkedHashMap<>();
        for (String written : call.values("symbol")) {
            int equals = written.lastIndexOf('=');
            Optional<Long> count = equals < 1
                    ? Optional.empty()
                    : number(written.substring(equals + 1)).filter(n -> n >= 0);
            if (count.isEmpty()) {
                wrong("--symbol is written SYMBOL=COUNT, such as A=120, not '" + written + "'.");
            } else {
                counts.merge(written.substring(0, equals).strip(), count.get(), Long::sum);
            }
        }
        return counts;
    }

    private static Optional<Long> number(String written) {
        try {
            return Optional.of(Long.parseLong(written.strip()));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private void wrong(String text) {
        misunderstood = misunderstood.or(() -> Optional.of(text));
    }
}
