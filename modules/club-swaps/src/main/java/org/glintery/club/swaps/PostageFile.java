package org.glintery.club.swaps;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.glintery.api.MalformedException;
import org.glintery.planning.clearing.Postage;
import org.glintery.planning.clearing.Way;
import org.openide.util.NbBundle.Messages;

/**
 * The postage of a round's file, in whole thousandths; none is free.
 *
 * @param unit what one unit of the postage is
 */
record PostageFile(Postage postage, BigDecimal unit) {

    private static final int DECIMALS = 3;
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000);

    @Messages({
        "# {0} - path",
        "# {1} - name",
        "PostageFile.unknown={0}: there is no member called ''{1}''.",
        "# {0} - path",
        "PostageFile.fine={0} has more than three decimals."
    })
    static PostageFile read(Optional<FilePlace> place, Map<String, Integer> members) {
        BigDecimal unit = BigDecimal.ONE.movePointLeft(DECIMALS);
        if (place.isEmpty()) {
            return new PostageFile(Postage.flat(0), unit);
        }
        long usual = price(place.get().need("default"));
        Map<Way, Long> special = new HashMap<>();
        for (FilePlace pair : place.get().items("pairs")) {
            Way way = new Way(member(pair.need("from"), members), member(pair.need("to"), members));
            special.put(way, price(pair.need("price")));
        }
        OptionalInt organiser = place.get().field("organiser").stream()
                .mapToInt(id -> member(id, members))
                .findFirst();
        return new PostageFile(new Postage(usual, special, organiser), unit);
    }

    private static long price(FilePlace place) {
        BigDecimal units =
                place.number(BigDecimal.ZERO, MOST).movePointRight(DECIMALS).stripTrailingZeros();
        if (units.scale() > 0) {
            throw new MalformedException(Bundle.PostageFile_fine(place.shown()));
        }
        return units.longValueExact();
    }

    private static int member(FilePlace id, Map<String, Integer> members) {
        Integer member = members.get(id.text());
        if (member == null) {
            throw new MalformedException(Bundle.PostageFile_unknown(id.shown(), id.text()));
        }
        return member;
    }
}
