package org.glintery.records;

import java.util.Optional;
import java.util.UUID;
import java.util.function.LongFunction;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;

/** Gives back the action that a row was made from, exactly. */
final class ActionWords {
    private final Names names;

    ActionWords(Names names) {
        this.names = names;
    }

    /** @param idOf the id of the action with a sequence number */
    LedgerAction action(MovementRow row, LongFunction<UUID> idOf) {
        String reason = names.texts().value(row.reason());
        Optional<About> happened = text(row.happened()).flatMap(About::edtf);
        var recorded = Optional.of(row.recordedAt());
        Effect effect = row.effect();
        return switch (row.kind()) {
            case REVERSAL ->
                new LedgerAction.Reversal(row.id(), idOf.apply(row.reverses()), reason, happened, recorded);
            case STOCKTAKE -> {
                Spot from = names.spots().value(effect.from());
                Spot pinned = from.isBoundary() ? names.spots().value(effect.to()) : from;
                yield new LedgerAction.Stocktake(
                        row.id(),
                        names.drills().value(effect.drill()),
                        pinned,
                        amount(row),
                        reason,
                        happened,
                        recorded);
            }
            case MOVEMENT ->
                new LedgerAction.Movement(
                        row.id(),
                        names.drills().value(effect.drill()),
                        text(row.lot()),
                        names.spots().value(effect.from()),
                        names.spots().value(effect.to()),
                        amount(row),
                        reason,
                        happened,
                        recorded);
        };
    }

    LedgerEntry entry(MovementRow row, LongFunction<UUID> idOf, UUID change) {
        Effect effect = row.effect();
        return new LedgerEntry(
                row.sequence(),
                action(row, idOf),
                names.drills().value(effect.drill()),
                names.spots().value(effect.from()),
                names.spots().value(effect.to()),
                effect.count(),
                row.recordedAt(),
                change);
    }

    /** Whether an action says what a row already holds; a missing recorded-at agrees with any. */
    boolean same(LedgerAction asked, MovementRow row, LongFunction<UUID> idOf) {
        LedgerAction booked = action(row, idOf);
        return asked.recordedAt().isPresent()
                ? booked.equals(asked)
                : unrecorded(booked).equals(asked);
    }

    private static LedgerAction unrecorded(LedgerAction action) {
        if (action instanceof LedgerAction.Movement m) {
            return new LedgerAction.Movement(
                    m.id(),
                    m.drill(),
                    m.lot(),
                    m.from(),
                    m.to(),
                    m.amount(),
                    m.reason(),
                    m.happenedOn(),
                    Optional.empty());
        }
        if (action instanceof LedgerAction.Stocktake s) {
            return new LedgerAction.Stocktake(
                    s.id(), s.drill(), s.spot(), s.amount(), s.reason(), s.happenedOn(), Optional.empty());
        }
        var r = (LedgerAction.Reversal) action;
        return new LedgerAction.Reversal(r.id(), r.reverses(), r.reason(), r.happenedOn(), Optional.empty());
    }

    private static Amount amount(MovementRow row) {
        return new Amount(
                DiskCodes.BASES.constant(row.basis()),
                row.said() == MovementRow.NONE ? Optional.empty() : Optional.of(row.said()),
                row.uncertainty());
    }

    private Optional<String> text(int number) {
        return number == MovementRow.NONE
                ? Optional.empty()
                : Optional.of(names.texts().value(number));
    }
}
