package org.glintery.activework.verbs;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.activework.Laid;
import org.glintery.api.ledger.Balance;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.WrittenDay;
import org.glintery.api.verb.WrittenWhole;
import org.openide.util.NbBundle.Messages;

/** Days and numbers among a verb's options. Used once; not safe for several threads. */
final class SaidOptions {

    private final VerbCall call;
    private Optional<String> misunderstood = Optional.empty();

    SaidOptions(VerbCall call) {
        this.call = call;
    }

    @Messages("SaidOptions.on=when, as 'about October'; today when not said")
    static Param when() {
        return Param.option("on", "DATE", Bundle.SaidOptions_on());
    }

    /** What was first not understood; what the other methods gave is then not to be used. */
    Optional<String> misunderstood() {
        return misunderstood;
    }

    /** The day that {@code --on} says, else today. */
    @Messages({
        "# {0} - what was written",
        "SaidOptions.noDate=--on ''{0}'' is not a date. Write it like 2025-03-31 or ''about October 2024''."
    })
    About on() {
        LocalDate today = LocalDate.now(call.clock());
        Optional<String> written = call.value("on");
        Optional<About> said = written.flatMap(words -> WrittenDay.of(call, words));
        if (written.isPresent() && said.isEmpty()) {
            wrong(Bundle.SaidOptions_noDate(written.get()));
        }
        return said.orElse(About.on(today));
    }

    /** How much was laid: in one way, drills, percent or sections; or drills by symbol, alone or beside their sum; or how long alone. */
    @Messages({
        "SaidOptions.oneWay=Say in one way how much was laid: --drills, --percent, --sections or --symbol.",
        "SaidOptions.nothing=Say how much was laid, with --drills, --percent, --sections or --symbol, or at least how long with --minutes."
    })
    Laid laid() {
        long ways = Stream.of("drills", "percent", "sections")
                .filter(way -> call.value(way).isPresent())
                .count();
        if (ways > 1) {
            wrong(Bundle.SaidOptions_oneWay());
        }
        if (ways == 0
                && call.values("symbol").isEmpty()
                && call.value("minutes").isEmpty()) {
            wrong(Bundle.SaidOptions_nothing());
        }
        return new Laid(
                whole("drills", 0, Long.MAX_VALUE),
                percent(),
                whole("sections", 0, Integer.MAX_VALUE).map(Long::intValue),
                bySymbol());
    }

    Optional<Integer> number(String option, int least, int most) {
        return whole(option, least, most).map(Long::intValue);
    }

    @Messages({
        "# {0} - option",
        "# {1} - what was written",
        "SaidOptions.noWhole=--{0} is a whole number, not ''{1}''.",
        "# {0} - option",
        "# {1} - the least",
        "# {2} - the most",
        "# {3} - what was written",
        "SaidOptions.noWholeFromTo=--{0} is a whole number from {1} to {2}, not ''{3}''."
    })
    private Optional<Long> whole(String option, long least, long most) {
        Optional<String> written = call.value(option);
        Optional<Long> number = written.flatMap(SaidOptions::number).filter(n -> n >= least && n <= most);
        if (written.isPresent() && number.isEmpty()) {
            boolean any = most >= Integer.MAX_VALUE;
            wrong(
                    any
                            ? Bundle.SaidOptions_noWhole(option, written.get())
                            : Bundle.SaidOptions_noWholeFromTo(
                                    option, Balance.grouped(least), Balance.grouped(most), written.get()));
        }
        return number;
    }

    @Messages({"# {0} - what was written", "SaidOptions.noPercent=--percent is a number from 0 to 100, not ''{0}''."})
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
        wrong(Bundle.SaidOptions_noPercent(written.get()));
        return Optional.empty();
    }

    /** The last equals sign divides: a symbol may be an equals sign itself. */
    @Messages({
        "# {0} - what was written",
        "SaidOptions.noSymbol=--symbol is written SYMBOL=COUNT, such as A=120, not ''{0}''."
    })
    private Map<String, Long> bySymbol() {
        Map<String, Long> counts = new LinkedHashMap<>();
        for (String written : call.values("symbol")) {
            int equals = written.lastIndexOf('=');
            Optional<Long> count = equals < 1
                    ? Optional.empty()
                    : number(written.substring(equals + 1)).filter(n -> n >= 0);
            if (count.isEmpty()) {
                wrong(Bundle.SaidOptions_noSymbol(written));
            } else {
                counts.merge(written.substring(0, equals).strip(), count.get(), Long::sum);
            }
        }
        return counts;
    }

    private static Optional<Long> number(String written) {
        return WrittenWhole.of(written);
    }

    private void wrong(String text) {
        misunderstood = misunderstood.or(() -> Optional.of(text));
    }
}
