package org.glintery.stash.ui;

import java.util.Map;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.AmountWords;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.LegendLine;
import org.glintery.workbench.parts.TypedAmount;
import org.openide.util.NbBundle.Messages;

/**
 * A legend line as it is typed, and how it is understood: 1 240 or 1,240 is a number; 2 bags, half a bag, about 200 and an empty
 * field are taken for what they say. Pure.
 */
record TypedLine(String symbol, String code, String needed, String supplied) {

    /** The line as it would be typed: what it says is read back. */
    @Messages({
        "# {0} - how many",
        "# {1} - how many in words",
        "TypedLine.bags={0,choice,0#{1} bags|1#{1} bag|1<{1} bags}"
    })
    static TypedLine of(LegendLine line) {
        String supplied = line.bags()
                .filter(bags -> !line.supplied().known())
                .map(bags -> Bundle.TypedLine_bags(bags, Balance.grouped(bags)))
                .orElseGet(() -> written(line.supplied()));
        return new TypedLine(
                line.symbol(),
                line.drill().code(),
                line.needed().map(Balance::grouped).orElse(""),
                supplied);
    }

    /** @param kind the drill without its code @param drillsPerBag what a bag of the piece holds */
    @Messages("TypedLine.noCode=A line needs the drill's code, or a name of your own for it.")
    Result<LegendLine> understood(Drill kind, Map<String, String> extras, int drillsPerBag) {
        if (code.isBlank()) {
            return Result.refused("no-code", Bundle.TypedLine_noCode());
        }
        Drill drill = new Drill(
                kind.shape(),
                kind.sizeHundredths(),
                kind.body(),
                kind.coating(),
                kind.outline(),
                kind.card(),
                code.strip());
        return TypedAmount.whole(needed).then(need -> supply(need, drill, extras, drillsPerBag));
    }

    @Messages({
        "# {0} - what was typed",
        "TypedLine.notAnAmount=''{0}'' is not an amount. Write a number, or words such as ''about 200'', ''2 bags'', "
                + "''half a bag'' or ''a pinch''."
    })
    private Result<LegendLine> supply(Optional<Long> need, Drill drill, Map<String, String> extras, int drillsPerBag) {
        AmountWords.Said said = AmountWords.alone().inBagsOf(drillsPerBag).read(supplied, Amount.MOST);
        return said.fault().isPresent()
                ? Result.refused("not-a-number", Bundle.TypedLine_notAnAmount(supplied.strip()))
                : Result.ok(new LegendLine(symbol.strip(), drill, need, said.amount(), said.bags(), extras));
    }

    /** A rough amount is written so that it is read back as it is. */
    @Messages({
        "# {0} - how many",
        "TypedLine.about=about {0}",
        "# {0} - how many",
        "# {1} - uncertainty",
        "TypedLine.spread={0} \u00b1 {1}"
    })
    private static String written(Amount amount) {
        return amount.count().map(count -> written(amount, count)).orElse("");
    }

    private static String written(Amount amount, long count) {
        String number = Balance.grouped(count);
        if (amount.uncertainty() == 0) {
            return number;
        }
        String about = Bundle.TypedLine_about(number);
        boolean same =
                AmountWords.alone().read(about, Amount.MOST).amount().equals(Amount.rough(count, amount.uncertainty()));
        return same ? about : Bundle.TypedLine_spread(number, Balance.grouped(amount.uncertainty()));
    }
}
