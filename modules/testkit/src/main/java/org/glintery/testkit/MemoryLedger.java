package org.glintery.testkit;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Reservation;

/** A plain ledger with the entries that it came from, for a workshop in memory. Not safe for use by several threads. */
final class MemoryLedger {
    private final PlainLedger plain = new PlainLedger();
    private final List<LedgerEntry> entries = new ArrayList<>();

    PlainState state() {
        return plain.state();
    }

    /** How many changes that touched the ledger stand. */
    int standing() {
        return plain.standing();
    }

    /** Books what a change asks for, and gives its new entries. */
    List<LedgerEntry> apply(ChangeSet change, LocalDate day, Instant now) throws RefusedException {
        Map<UUID, LedgerAction> fresh = new LinkedHashMap<>();
        List<Operation> mine = new ArrayList<>();
        for (Operation operation : change.operations()) {
            if (operation instanceof Operation.Post post
                    && !plain.knows(post.action().id())) {
                fresh.putIfAbsent(post.action().id(), post.action());
            }
            ledgers(operation).ifPresent(mine::add);
        }
        var asked = new ChangeSet(change.id(), change.sentence(), List.of(), mine);
        Optional<String> refused = plain.apply(asked, day).stream().sorted().findFirst();
        if (refused.isPresent()) {
            throw new RefusedException(refused.get());
        }
        List<LedgerEntry> made = new ArrayList<>();
        for (LedgerAction action : fresh.values()) {
            PlainLedger.Told told = plain.told(action.id());
            made.add(add(recorded(action, now), told, now, change.id()));
        }
        return made;
    }

    /** What of a change concerns the ledger: postings and reservations. */
    private static Optional<Operation> ledgers(Operation operation) {
        if (operation instanceof Operation.Post) {
            return Optional.of(operation);
        }
        if (operation instanceof Operation.PutRaw raw) {
            boolean reservation = raw.document()
                    .ref()
                    .equals(Reservation.TYPE.ref(raw.document().ref().id()));
            return reservation
                    ? Optional.of(new Operation.Put<>(
                            Reservation.TYPE,
                            raw.document().ref().id(),
                            new PlainCodec().fromJson(raw.document().body(), Reservation.class)))
                    : Optional.empty();
        }
        if (operation instanceof Operation.Remove remove) {
            return Optional.of(operation)
                    .filter(one -> remove.ref()
                            .equals(Reservation.TYPE.ref(remove.ref().id())));
        }
        return Optional.of(operation)
                .filter(one -> one instanceof Operation.Put<?> put && put.value() instanceof Reservation);
    }

    /** Takes back the newest change that stands, or brings back the newest that was taken back. */
    List<LedgerEntry> invert(boolean undo, List<LedgerEntry> booked, Instant now, UUID change) {
        if (undo) {
            plain.undo();
        } else {
            plain.redo();
        }
        List<LedgerEntry> latestFirst = new ArrayList<>(booked);
        Collections.reverse(latestFirst);
        List<LedgerEntry> made = new ArrayList<>();
        for (LedgerEntry entry : latestFirst) {
            var reversal = new LedgerAction.Reversal(
                    UUID.randomUUID(), entry.action().id(), "taken back", Optional.empty(), Optional.of(now));
            made.add(add(
                    reversal,
                    new PlainLedger.Told(entry.drill(), entry.to(), entry.from(), entry.count()),
                    now,
                    change));
        }
        return made;
    }

    private LedgerEntry add(LedgerAction action, PlainLedger.Told told, Instant now, UUID change) {
        var entry = new LedgerEntry(
                entries.size() + 1L,
                action,
                told.drill(),
                told.from(),
                told.to(),
                told.count(),
                action.recordedAt().orElse(now),
                change);
        entries.add(entry);
        return entry;
    }

    List<LedgerEntry> entries(LedgerQuery query) {
        return entries.stream()
                .filter(entry -> entry.sequence() >= query.fromSequence())
                .filter(entry -> query.drill().map(entry.drill()::equals).orElse(true))
                .filter(entry -> query.spot()
                        .map(spot -> spot.equals(entry.from()) || spot.equals(entry.to()))
                        .orElse(true))
                .limit(query.most())
                .toList();
    }

    long size() {
        return entries.size();
    }

    private static LedgerAction recorded(LedgerAction action, Instant now) {
        Optional<Instant> at = action.recordedAt().or(() -> Optional.of(now));
        if (action instanceof LedgerAction.Movement m) {
            return new LedgerAction.Movement(
                    m.id(), m.drill(), m.lot(), m.from(), m.to(), m.amount(), m.reason(), m.happenedOn(), at);
        }
        if (action instanceof LedgerAction.Stocktake s) {
            return new LedgerAction.Stocktake(s.id(), s.drill(), s.spot(), s.amount(), s.reason(), s.happenedOn(), at);
        }
        var r = (LedgerAction.Reversal) action;
        return new LedgerAction.Reversal(r.id(), r.reverses(), r.reason(), r.happenedOn(), at);
    }
}
