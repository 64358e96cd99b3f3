package org.glintery.records;

import java.sql.SQLException;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.LedgerAction;
import org.openide.util.NbBundle.Messages;

/**
 * The rules of the ledger, one action at a time. An id said again with the same content counts once.
 * Whether a bag or a piece has a document is not asked: the ledger knows no other types. Writer thread only.
 */
@Messages({"takes-back-more=it takes back more than there is"})
final class LedgerBook {
    private final Names names;
    private final LedgerMemory memory;
    private final ActionWords words;
    private final EffectRules rules;
    private final EffectSums sums;
    private final RowSource rows;

    /** Reads rows that are on disk. */
    interface RowSource {
        MovementRow row(long sequence) throws SQLException;
    }

    LedgerBook(Names names, LedgerMemory memory, EffectSums sums, RowSource rows) {
        this.names = names;
        this.memory = memory;
        this.words = new ActionWords(names);
        this.rules = new EffectRules(names);
        this.sums = sums;
        this.rows = rows;
    }

    /** Books an action on the draft, or says why not. @param sides what a reversal from elsewhere did there */
    Optional<Refusal> post(LedgerAction action, Optional<Sides> sides, Draft draft) throws SQLException {
        MovementRow known = known(action.id(), draft);
        if (known != null) {
            UUID reversedId =
                    known.reverses() == 0 ? null : row(known.reverses(), draft).id();
            return words.same(action, known, sequence -> reversedId)
                    ? Optional.empty()
                    : Optional.of(Refusals.idReused());
        }
        try {
            if (action instanceof LedgerAction.Reversal reversal) {
                return reverse(reversal, sides, draft);
            }
            return action instanceof LedgerAction.Movement movement
                    ? move(movement, draft)
                    : stocktake((LedgerAction.Stocktake) action, draft);
        } catch (ArithmeticException e) {
            return Optional.of(Refusals.overflow());
        }
    }

    private Optional<Refusal> move(LedgerAction.Movement movement, Draft draft) {
        Optional<Refusal> refusal = rules.check(movement, draft.balances());
        return refusal.isPresent() ? refusal : book(movement, rules.of(movement, draft.balances()), 0, draft);
    }

    private Optional<Refusal> stocktake(LedgerAction.Stocktake stocktake, Draft draft) {
        Optional<Refusal> refusal = rules.check(stocktake);
        return refusal.isPresent() ? refusal : book(stocktake, rules.of(stocktake, draft.balances()), 0, draft);
    }

    /**
     * Takes back exactly what an entry did. Where it was reversed and brought back before, the last link of that chain
     * is what is reversed, since an entry is reversed at most once.
     */
    Optional<Refusal> takeBack(MovementRow row, UUID id, String reason, Draft draft) throws SQLException {
        long end = row.sequence();
        boolean stands = true;
        for (long next = reverser(end, draft); next != 0; next = reverser(end, draft)) {
            end = next;
            stands = !stands;
        }
        if (!stands) {
            return Optional.of(Refusals.alreadyReversed());
        }
        var reversal = new LedgerAction.Reversal(id, row(end, draft).id(), reason, Optional.empty(), Optional.empty());
        return post(reversal, Optional.of(Sides.of(row.effect().inverse())), draft);
    }

    private long reverser(long sequence, Draft draft) {
        long here = draft.reverser(sequence);
        return here != 0 ? here : memory.reverser(sequence);
    }

    private Optional<Refusal> reverse(LedgerAction.Reversal reversal, Optional<Sides> sides, Draft draft)
            throws SQLException {
        MovementRow target = known(reversal.reverses(), draft);
        if (target == null) {
            return Optional.of(Refusals.unknownMovement());
        }
        if (reverser(target.sequence(), draft) != 0) {
            return Optional.of(Refusals.alreadyReversed());
        }
        Effect effect = sides.isPresent()
                ? sides.get().in(target.effect().inverse())
                : rules.inverse(target.effect(), draft.balances());
        return book(reversal, effect, target.sequence(), draft);
    }

    private Optional<Refusal> book(LedgerAction action, Effect effect, long reverses, Draft draft) {
        Optional<Refusal> refusal = rules.enough(effect, draft.balances());
        if (refusal.isPresent()) {
            return refusal;
        }
        BalanceMap after = sums.after(action, effect, draft.balances());
        if (rules.belowNothing(effect, after)) {
            return Optional.of(Refusals.malformed(Bundle.takes_back_more()));
        }
        long sequence = memory.last() + draft.movements().size() + 1;
        draft.book(new RowMaking(names, draft).row(action, effect, sequence, reverses), after);
        draft.flow()
                .moved(
                        effect.drill(),
                        names.spots().value(effect.from()),
                        names.spots().value(effect.to()),
                        effect.count());
        return Optional.empty();
    }

    private MovementRow known(UUID id, Draft draft) throws SQLException {
        MovementRow here = draft.booked(id);
        if (here != null) {
            return here;
        }
        int sequence = memory.ids().find(id);
        return sequence == 0 ? null : rows.row(sequence);
    }

    private MovementRow row(long sequence, Draft draft) throws SQLException {
        return sequence > memory.last()
                ? draft.movements().get(Math.toIntExact(sequence - memory.last() - 1))
                : rows.row(sequence);
    }
}
