package org.glintery.activework;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;

/**
 * What was laid on each day since the first sitting, in one measure. A day with a sitting is a day of work, whether or not it
 * says how much; {@link SittingAmounts} tells how much that was. Pure; any thread.
 *
 * @param first the day of the first sitting that has an exact day
 * @param last the last day that counts: today when there was a sitting, else yesterday, for today is not over
 * @param laidByDay oldest first, days without a sitting as 0, declared rests left out, and days of work left out of which it
 *     is not known yet how much was laid
 * @param workDays days with a sitting
 * @param idleDays days without, declared rests left out
 */
record Pace(LocalDate first, LocalDate last, List<Double> laidByDay, int workDays, int idleDays) {

    /** Empty while no sitting with an exact day tells how much was laid. @param sittings oldest first */
    static Optional<Pace> of(
            List<Sitting> sittings,
            Function<Laid, Optional<Double>> measure,
            Optional<DeclaredRest> rest,
            LocalDate today) {
        List<Sitting> past = sittings.stream()
                .filter(sitting -> exactDay(sitting).filter(today::isBefore).isEmpty())
                .toList();
        List<Optional<Double>> amounts = SittingAmounts.of(past, measure);
        TreeMap<LocalDate, Double> laid = new TreeMap<>();
        Set<LocalDate> worked = new TreeSet<>();
        for (int i = 0; i < past.size(); i++) {
            Optional<LocalDate> day = exactDay(past.get(i));
            Optional<Double> amount = amounts.get(i);
            day.ifPresent(worked::add);
            day.ifPresent(d -> amount.ifPresent(a -> laid.merge(d, a, Double::sum)));
        }
        if (laid.isEmpty()) {
            return Optional.empty();
        }
        LocalDate last = worked.contains(today) ? today : today.minusDays(1);
        Predicate<LocalDate> rested = day -> rest.filter(r -> r.has(day)).isPresent();
        List<Double> byDay = days(laid.firstKey(), last)
                .filter(day -> laid.containsKey(day) || !worked.contains(day) && !rested.test(day))
                .map(day -> laid.getOrDefault(day, 0.0))
                .toList();
        int work = (int) days(laid.firstKey(), last).filter(worked::contains).count();
        int idle = (int) days(laid.firstKey(), last)
                .filter(day -> !worked.contains(day) && !rested.test(day))
                .count();
        return Optional.of(new Pace(laid.firstKey(), last, byDay, work, idle));
    }

    private static Optional<LocalDate> exactDay(Sitting sitting) {
        return DeclaredRest.exactDay(sitting.day());
    }

    private static Stream<LocalDate> days(LocalDate first, LocalDate last) {
        return first.datesUntil(last.plusDays(1));
    }

    double[] history() {
        return laidByDay.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
