package org.glintery.records;

import java.time.LocalDate;
import java.util.UUID;
import org.glintery.api.workshop.Reservation;
import org.pcollections.HashPMap;
import org.pcollections.HashTreePMap;
import org.pcollections.IntTreePMap;

/** Reservations by the number of their drill. Immutable; any thread. */
record ReservedDrills(IntTreePMap<HashPMap<UUID, Reservation>> byDrill, HashPMap<UUID, Integer> drillOf) {
    static final ReservedDrills NONE = new ReservedDrills(IntTreePMap.empty(), HashTreePMap.empty());

    ReservedDrills with(UUID id, int drill, Reservation reservation) {
        ReservedDrills rest = without(id);
        HashPMap<UUID, Reservation> same = rest.byDrill.get(drill);
        return new ReservedDrills(
                rest.byDrill.plus(
                        drill, (same == null ? HashTreePMap.<UUID, Reservation>empty() : same).plus(id, reservation)),
                rest.drillOf.plus(id, drill));
    }

    ReservedDrills without(UUID id) {
        Integer drill = drillOf.get(id);
        if (drill == null) {
            return this;
        }
        HashPMap<UUID, Reservation> left = byDrill.get(drill).minus(id);
        return new ReservedDrills(
                left.isEmpty() ? byDrill.minus((Object) drill) : byDrill.plus(drill, left), drillOf.minus(id));
    }

    /** What is reserved of a drill on a day: a reservation counts up to and on the day it expires. */
    long reserved(int drill, LocalDate day) {
        HashPMap<UUID, Reservation> all = byDrill.get(drill);
        if (all == null) {
            return 0;
        }
        return all.values().stream()
                .filter(reservation ->
                        reservation.expires().map(last -> !last.isBefore(day)).orElse(true))
                .mapToLong(Reservation::count)
                .sum();
    }
}
