package org.glintery.records;

import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;

/** Makes the row that an action is kept as. */
final class RowMaking {
    private final Names names;
    private final Draft draft;

    RowMaking(Names names, Draft draft) {
        this.names = names;
        this.draft = draft;
    }

    MovementRow row(LedgerAction action, Effect effect, long sequence, long reverses) {
        Optional<Amount> amount = Optional.empty();
        Optional<String> lot = Optional.empty();
        MovementRow.Kind kind = MovementRow.Kind.REVERSAL;
        if (action instanceof LedgerAction.Movement movement) {
            amount = Optional.of(movement.amount());
            lot = movement.lot();
            kind = MovementRow.Kind.MOVEMENT;
        } else if (action instanceof LedgerAction.Stocktake stocktake) {
            amount = Optional.of(stocktake.amount());
            kind = MovementRow.Kind.STOCKTAKE;
        }
        return new MovementRow(
                sequence,
                action.id(),
                kind,
                effect,
                text(lot),
                amount.map(said -> DiskCodes.BASES.of(said.basis())).orElse(MovementRow.NONE),
                amount.flatMap(Amount::count).orElse((long) MovementRow.NONE),
                amount.map(Amount::uncertainty).orElse(0L),
                names.texts().number(action.reason()),
                text(action.happenedOn().map(Object::toString)),
                action.recordedAt().orElse(draft.now()),
                reverses,
                draft.revision());
    }

    private int text(Optional<String> text) {
        return text.map(names.texts()::number).orElse(MovementRow.NONE);
    }
}
