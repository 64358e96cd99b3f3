package org.glintery.workbench.parts;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Amount;
import org.openide.util.NbBundle.Messages;

/**
 * Numbers of drills as people type them: 1 240 and 1,240 are the same, about 200 is rough, nothing is not known. Pure.
 */
@Stable
public final class TypedAmount {
    /** Thousands in groups of three; a number with decimals is no number of drills. */
    private static final Pattern GROUPED =
            Pattern.compile("[1-9]\\d{0,2}([\\s\\u00a0\\u2009\\u202f.,'\\u2019])\\d{3}(?:\\1\\d{3})*");

    private static final Pattern ABOUT = Pattern.compile("(?:about|ca\\.?|~)\\s*(.+)");

    /** What "about 200" leaves open, in parts of the number. Our own choice: people round to tens and hundreds. */
    private static final double ROUGHNESS = 0.1;

    private TypedAmount() {}

    /** Refused with {@code not-a-number}. */
    public static Result<Amount> read(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        Matcher about = ABOUT.matcher(text);
        boolean rough = about.matches();
        return whole(rough ? about.group(1) : text)
                .then(count ->
                        Result.ok(count.map(n -> rough ? Amount.rough(n, Math.round(n * ROUGHNESS)) : Amount.counted(n))
                                .orElse(Amount.unknown())));
    }

    /** A whole number; empty for nothing typed. Refused with {@code not-a-number}. */
    @Messages({"# {0} - what was typed", "TypedAmount.notANumber=''{0}'' is not a number of drills."})
    public static Result<Optional<Long>> whole(String typed) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        String digits = GROUPED.matcher(text).matches() ? text.replaceAll("\\D", "") : text;
        return digits.matches("\\d{1,9}")
                ? Result.ok(Optional.of(Long.parseLong(digits)))
                : Result.refused("not-a-number", Bundle.TypedAmount_notANumber(text));
    }
}
