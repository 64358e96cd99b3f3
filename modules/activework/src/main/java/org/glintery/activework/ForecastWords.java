package org.glintery.activework;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.Sitting;
import org.glintery.api.ledger.Balance;
import org.glintery.api.time.About;
import org.glintery.planning.CompletionForecast;
import org.glintery.planning.Outlook;
import org.openide.util.NbBundle.Messages;

/** A forecast in plain words, with the figures for who asks. Pure; any thread. */
final class ForecastWords {

    private ForecastWords() {}

    @Messages("ForecastWords.gone=That piece is no longer in the workshop.")
    static Forecast gone() {
        return nothing(Bundle.ForecastWords_gone());
    }

    @Messages("ForecastWords.made=It is made.")
    static Forecast made() {
        return nothing(Bundle.ForecastWords_made());
    }

    @Messages("ForecastWords.letGo=It was let go.")
    static Forecast letGo() {
        return nothing(Bundle.ForecastWords_letGo());
    }

    @Messages("ForecastWords.noSitting=Nothing can be said before the first sitting.")
    static Forecast noSitting() {
        return nothing(Bundle.ForecastWords_noSitting());
    }

    @Messages({
        "ForecastWords.noAmounts=Nothing can be said yet: no sitting tells how much was laid.",
        "ForecastWords.noSections=Nothing can be said yet: tell in how many sections the piece is worked.",
        "ForecastWords.noTotal=Nothing can be said yet: how many drills the whole takes is not known. Type the numbers of its legend, or tell sittings in percent."
    })
    static Forecast missing(Whole whole, List<Sitting> sittings) {
        if (sittings.stream().noneMatch(sitting -> Whole.saysSomething(sitting.laid()))) {
            return nothing(Bundle.ForecastWords_noAmounts());
        }
        boolean needsDrills = whole.drills().isEmpty()
                && sittings.stream().anyMatch(s -> Whole.toldInDrills(s.laid()).isPresent());
        return nothing(needsDrills ? Bundle.ForecastWords_noTotal() : Bundle.ForecastWords_noSections());
    }

    @Messages("ForecastWords.noPace=Nothing can be said yet: no sitting with a day of its own tells how much was laid.")
    static Forecast noPace() {
        return nothing(Bundle.ForecastWords_noPace());
    }

    @Messages("ForecastWords.allLaid=All of it is laid. It can be completed.")
    static Forecast allLaid(LocalDate today) {
        Optional<LocalDate> now = Optional.of(today);
        return new Forecast(now, now, now, false, Bundle.ForecastWords_allLaid(), "");
    }

    @Messages({
        "# {0} - when",
        "ForecastWords.perhaps=perhaps {0}",
        "# {0} - when",
        "ForecastWords.earliest={0} at the earliest",
        "ForecastWords.tooLong=At this pace it takes longer than can be told."
    })
    static Forecast inDays(Outlook.InDays days, LocalDate from, LocalDate today, String figures) {
        Optional<LocalDate> early = day(from, days.early());
        Optional<LocalDate> late = day(from, days.late());
        if (early.isEmpty()) {
            return new Forecast(early, early, early, days.rough(), Bundle.ForecastWords_tooLong(), figures);
        }
        String when = late.map(l -> between(early.get(), l, today))
                .orElseGet(() -> Bundle.ForecastWords_earliest(between(early.get(), early.get(), today)));
        return new Forecast(
                early,
                day(from, days.middle()),
                late,
                days.rough(),
                days.rough() ? Bundle.ForecastWords_perhaps(when) : when,
                figures + reading(days.rough()));
    }

    private static Optional<LocalDate> day(LocalDate from, int days) {
        return days >= CompletionForecast.FURTHEST_DAYS ? Optional.empty() : Optional.of(from.plusDays(days));
    }

    /** The year goes without saying while it is this one. */
    private static String between(LocalDate early, LocalDate late, LocalDate today) {
        String words = About.roughlyBetween(early, late).words();
        boolean thisYear = early.getYear() == today.getYear() && late.getYear() == today.getYear();
        return thisYear ? words.replace(" " + today.getYear(), "") : words;
    }

    @Messages({
        "ForecastWords.reading=If work goes on as on these days, it is done by the first date in one case of ten and by the last in nine of ten.",
        "ForecastWords.rough=These are few days to go by, so it is a guess."
    })
    private static String reading(boolean rough) {
        return " " + Bundle.ForecastWords_reading() + (rough ? " " + Bundle.ForecastWords_rough() : "");
    }

    @Messages({
        "# {0} - how many drills are laid",
        "# {1} - the same in figures",
        "# {2} - of how many",
        "ForecastWords.drills={1} of {2} drills {0,choice,0#are|1#is|1<are} laid.",
        "# {0} - how many drills are laid",
        "# {1} - the same in figures",
        "# {2} - of how many",
        "ForecastWords.aboutDrills=About {1} of {2} drills {0,choice,0#are|1#is|1<are} laid.",
        "# {0} - day",
        "# {1} - how many days with work",
        "# {2} - the same in figures",
        "# {3} - days without",
        "ForecastWords.days=Since {0} there was work on {1,choice,1#1 day|1<{2} days}, and none on {3}."
    })
    static String figures(Progress progress, Pace pace) {
        return laid(progress) + " "
                + Bundle.ForecastWords_days(
                        About.on(pace.first()).words(),
                        pace.workDays(),
                        Balance.grouped(pace.workDays()),
                        Balance.grouped(pace.idleDays()));
    }

    @Messages({
        "# {0} - percent",
        "ForecastWords.percent={0} percent is laid.",
        "# {0} - percent",
        "ForecastWords.aboutPercent=About {0} percent is laid.",
        "ForecastWords.littleLaid=Less than 1 percent is laid."
    })
    private static String laid(Progress progress) {
        if (progress.totalDrills().isPresent() && progress.laidDrills().isPresent()) {
            long laid = progress.laidDrills().get();
            String so = Balance.grouped(laid);
            String all = Balance.grouped(progress.totalDrills().get());
            return progress.estimated()
                    ? Bundle.ForecastWords_aboutDrills(laid, so, all)
                    : Bundle.ForecastWords_drills(laid, so, all);
        }
        double share = progress.share().orElse(0.0);
        String percent = String.valueOf(Math.round(share * 100));
        if (share > 0 && Math.round(share * 100) == 0) {
            return Bundle.ForecastWords_littleLaid();
        }
        return progress.estimated()
                ? Bundle.ForecastWords_aboutPercent(percent)
                : Bundle.ForecastWords_percent(percent);
    }

    private static Forecast nothing(String words) {
        return new Forecast(Optional.empty(), Optional.empty(), Optional.empty(), false, words, "");
    }
}
