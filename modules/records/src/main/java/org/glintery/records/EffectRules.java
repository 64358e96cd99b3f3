package org.glintery.records;

import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;

/**
 * What each action comes to, given the balances, and what forbids it. Uncertainty adds in quadrature on
 * both sides. A spot inside the workshop never ends with less than nothing: neither of drills nor of
 * variance nor of uncounted amounts.
 */
final class EffectRules {
    private final Names names;

    EffectRules(Names names) {
        this.names = names;
    }

    Optional<Refusal> check(LedgerAction.Movement movement, BalanceMap balances) {
        if (movement.from().equals(movement.to())) {
            return Optional.of(Refusals.sameSpot());
        }
        if (movement.amount().known()) {
            return movement.amount().count().orElseThrow() == 0
                    ? Optional.of(Refusals.nothingToMove())
                    : Optional.empty();
        }
        Balance there = balances.at(
                names.spots().number(movement.from()), names.drills().number(movement.drill()));
        return movement.from().isBoundary() || there.uncounted() > 0
                ? Optional.empty()
                : Optional.of(Refusals.nothingUncounted(movement.from(), movement.drill(), there));
    }

    Effect of(LedgerAction.Movement movement, BalanceMap balances) {
        int drill = names.drills().number(movement.drill());
        int from = names.spots().number(movement.from());
        int to = names.spots().number(movement.to());
        Amount amount = movement.amount();
        if (!amount.known()) {
            int amounts =
                    movement.from().isBoundary() ? 1 : balances.at(from, drill).uncounted();
            return new Effect(drill, from, to, 0, 0, -amounts, 0, amounts);
        }
        long variance = Math.multiplyExact(amount.uncertainty(), amount.uncertainty());
        return new Effect(drill, from, to, amount.count().orElseThrow(), variance, 0, variance, 0);
    }

    Optional<Refusal> check(LedgerAction.Stocktake stocktake) {
        if (stocktake.spot().isBoundary()) {
            return Optional.of(Refusals.notInside());
        }
        return stocktake.amount().known() ? Optional.empty() : Optional.of(Refusals.amountNeeded());
    }

    Effect of(LedgerAction.Stocktake stocktake, BalanceMap balances) {
        int drill = names.drills().number(stocktake.drill());
        int spot = names.spots().number(stocktake.spot());
        Balance there = balances.at(spot, drill);
        long uncertainty = stocktake.amount().uncertainty();
        long variance = Math.subtractExact(Math.multiplyExact(uncertainty, uncertainty), there.variance());
        long more = Math.subtractExact(stocktake.amount().count().orElseThrow(), there.count());
        return more < 0
                ? new Effect(drill, spot, names.spots().number(Spot.LOST), -more, variance, -there.uncounted(), 0, 0)
                : new Effect(drill, names.spots().number(Spot.FOUND), spot, more, 0, 0, variance, -there.uncounted());
    }

    /**
     * The inverse, exact where nothing came between; where a stocktake has since ended the uncertainty that
     * this would take back, no more is taken back than is left.
     */
    Effect inverse(Effect effect, BalanceMap balances) {
        Effect exact = effect.inverse();
        Balance from = balances.at(exact.from(), exact.drill());
        Balance to = balances.at(exact.to(), exact.drill());
        return new Effect(
                exact.drill(),
                exact.from(),
                exact.to(),
                exact.count(),
                inside(exact.from()) ? Math.max(exact.fromVariance(), -from.variance()) : exact.fromVariance(),
                inside(exact.from()) ? Math.max(exact.fromUncounted(), -from.uncounted()) : exact.fromUncounted(),
                inside(exact.to()) ? Math.max(exact.toVariance(), -to.variance()) : exact.toVariance(),
                inside(exact.to()) ? Math.max(exact.toUncounted(), -to.uncounted()) : exact.toUncounted());
    }

    /** Only the giving side can run short: the other gains. */
    Optional<Refusal> enough(Effect effect, BalanceMap balances) {
        Balance there = balances.at(effect.from(), effect.drill());
        return inside(effect.from()) && there.count() < effect.count()
                ? Optional.of(Refusals.notEnough(
                        names.spots().value(effect.from()),
                        names.drills().value(effect.drill()),
                        there,
                        effect.count()))
                : Optional.empty();
    }

    /** Whether a spot inside was left with less than no uncertainty: only a reversal told wrongly does that. */
    boolean belowNothing(Effect effect, BalanceMap after) {
        return belowNothing(effect.from(), effect.drill(), after) || belowNothing(effect.to(), effect.drill(), after);
    }

    private boolean belowNothing(int spot, int drill, BalanceMap after) {
        Balance there = after.at(spot, drill);
        return inside(spot) && (there.variance() < 0 || there.uncounted() < 0);
    }

    private boolean inside(int spot) {
        return !names.spots().value(spot).isBoundary();
    }
}
