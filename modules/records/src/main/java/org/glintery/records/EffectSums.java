package org.glintery.records;

import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.LedgerAction;

/** Reckons what an entry makes of the balances. Writer thread. */
class EffectSums {
    private final Names names;

    EffectSums(Names names) {
        this.names = names;
    }

    /** @param action what was booked @param effect what it does */
    BalanceMap after(LedgerAction action, Effect effect, BalanceMap before) {
        Balance from = before.at(effect.from(), effect.drill())
                .plus(Math.negateExact(effect.count()), effect.fromVariance(), effect.fromUncounted());
        BalanceMap half = before.with(effect.from(), effect.drill(), from, inTheHouse(effect.from()));
        Balance to =
                half.at(effect.to(), effect.drill()).plus(effect.count(), effect.toVariance(), effect.toUncounted());
        return half.with(effect.to(), effect.drill(), to, inTheHouse(effect.to()));
    }

    private boolean inTheHouse(int spot) {
        return names.spots().value(spot).inTheHouse();
    }
}
