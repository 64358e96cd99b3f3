package org.glintery.activework;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;

/**
 * What was laid on each day since the first sitting, in one measure. Pure; any thread.
 *
 * @param first the day of the first sitting that has an exact day
 * @param last the last day that counts: today when there was a sitting, else yesterday, for today is not over
 * @param laidByDay oldest first, days without a sitting as 0, declared rests left out
 * @param activeDays days on which something was laid
 */
record Pace(LocalDate first, LocalDate last, List<Double> laidByDay, int activeDays) {

    /** Empty while no sitting with an exact day tells how much was laid. */
    static Optional<Pace> of(
            List<Sitting> sittings,
            Function<Laid, Optional<Double>> measure,
            Optional<DeclaredRest> rest,
            LocalDate today) {
        TreeMap<LocalDate, Double> laid = new TreeMap<>();
        // on these days something was laid, but not how much: they count neither as work nor as idle
        Set<LocalDate> unknown = new HashSet<>();
        // a section is told on the day it is done, for the silent days before it as well: on those nothing more was
        // laid
        boolean inSections =
                sittings.stream().anyMatch(sitting -> sitting.laid().sections().isPresent());
        for (Sitting sitting : sittings) {
            Optional<LocalDate> day = DeclaredRest.exactDay(sitting.day()).filter(d -> !d.isAfter(today));
            boolean none = inSections && !Whole.saysSomething(sitting.laid());
            Optional<Double> amount = none ? Optional.of(0.0) : measure.apply(sitting.laid());
            if (day.isPresent() && amount.isPresent()) {
                laid.merge(day.get(), amount.get(), Double::sum);
            } else if (day.isPresent()) {
                unknown.add(day.get());
            }
        }
        unknown.removeAll(laid.keySet());
        int active = (int) laid.values().stream().filter(amount -> amount > 0).count();
        if (active == 0) {
            return Optional.empty();
        }
        LocalDate last = laid.containsKey(today) ? today : today.minusDays(1);
        List<Double> byDay = laid.firstKey()
                .datesUntil(last.plusDays(1))
                .filter(day -> !unknown.contains(day))
                .filter(day ->
                        laid.containsKey(day) || rest.filter(r -> r.has(day)).isEmpty())
                .map(day -> laid.getOrDefault(day, 0.0))
                .toList();
        return Optional.of(new Pace(laid.firstKey(), last, byDay, active));
    }

    double[] history() {
        return laidByDay.stream().mapToDouble(Double::doubleValue).toArray();
    }

    int idleDays() {
        return laidByDay.size() - activeDays;
    }
}
