package org.glintery.testkit;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Reservation;

/**
 * The ledger's rules a second time, plain and slow, sharing nothing with the real one: balances in a map, undo by going
 * back to a copy. Understands posts, and puts and removals of reservations. Not safe for use by several threads.
 */
public final class PlainLedger {
    private PlainState state = new PlainState();
    private final Map<UUID, Booked> booked = new HashMap<>();
    private final Set<UUID> reversed = new HashSet<>();
    private final Set<UUID> changes = new HashSet<>();
    private final Deque<Done> done = new ArrayDeque<>();
    private final Deque<Done> undone = new ArrayDeque<>();

    /** What one side of an action gained. */
    private record Gain(Spot spot, long count, long variance, int uncounted) {}

    private record Booked(LedgerAction action, Drill drill, Gain first, Gain second) {}

    private record Done(PlainState before, PlainState after, List<UUID> actions) {}

    private static final class No extends Exception {
        private static final long serialVersionUID = 1L;
        private final Set<String> codes;

        No(Set<String> codes) {
            this.codes = codes;
        }
    }

    /** A change being tried. */
    private static final class Trial {
        private final PlainState state;
        private final Map<UUID, Booked> booked = new HashMap<>();
        private final Set<UUID> reversed = new HashSet<>();
        private final Map<Drill, Long> lost = new HashMap<>();
        private final Set<Drill> drills = new HashSet<>();
        private final List<UUID> actions = new java.util.ArrayList<>();
        private boolean changed;

        Trial(PlainState state) {
            this.state = state;
        }
    }

    /** @return nothing when the change was made; else the codes of which one must be given */
    public Set<String> apply(ChangeSet change, LocalDate day) {
        if (changes.contains(change.id())) {
            return Set.of("change-repeated");
        }
        var trial = new Trial(state.copy());
        try {
            for (Operation operation : change.operations()) {
                carryOut(operation, trial);
            }
            checkReservations(trial, day);
        } catch (No no) {
            return no.codes;
        } catch (ArithmeticException e) {
            return Set.of("overflow");
        }
        if (trial.changed) {
            changes.add(change.id());
            booked.putAll(trial.booked);
            reversed.addAll(trial.reversed);
            done.push(new Done(state, trial.state, trial.actions));
            undone.clear();
            state = trial.state;
        }
        return Set.of();
    }

    /** Goes back to what was before the newest change. @return the code of the refusal, if any */
    public Set<String> undo() {
        if (done.isEmpty()) {
            return Set.of("nothing-to-undo");
        }
        Done newest = done.pop();
        state = newest.before();
        reversed.addAll(newest.actions());
        undone.push(newest);
        return Set.of();
    }

    public Set<String> redo() {
        if (undone.isEmpty()) {
            return Set.of("nothing-to-redo");
        }
        Done newest = undone.pop();
        state = newest.after();
        done.push(newest);
        return Set.of();
    }

    /** How many actions were ever booked, each once. */
    public int booked() {
        return booked.size();
    }

    /** How many changes stand: those that could be undone. */
    int standing() {
        return done.size();
    }

    /** What is booked now; not changed any more. */
    PlainState state() {
        return state;
    }

    boolean knows(UUID action) {
        return booked.containsKey(action);
    }

    /** What an action came to. */
    Told told(UUID action) {
        Booked entry = booked.get(action);
        return new Told(
                entry.drill(),
                entry.first().spot(),
                entry.second().spot(),
                -entry.first().count());
    }

    /** @param count from the first spot to the second */
    record Told(Drill drill, Spot from, Spot to, long count) {}

    public Balance balance(Spot spot, Drill drill) {
        return state.at(spot, drill);
    }

    public long inTheHouse(Drill drill) {
        return state.inTheHouse(drill);
    }

    public long reserved(Drill drill, LocalDate day) {
        return state.reserved(drill, day);
    }

    private void carryOut(Operation operation, Trial trial) throws No {
        if (operation instanceof Operation.Put<?> put && put.value() instanceof Reservation reservation) {
            Reservation before = trial.state.reservations().put(put.id(), reservation);
            trial.drills.add(before == null ? reservation.drill() : before.drill());
            trial.drills.add(reservation.drill());
            trial.changed = true;
        } else if (operation instanceof Operation.Remove remove) {
            Reservation before = trial.state.reservations().remove(remove.ref().id());
            trial.changed |= before != null;
        } else {
            post(((Operation.Post) operation).action(), trial);
        }
    }

