package org.glintery.api.ledger;

import java.util.Optional;
import org.glintery.api.Stable;
import org.glintery.api.internal.Wording;

/**
 * How many, with how sure. Not known is never 0.
 *
 * @param count whole drills; empty only when unknown
 * @param uncertainty one standard uncertainty in whole drills, 0 when counted
 */
@Stable
public record Amount(Basis basis, Optional<Long> count, long uncertainty) {

    /** How the amount came about. */
    public enum Basis {
        COUNTED,
        WEIGHED,
        BY_BAG,
        ROUGH,
        UNKNOWN
    }

    /** Larger counts are refused as typing errors. */
    public static final long MOST = 1_000_000_000L;

    /** More bags of one drill are refused as typing errors. */
    public static final int MOST_BAGS = 10_000;

    /**
     * How much one bag differs from what its source says, as one standard uncertainty in parts of a bag. Common
     * practice, no published source.
     */
    private static final double BAG_SPREAD = 0.05;

    public Amount {
        if ((basis == Basis.UNKNOWN) != count.isEmpty()) {
            throw new IllegalArgumentException("an unknown amount has no count, any other has one");
        }
        if (count.isPresent() && (count.get() < 0 || count.get() > MOST)) {
            throw new IllegalArgumentException("count out of range: " + count.get());
        }
        if (uncertainty < 0 || uncertainty > MOST) {
            throw new IllegalArgumentException("uncertainty out of range: " + uncertainty);
        }
    }

    public static Amount counted(long count) {
        return new Amount(Basis.COUNTED, Optional.of(count), 0);
    }

    public static Amount rough(long count, long uncertainty) {
        return new Amount(Basis.ROUGH, Optional.of(count), uncertainty);
    }

    /** What so many bags hold together, of which each was filled by its source. */
    public static Amount inBags(long drills, int bags) {
        long spread = bags == 0 ? 0 : Math.round(BAG_SPREAD * drills / Math.sqrt(bags));
        return new Amount(Basis.BY_BAG, Optional.of(drills), spread);
    }

    public static Amount unknown() {
        return new Amount(Basis.UNKNOWN, Optional.empty(), 0);
    }

    public boolean known() {
        return count.isPresent();
    }

    /** "about 1 840 (±40)", "200", "not counted yet". Thin spaces group thousands. */
    public String words() {
        return count.map(c -> Balance.words(c, uncertainty, false))
                .orElseGet(() -> Wording.of(Amount.class, "unknown"));
    }
}
