package org.glintery.activework.ui;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Progress;
import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/** What was laid, in words. Pure; any thread. */
final class LaidWords {

    private static final int PERCENT = 100;

    private LaidWords() {}

    @Messages({
        "# {0} - how many",
        "# {1} - the same in figures",
        "LaidWords.drills={0,choice,0#0 drills|1#1 drill|1<{1} drills}",
        "# {0} - percent",
        "LaidWords.percent={0} %",
        "# {0} - how many",
        "# {1} - the same in figures",
        "LaidWords.sections={0,choice,0#0 sections|1#1 section|1<{1} sections}"
    })
    static String of(Laid laid) {
        Stream<Optional<String>> told = Stream.of(
                laid.drills().map(n -> Bundle.LaidWords_drills(n, number(n))),
                laid.percent().map(p -> Bundle.LaidWords_percent(number(p))),
                laid.sections().map(n -> Bundle.LaidWords_sections(n, number(n))),
                Optional.of(bySymbol(laid.bySymbol())).filter(words -> !words.isEmpty()));
        return told.flatMap(Optional::stream).collect(Collectors.joining(", "));
    }

    /** "A=120, B=30", as it is typed. */
    static String bySymbol(Map<String, Long> counts) {
        return counts.entrySet().stream()
                .map(one -> one.getKey() + "=" + one.getValue())
                .collect(Collectors.joining(", "));
    }

    @Messages({
        "# {0} - laid",
        "# {1} - of how many",
        "LaidWords.of={0} of {1} drills",
        "# {0} - laid",
        "# {1} - of how many",
        "LaidWords.aboutOf=about {0} of {1} drills",
        "# {0} - percent",
        "LaidWords.share={0} % laid",
        "# {0} - percent",
        "LaidWords.aboutShare=about {0} % laid",
        "LaidWords.littleShare=less than 1 % laid",
        "# {0} - how many are laid",
        "# {1} - the same in figures",
        "LaidWords.noTotal={0,choice,0#0 drills|1#1 drill|1<{1} drills} laid; how many the whole takes is not known",
        "LaidWords.unknown=How far it is can not be told yet"
    })
    static String of(Progress progress) {
        Optional<Long> laid = progress.laidDrills();
        Optional<Long> total = progress.totalDrills();
        if (laid.isPresent() && total.isPresent()) {
            String so = number(laid.get());
            String all = number(total.get());
            return progress.estimated() ? Bundle.LaidWords_aboutOf(so, all) : Bundle.LaidWords_of(so, all);
        }
        if (progress.share().isPresent()) {
            double whole = Math.floor(progress.share().get() * PERCENT);
            if (whole == 0 && progress.share().get() > 0) {
                return Bundle.LaidWords_littleShare();
            }
            String percent = number(whole);
            return progress.estimated() ? Bundle.LaidWords_aboutShare(percent) : Bundle.LaidWords_share(percent);
        }
        return laid.map(so -> Bundle.LaidWords_noTotal(so, number(so))).orElseGet(Bundle::LaidWords_unknown);
    }

    @Messages({
        "# {0} - hours",
        "# {1} - minutes",
        "LaidWords.hours={0} h {1} min",
        "# {0} - hours",
        "LaidWords.wholeHours={0} h",
        "# {0} - minutes",
        "LaidWords.minutes={0} min"
    })
    static String minutes(int minutes) {
        String left = String.valueOf(minutes % 60);
        if (minutes < 60) {
            return Bundle.LaidWords_minutes(left);
        }
        String hours = String.valueOf(minutes / 60);
        return minutes % 60 == 0 ? Bundle.LaidWords_wholeHours(hours) : Bundle.LaidWords_hours(hours, left);
    }

    /** Whole numbers grouped as everywhere on the screens; of others a tenth at the most. */
    private static String number(Number number) {
        double value = number.doubleValue();
        return value == Math.rint(value)
                ? Balance.grouped(number.longValue())
                : String.format(Locale.ROOT, "%.1f", value);
    }
}
