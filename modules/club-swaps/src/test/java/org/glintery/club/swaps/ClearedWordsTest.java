package org.glintery.club.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.glintery.planning.clearing.Clearing;
import org.glintery.planning.clearing.Postage;
import org.glintery.planning.clearing.Round;
import org.glintery.planning.clearing.Transfer;
import org.junit.jupiter.api.Test;

/** Numbers in what members are told: none, one and many. */
class ClearedWordsTest {

    private static final NamedRound NAMED = new NamedRound(
            new Round(List.of(), List.of(), List.of(), Postage.flat(0)),
            List.of("Ann", "Bea"),
            List.of("k1"),
            new BigDecimal("0.001"));

    /** @param least what is proven of wants, postage in thousandths and parcels */
    private static String text(int met, int wanted, long postage, long parcels, int most, long least, long fewest) {
        List<Transfer> transfers = met == 0 ? List.of() : List.of(new Transfer(0, 1, 0, met, false));
        return new ClearedWords(
                        NAMED,
                        new Clearing(
                                transfers,
                                List.of(new Clearing.Met(1, met, wanted)),
                                most,
                                postage,
                                least,
                                parcels,
                                fewest,
                                parcels,
                                0,
                                0,
                                0))
                .text();
    }

    @Test
    void tellsOfOne() {
        assertThat(text(1, 1, 2_500, 1, 1, 2_500, 1)).isEqualTo("""
                1 of 1 wanted packet changes hands; no plan does better.
                One parcel, 2.5 in postage; for the same packets it can't be less.
                Ann: you send 1 packet to one person, you get nothing back.
                  to Bea: 1 of k1
                Bea: you send nothing, you get 1 packet.""");
    }

    @Test
    void tellsOfThousands() {
        assertThat(text(1_200, 4_000, 12_345_500, 1_000, 1_300, 12_000_000, 1)).isEqualTo("""
                1\u2009200 of 4\u2009000 wanted packets change hands; more than 1\u2009300 can't.
                1\u2009000 parcels, 12\u2009345.5 in postage; whether it can be less is not known, but not below one \
                parcel and 12\u2009000.
                Ann: you send 1\u2009200 packets to one person, you get nothing back.
                  to Bea: 1\u2009200 of k1
                Bea: you send nothing, you get 1\u2009200 packets.""");
    }

    @Test
    void tellsOfNone() {
        assertThat(text(0, 7, 0, 0, 0, 0, 0)).isEqualTo("""
                Nothing can change hands: nobody could get something for what they give.
                No parcels, 0 in postage; for the same packets it can't be less.""");
        assertThat(text(0, 7, 0, 0, 1, 0, 0)).startsWith("0 of 7 wanted packets change hands; more than 1 can't.");
    }
}