    private void post(LedgerAction action, Trial trial) throws No {
        Booked known = find(action.id(), trial);
        if (known != null) {
            refuseIf(!known.action().equals(action), "id-reused");
            return;
        }
        Booked made = action instanceof LedgerAction.Movement movement
                ? movement(movement, trial)
                : action instanceof LedgerAction.Stocktake stocktake
                        ? stocktake(stocktake, trial)
                        : reversal((LedgerAction.Reversal) action, trial);
        Gain out = made.first();
        Balance giving = trial.state.at(out.spot(), made.drill());
        refuseIf(!(out.spot() instanceof Spot.Boundary) && giving.count() + out.count() < 0, "not-enough");
        gain(made.first(), made.drill(), trial);
        gain(made.second(), made.drill(), trial);
        if (house(out.spot()) && made.second().spot() instanceof Spot.Boundary edge && edge.edge() == Spot.Edge.LOST) {
            trial.lost.merge(made.drill(), -out.count(), Math::addExact);
        }
        trial.drills.add(made.drill());
        trial.booked.put(action.id(), made);
        trial.actions.add(action.id());
        trial.changed = true;
    }

    private static void gain(Gain gain, Drill drill, Trial trial) {
        Balance now = trial.state.at(gain.spot(), drill);
        trial.state.set(
                gain.spot(),
                drill,
                new Balance(
                        Math.addExact(now.count(), gain.count()),
                        Math.addExact(now.variance(), gain.variance()),
                        Math.addExact(now.uncounted(), gain.uncounted())));
    }

    private Booked movement(LedgerAction.Movement movement, Trial trial) throws No {
        refuseIf(movement.from().equals(movement.to()), "same-spot");
        if (movement.amount().count().isEmpty()) {
            boolean outside = movement.from() instanceof Spot.Boundary;
            int amounts = outside
                    ? 1
                    : trial.state.at(movement.from(), movement.drill()).uncounted();
            refuseIf(amounts == 0, "not-enough");
            return new Booked(
                    movement,
                    movement.drill(),
                    new Gain(movement.from(), 0, 0, -amounts),
                    new Gain(movement.to(), 0, 0, amounts));
        }
        long count = movement.amount().count().get();
        refuseIf(count == 0, "nothing-to-move");
        long variance = Math.multiplyExact(
                movement.amount().uncertainty(), movement.amount().uncertainty());
        return new Booked(
                movement,
                movement.drill(),
                new Gain(movement.from(), -count, variance, 0),
                new Gain(movement.to(), count, variance, 0));
    }

    private Booked stocktake(LedgerAction.Stocktake stocktake, Trial trial) throws No {
        refuseIf(stocktake.spot() instanceof Spot.Boundary, "not-inside");
        refuseIf(stocktake.amount().count().isEmpty(), "amount-needed");
        Balance now = trial.state.at(stocktake.spot(), stocktake.drill());
        long more = stocktake.amount().count().get() - now.count();
        long square = Math.multiplyExact(
                stocktake.amount().uncertainty(), stocktake.amount().uncertainty());
        var here = new Gain(stocktake.spot(), more, square - now.variance(), -now.uncounted());
        return more < 0
                ? new Booked(stocktake, stocktake.drill(), here, new Gain(Spot.LOST, -more, 0, 0))
                : new Booked(stocktake, stocktake.drill(), new Gain(Spot.FOUND, -more, 0, 0), here);
    }

    /** Takes back both sides, but inside no more variance or uncounted amounts than a later count has left. */
    private Booked reversal(LedgerAction.Reversal reversal, Trial trial) throws No {
        Booked target = find(reversal.reverses(), trial);
        refuseIf(target == null, "unknown-movement");
        refuseIf(
                reversed.contains(reversal.reverses()) || !trial.reversed.add(reversal.reverses()), "already-reversed");
        return new Booked(
                reversal,
                target.drill(),
                takenBack(target.second(), target.drill(), trial),
                takenBack(target.first(), target.drill(), trial));
    }

    private static Gain takenBack(Gain gain, Drill drill, Trial trial) {
        if (gain.spot() instanceof Spot.Boundary) {
            return new Gain(gain.spot(), -gain.count(), -gain.variance(), -gain.uncounted());
        }
        Balance now = trial.state.at(gain.spot(), drill);
        long variance = Math.min(gain.variance(), now.variance());
        int uncounted = Math.min(gain.uncounted(), now.uncounted());
        return new Gain(gain.spot(), -gain.count(), -variance, -uncounted);
    }

    private void checkReservations(Trial trial, LocalDate day) throws No {
        Set<String> codes = new HashSet<>();
        for (Drill drill : trial.drills) {
            long free = trial.state.free(drill, day);
            boolean more = trial.state.reserved(drill, day) > state.reserved(drill, day);
            if (free < 0 && more) {
                codes.add("not-available");
            } else if (free < 0 && free < state.free(drill, day) - trial.lost.getOrDefault(drill, 0L)) {
                codes.add("reserved");
            }
        }
        if (!codes.isEmpty()) {
            throw new No(codes);
        }
    }

    private Booked find(UUID id, Trial trial) {
        Booked here = trial.booked.get(id);
        return here != null ? here : booked.get(id);
    }

    private static boolean house(Spot spot) {
        return spot instanceof Spot.InBag || spot instanceof Spot.InPocket;
    }

    private static void refuseIf(boolean refused, String code) throws No {
        if (refused) {
            throw new No(Set.of(code));
        }
    }
}
