package org.glintery.testkit;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.Reservation;

/** What a plain ledger holds at one moment. Mutable; copied before each change. */
final class PlainState {
    private final Map<Place, Balance> balances = new HashMap<>();
    private final Map<UUID, Reservation> reservations = new HashMap<>();

    record Place(Spot spot, Drill drill) {}

    PlainState copy() {
        var copy = new PlainState();
        copy.balances.putAll(balances);
        copy.reservations.putAll(reservations);
        return copy;
    }

    Balance at(Spot spot, Drill drill) {
        return balances.getOrDefault(new Place(spot, drill), Balance.ZERO);
    }

    void set(Spot spot, Drill drill, Balance balance) {
        balances.put(new Place(spot, drill), balance);
    }

    /** Every balance that is not zero, one after another; boundaries too. */
    void each(BiConsumer<Place, Balance> told) {
        balances.forEach((place, balance) -> {
            if (!balance.isZero()) {
                told.accept(place, balance);
            }
        });
    }

    Map<UUID, Reservation> reservations() {
        return reservations;
    }

    /** Summed anew each time, on purpose. */
    long inTheHouse(Drill drill) {
        long sum = 0;
        for (var entry : balances.entrySet()) {
            Spot spot = entry.getKey().spot();
            if (entry.getKey().drill().equals(drill) && (spot instanceof Spot.InBag || spot instanceof Spot.InPocket)) {
                sum += entry.getValue().count();
            }
        }
        return sum;
    }

    long reserved(Drill drill, LocalDate day) {
        long sum = 0;
        for (Reservation reservation : reservations.values()) {
            boolean expired = reservation.expires().isPresent()
                    && reservation.expires().get().isBefore(day);
            if (reservation.drill().equals(drill) && !expired) {
                sum += reservation.count();
            }
        }
        return sum;
    }

    long free(Drill drill, LocalDate day) {
        return inTheHouse(drill) - reserved(drill, day);
    }
}
