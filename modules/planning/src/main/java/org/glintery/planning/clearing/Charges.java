package org.glintery.planning.clearing;

import java.util.List;

/**
 * What links cost, as one number each: postage first, then parcels. A link costs its postage times {@code perPostage} plus
 * 1 for the parcel, divided by what all links have in common, so that bounds can be rounded up far.
 *
 * @param charge by link
 * @param perPostage more than there can be parcels
 * @param common what the charges were divided by
 * @param commonPostage the greatest common divisor of all prices, and {@code dearest} the highest
 */
record Charges(long[] charge, long perPostage, long common, long commonPostage, long dearest) {

    static Charges of(Round round, List<Way> ways) {
        long traders = round.traders().size();
        long perPostage = traders * traders + 1;
        long[] charge = new long[ways.size()];
        long common = 0;
        long commonPostage = 0;
        long dearest = 0;
        for (int link = 0; link < charge.length; link++) {
            long price = round.postage().of(ways.get(link));
            charge[link] = price * perPostage + 1;
            common = gcd(common, charge[link]);
            commonPostage = gcd(commonPostage, price);
            dearest = Math.max(dearest, price);
        }
        common = Math.max(1, common);
        for (int link = 0; link < charge.length; link++) {
            charge[link] /= common;
        }
        return new Charges(charge, perPostage, common, Math.max(1, commonPostage), dearest);
    }

    /** The postage in a sum of charges. */
    long postage(long sum) {
        return sum * common / perPostage;
    }

    /** The parcels in a sum of charges. */
    long parcels(long sum) {
        return sum * common % perPostage;
    }

    /** The least postage of any plan whose charges come to at least this sum. */
    long leastPostage(long sum) {
        return ceilDiv(postage(sum), commonPostage) * commonPostage;
    }

    /** The fewest parcels of any plan whose charges come to at least this sum, if its postage is no more than that. */
    long fewestParcels(long sum, long postage) {
        long atDearest = dearest == 0 ? 0 : ceilDiv(leastPostage(sum), dearest);
        return Math.max(atDearest, sum * common - postage * perPostage);
    }

    private static long ceilDiv(long a, long b) {
        return (a + b - 1) / b;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
