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

    private static final Pattern BAGS = Pattern.compile("(\\d{1,4})\\s*(b|bag|bags)\\.?");

    /** The line as it would be typed. */
    static TypedLine of(LegendLine line) {
        String supplied = line.bags()
                .filter(bags -> !line.supplied().known())
                .map(bags -> bags + (bags == 1 ? " bag" : " bags"))
                .orElseGet(() -> written(line.supplied()));
        return new TypedLine(
                line.symbol(),
                line.drill().code(),
                line.needed().map(TypedLine::grouped).orElse(""),
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
            Optional<Integer> count = Optional.of(Integer.parseInt(bags.group(1)));
            return Result.ok(new LegendLine(symbol.strip(), drill, need, Amount.unknown(), count, extras));
        }
        return TypedAmount.read(text)
                .then(amount ->
                        Result.ok(new LegendLine(symbol.strip(), drill, need, amount, Optional.empty(), extras)));
    }

    private static String written(Amount amount) {
        return amount.count()
                .map(count -> (amount.uncertainty() > 0 ? "about " : "") + grouped(count))
                .orElse("");
    }

    /** Thousands set apart by thin spaces, as everywhere on the screens. */
    static String grouped(long count) {
        return new Balance(count, 0, 0).words();
    }
}
