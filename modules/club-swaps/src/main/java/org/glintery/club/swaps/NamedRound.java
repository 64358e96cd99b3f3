package org.glintery.club.swaps;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import org.glintery.api.ledger.Balance;
import org.glintery.planning.clearing.Round;

/**
 * A swap round with the names that its file gives to members and kinds.
 *
 * @param members by the places of traders, {@code kinds} by number
 * @param priceUnit what one unit of the round's postage is
 * @param organiser the place of the organiser
 */
record NamedRound(Round round, List<String> members, List<String> kinds, BigDecimal priceUnit) {

    BigDecimal price(long units) {
        BigDecimal price = priceUnit.multiply(BigDecimal.valueOf(units)).stripTrailingZeros();
        return price.scale() < 0 ? price.setScale(0) : price;
    }

    /** The price as people read it, thousands set apart. */
    String priceWords(long units) {
        BigDecimal price = price(units);
        String plain = price.toPlainString();
        int point = plain.indexOf('.');
        return Balance.grouped(price.longValue()) + (point < 0 ? "" : plain.substring(point));
    }

    OptionalInt organiser() {
        return round.postage().organiser();
    }
}
