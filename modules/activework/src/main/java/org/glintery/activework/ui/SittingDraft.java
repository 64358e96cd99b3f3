package org.glintery.activework.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.time.About;
import org.openide.util.NbBundle.Messages;

/**
 * A sitting as it is typed. Made without Swing; immutable.
 *
 * @param measure what the amount counts
 * @param amount may be blank: then nothing is said of it
 * @param symbols drills by symbol, such as "A=120, B=30"; may be blank
 * @param minutes may be blank
 */
record SittingDraft(
        About day, Measure measure, String amount, String symbols, String minutes, String where, String note) {

    /** What an amount counts. */
    enum Measure {
        DRILLS,
        PERCENT,
        SECTIONS
    }

    private static final int MINUTES_A_DAY = 1_440;
    private static final int MOST_PERCENT = 100;

    static SittingDraft blank(About day, Measure measure) {
        return new SittingDraft(day, measure, "", "", "", "", "");
    }

    static SittingDraft of(Sitting sitting) {
        Laid laid = sitting.laid();
        Measure measure = laid.percent().isPresent()
                ? Measure.PERCENT
                : laid.sections().isPresent() ? Measure.SECTIONS : Measure.DRILLS;
        String amount = laid.drills()
                .map(String::valueOf)
                .or(() -> laid.percent().map(String::valueOf))
                .or(() -> laid.sections().map(String::valueOf))
                .orElse("");
        return new SittingDraft(
                sitting.day(),
                laid.drills().isPresent() ? Measure.DRILLS : measure,
                amount,
                LaidWords.bySymbol(laid.bySymbol()),
                sitting.minutes().map(String::valueOf).orElse(""),
                sitting.where().orElse(""),
                sitting.note());
    }

    /** The sitting that is meant, or what is not understood. */
    Result<Sitting> sitting(UUID piece) {
        return laid().then(laid -> minutesTold()
                .then(told -> Result.ok(new Sitting(
                        piece,
                        day,
                        Optional.empty(),
                        Optional.empty(),
                        told,
                        0,
                        laid,
                        Optional.of(where.strip()).filter(w -> !w.isEmpty()),
                        note.strip()))));
    }

    /** The same sitting corrected: when exactly it began and its pauses stay, unless the day is another. */
    Result<Sitting> corrected(Sitting before) {
        return sitting(before.piece())
                .then(now -> Result.ok(new Sitting(
                        before.piece(),
                        day,
                        before.startedAt().filter(start -> day.equals(before.day())),
                        before.zone().filter(zone -> day.equals(before.day())),
                        now.minutes(),
                        before.pausedMinutes(),
                        now.laid(),
                        now.where(),
                        now.note())));
    }

    /** What was laid, or what of it is not understood. */
    Result<Laid> laid() {
        return counts().then(bySymbol -> amountTold()
                .then(told -> Result.ok(new Laid(
                        measure == Measure.DRILLS ? told.map(Double::longValue) : Optional.empty(),
                        measure == Measure.PERCENT ? told : Optional.empty(),
                        measure == Measure.SECTIONS ? told.map(Double::intValue) : Optional.empty(),
                        bySymbol))));
    }

    @Messages({
        "SittingDraft.whole=How much was laid is a whole number, such as 1800. Leave it empty if you do not know.",
        "SittingDraft.percent=Percent is a number from 0 to 100. Leave it empty if you do not know."
    })
    private Result<Optional<Double>> amountTold() {
        String typed = measure == Measure.PERCENT
                ? amount.replace("%", "").strip().replace(',', '.')
                : amount.replaceAll("[\\s.,'\u00a0\u2009\u202f]", "");
        if (typed.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        String wrong = measure == Measure.PERCENT ? Bundle.SittingDraft_percent() : Bundle.SittingDraft_whole();
        String pattern = measure == Measure.PERCENT ? "\\d{1,3}(\\.\\d+)?" : "\\d{1,9}";
        if (!typed.matches(pattern)) {
            return Result.refused("amount", wrong);
        }
        double number = Double.parseDouble(typed);
        return measure == Measure.PERCENT && number > MOST_PERCENT
                ? Result.refused("amount", wrong)
                : Result.ok(Optional.of(number));
    }

    @Messages("SittingDraft.symbols=Drills by symbol are written like A=120, B=30.")
    private Result<Map<String, Long>> counts() {
        Map<String, Long> counts = new LinkedHashMap<>();
        for (String one : symbols.split("[,;\\n]")) {
            int equals = one.lastIndexOf('=');
            String count = one.substring(equals + 1).strip();
            if (one.isBlank()) {
                continue;
            }
            if (equals < 1 || !count.matches("\\d{1,9}")) {
                return Result.refused("symbols", Bundle.SittingDraft_symbols());
            }
            counts.merge(one.substring(0, equals).strip(), Long.parseLong(count), Long::sum);
        }
        return Result.ok(counts);
    }

    @Messages("SittingDraft.minutes=Minutes are a whole number up to 1440, or hours and minutes like 1:35.")
    private Result<Optional<Integer>> minutesTold() {
        String typed = minutes.strip();
        if (typed.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        if (!typed.matches("\\d{1,4}|\\d{1,2}:[0-5]\\d")) {
            return Result.refused("minutes", Bundle.SittingDraft_minutes());
        }
        int colon = typed.indexOf(':');
        int told = colon < 0
                ? Integer.parseInt(typed)
                : Integer.parseInt(typed.substring(0, colon)) * 60 + Integer.parseInt(typed.substring(colon + 1));
        return told > MINUTES_A_DAY
                ? Result.refused("minutes", Bundle.SittingDraft_minutes())
                : Result.ok(Optional.of(told));
    }
}
