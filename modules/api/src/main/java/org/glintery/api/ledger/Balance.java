package org.glintery.api.ledger;

import java.util.Locale;
import org.glintery.api.Stable;
import org.glintery.api.internal.Wording;

/**
 * What lies in one spot of one drill.
 *
 * @param count whole drills that are known of
 * @param variance the square of the standard uncertainty, in drills squared
 * @param uncounted how many amounts of unknown size lie there too
 */
@Stable
public record Balance(long count, long variance, int uncounted) {
    public static final Balance ZERO = new Balance(0, 0, 0);

    public boolean isZero() {
        return count == 0 && variance == 0 && uncounted == 0;
    }

    /** Whether no drill is left, however unsure that is: a spot that was emptied by hand. */
    public boolean isEmpty() {
        return count == 0 && uncounted == 0;
    }

    public Balance plus(long moreCount, long moreVariance, int moreUncounted) {
        return new Balance(
                Math.addExact(count, moreCount), Math.addExact(variance, moreVariance), uncounted + moreUncounted);
    }

    /** Both together: variances add, so uncertainties add in quadrature. A sum of variances too large for a number stays the largest. */
    public Balance plus(Balance other) {
        long both = variance + other.variance;
        boolean tooLarge = variance > 0 && other.variance > 0 && both < 0;
        return new Balance(
                Math.addExact(count, other.count), tooLarge ? Long.MAX_VALUE : both, uncounted + other.uncounted);
    }

    /** Standard uncertainty in whole drills, rounded. */
    public long uncertainty() {
        return Math.round(Math.sqrt(Math.max(0, variance)));
    }

    public String words() {
        return words(count, uncertainty(), uncounted > 0);
    }

    static String words(long count, long uncertainty, boolean more) {
        String number = grouped(count);
        String known = uncertainty == 0 ? number : Wording.of(Balance.class, "about", number, grouped(uncertainty));
        if (!more) {
            return known;
        }
        return count == 0 ? Wording.of(Balance.class, "uncounted") : Wording.of(Balance.class, "andUncounted", known);
    }

    /** A whole number with its thousands set apart by thin spaces, as everywhere. */
    public static String grouped(long n) {
        return String.format(Locale.ROOT, "%,d", n).replace(',', '\u2009');
    }
}
