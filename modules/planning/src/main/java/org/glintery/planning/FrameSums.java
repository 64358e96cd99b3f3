package org.glintery.planning;

import org.glintery.api.Preview;

/**
 * The rails of a rectangular frame, mitred at the corners. Exact, in whole micrometres.
 *
 * <p>A rail is as long, at its outer edge, as the artwork + the total allowance + 2 (moulding width - rebate lip): the
 * lip lies over the artwork, the rest of the moulding beside it. The usual rule of thumb adds 8 widths and so buys too
 * much, unless the width is measured from the rebate.
 *
 * @param artworkWidthUm the piece as it goes into the rebate, with its backing
 * @param artworkHeightUm likewise
 * @param allowanceUm play in the rebate, in total for a dimension; {@link #USUAL_ALLOWANCE_UM} is common practice
 * @param mouldingWidthUm across the face
 * @param rebateLipUm how much of the width lies over the artwork
 */
@Preview(since = "1.0")
public record FrameSums(
        long artworkWidthUm, long artworkHeightUm, long allowanceUm, long mouldingWidthUm, long rebateLipUm) {

    /** 1/8 inch in total for a dimension: common practice, no published source. */
    public static final long USUAL_ALLOWANCE_UM = Inches.UM_AN_INCH / 8;

    private static final int CUTS = 4;

    /** Lengths beyond a kilometre are refused as typing errors. */
    private static final long MOST_UM = 1_000_000_000L;

    /** @throws IllegalArgumentException for a length below 0 or over a kilometre, no artwork, or a lip wider than its moulding */
    public FrameSums {
        for (long length : new long[] {artworkWidthUm, artworkHeightUm, allowanceUm, mouldingWidthUm, rebateLipUm}) {
            if (length < 0 || length > MOST_UM) {
                throw new IllegalArgumentException("length out of range: " + length + " um");
            }
        }
        if (artworkWidthUm == 0 || artworkHeightUm == 0) {
            throw new IllegalArgumentException("no artwork to frame");
        }
        if (rebateLipUm > mouldingWidthUm) {
            throw new IllegalArgumentException("the lip is wider than its moulding");
        }
    }

    /** The outer length of the upper and lower rail. */
    public long widthRailUm() {
        return artworkWidthUm + allowanceUm + 2 * (mouldingWidthUm - rebateLipUm);
    }

    /** The outer length of the left and right rail. */
    public long heightRailUm() {
        return artworkHeightUm + allowanceUm + 2 * (mouldingWidthUm - rebateLipUm);
    }

    /** What can be seen of the artwork. */
    public long sightWidthUm() {
        return artworkWidthUm + allowanceUm - 2 * rebateLipUm;
    }

    /** What can be seen of the artwork. */
    public long sightHeightUm() {
        return artworkHeightUm + allowanceUm - 2 * rebateLipUm;
    }

    /** The moulding that is used up: the four rails, and one kerf for each of the four cuts. */
    public long mouldingLengthUm(long kerfUm) {
        return 2 * (widthRailUm() + heightRailUm()) + CUTS * kerfUm;
    }

    /**
     * For comparison: 2 (W + H) + 8 widths + an allowance, common practice in framing.
     *
     * @param extraUm the allowance of the rule, once for the whole frame
     */
    public long ruleOfThumbUm(long extraUm) {
        return 2 * (artworkWidthUm + artworkHeightUm) + 8 * mouldingWidthUm + extraUm;
    }

    /** Width and height of the artwork added, in inches: the trade prices frames by it. */
    public double unitedInches() {
        return (artworkWidthUm + artworkHeightUm) / (double) Inches.UM_AN_INCH;
    }
}
