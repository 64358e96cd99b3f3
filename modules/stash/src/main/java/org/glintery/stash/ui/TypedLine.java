package org.glintery.stash.ui;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.LegendLine;
import org.glintery.workbench.parts.TypedAmount;
import org.openide.util.NbBundle.Messages;

/**
 * A legend line as it is typed, and how it is understood: 1 240 or 1,240 is a number; 2 bags, about 200 and an empty
 * field are taken for what they say. Pure.
 */
record TypedLine(String symbol, String code, String needed, String supplied) {

    private static final Pattern BAGS = Pattern.compile("(\\d.*?)\\s*(b|bag|bags)\\.?");

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

    /** @param kind the drill without its code */
    Result<LegendLine> understood(Drill kind) {
        return understood(kind, Map.of());
    }

    @Messages("TypedLine.noCode=A line needs the drill's code, or a name of your own for it.")
    Result<LegendLine> understood(Drill kind, Map<String, String> extras) {
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
        return TypedAmount.whole(needed).then(need -> supply(need, drill, extras));
    }

    private Result<LegendLine> supply(Optional<Long> need, Drill drill, Map<String, String> extras) {
        String text = supplied.strip().toLowerCase(Locale.ROOT);
        Matcher bags = BAGS.matcher(text);
        if (bags.matches()) {
            return TypedAmount.whole(bags.group(1))
                    .then(count -> Result.ok(new LegendLine(
                            symbol.strip(), drill, need, Amount.unknown(), count.map(Long::intValue), extras)));
        }
        return TypedAmount.read(text)
                .then(amount ->
                        Result.ok(new LegendLine(symbol.strip(), drill, need, amount, Optional.empty(), extras)));
    }

    @Messages({"# {0} - how many", "TypedLine.about=about {0}"})
    private static String written(Amount amount) {
        return amount.count()
                .map(count -> amount.uncertainty() > 0
                        ? Bundle.TypedLine_about(Balance.grouped(count))
                        : Balance.grouped(count))
                .orElse("");
    }
}
