package org.glintery.api.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.glintery.api.ledger.AmountWords.Fault;
import org.glintery.api.ledger.AmountWords.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountWordsTest {
    private static final long SEED = 20_261_125;

    private static Said read(String written) {
        return AmountWords.alone().read(written, Amount.MOST);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1234|1234",
                "1,234|1234",
                "1.234|1234",
                "1 234|1234",
                "1'234|1234",
                "1’234|1234",
                "12,345,678|12345678",
                "1.234,00|1234",
                "12.00|12",
                "007|7",
                "0|0",
                "+200|200",
                "200 pcs.|200",
                "200drills|200",
                "1 drill|1",
                "１２３|123",
                "١٢٣|123",
                "1000000000|1000000000"
            })
    void readsACount(String written, long count) {
        assertThat(read(written)).isEqualTo(new Said(Amount.counted(count), Optional.empty(), false, Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2 bags", "2bags", "2 BAGS", "two bags", "2 packets", "2 packs", "2 b", "2 bags.", "about 2 bags"
            })
    void readsBags_neverAsThatManyDrills(String written) {
        assertThat(read(written)).isEqualTo(new Said(Amount.unknown(), Optional.of(2), false, Optional.empty()));
    }

    @Test
    void readsOneBag_inWords() {
        assertThat(List.of("a bag", "one bag", "1 bag", "1 packet"))
                .allSatisfy(written -> assertThat(read(written).bags()).contains(1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2 x 200",
                "2x200",
                "2 × 200",
                "2*200",
                "200 x 2",
                "2 x 200 drills",
                "2 bags x 200",
                "2 bags of 200",
                "two bags of 200 pcs",
                "2 bags à 200",
                "2 bags @ 200",
                "200 x 2 bags",
                "400 (2 bags)",
                "400 in 2 bags",
                "400 pcs, 2 bags",
                "400/2 bags",
                "2 bags (400)",
                "2 bags: 400 drills",
                "2 bags (200 each)",
                "2 bags, 200 per bag"
            })
    void readsBagsWithWhatTheyHold(String written) {
        assertThat(read(written))
                .as(written)
                .isEqualTo(new Said(Amount.inBags(400, 2), Optional.of(2), false, Optional.empty()));
        assertThat(read(written).amount().count()).contains(400L);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"about 200", "ca. 200", "ca 200", "approx. 200", "~200", "≈ 200", "200+", "around 200 drills"})
    void readsARoughNumber(String written) {
        assertThat(read(written).amount()).isEqualTo(Amount.rough(200, 20));
    }

    @Test
    void readsANumberWithItsUncertainty() {
        assertThat(read("200 ± 10").amount()).isEqualTo(Amount.rough(200, 10));
        assertThat(read("1 840 +/- 40").amount()).isEqualTo(Amount.rough(1840, 40));
    }

    /** Half-width over the square root of 3; JCGM 100:2008, 4.3.7: 50 / 1.732 = 28.9. */
    @Test
    void readsARange() {
        assertThat(read("200-300").amount()).isEqualTo(Amount.rough(250, 29));
        assertThat(read("200 to 300 drills").amount()).isEqualTo(Amount.rough(250, 29));
        assertThat(read("300-200").fault()).contains(Fault.NOT_WHOLE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "some",
                "a few",
                "a pinch",
                "a handful",
                "half a bag",
                "½ bag",
                "1/2 bag",
                "1.5 bags",
                "0,5 bag",
                "about half a bag",
                "part bag",
                "leftovers",
                "5 g",
                "12,5 grams"
            })
    void knowsThatThereIsSome_whereNobodyCounted(String written) {
        assertThat(read(written))
                .as(written)
                .isEqualTo(new Said(Amount.unknown(), Optional.empty(), true, Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource({
        "half a bag, 100, 29",
        "about half a bag, 100, 29",
        "1/2 bag, 100, 29",
        "a third of a bag, 67, 29",
        "¾ bag, 150, 29",
        "1.5 bags, 300, 29",
        "'0,5 bag', 100, 29",
        "part bag, 100, 58",
        "the rest of the bag, 100, 58"
    })
    void takesPartOfABagForANumber_whereItIsKnownWhatABagHolds(String written, long count, long uncertainty) {
        assertThat(AmountWords.alone().inBagsOf(200).read(written, Amount.MOST).amount())
                .as(written)
                .isEqualTo(Amount.rough(count, uncertainty));
        assertThat(AmountWords.tellPartOfBag(written)).isTrue();
        assertThat(AmountWords.tellPartOfBag("2 bags")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "\u00a0", "-", "–", "—", "?", "...", "n/a", "N/A", "Unknown", "not counted yet", "tbc"})
    void leavesUnknown_whatIsNotSaid(String written) {
        assertThat(read(written)).isEqualTo(new Said(Amount.unknown(), Optional.empty(), false, Optional.empty()));
        assertThat(AmountWords.areSilent(written)).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-5|BELOW_ZERO",
                "−5 drills|BELOW_ZERO",
                "-2 bags|BELOW_ZERO",
                "1.5|NOT_WHOLE",
                "1,5|NOT_WHOLE",
                "1.234.5|NOT_WHOLE",
                "1,23,456|NOT_WHOLE",
                "0.500|NOT_WHOLE",
                "1e5|NOT_WHOLE",
                "many|NOT_WHOLE",
                "2 x|NOT_WHOLE",
                "x 200|NOT_WHOLE",
                "2 x 1.5|NOT_WHOLE",
                "10-Dec|NOT_WHOLE",
                "1000000001|TOO_LARGE",
                "99999999999999999999|TOO_LARGE",
                "10001 bags|TOO_LARGE",
                "10000 x 999999999|TOO_LARGE",
                "10001 x 10002|TOO_LARGE"
            })
    void saysWhatIsWrong(String written, Fault fault) {
        assertThat(read(written).fault()).as(written).contains(fault);
        assertThat(read(written).amount()).isEqualTo(Amount.unknown());
    }

    @Test
    void takesThePointForDecimals_whereOtherNumbersOfTheTableShowIt() {
        AmountWords words = AmountWords.asIn(List.of("250.000", "12.50", "1.234"));
        assertThat(words.read("250.000", Amount.MOST).amount()).isEqualTo(Amount.counted(250));
        assertThat(words.read("1.234", Amount.MOST).fault()).contains(Fault.NOT_WHOLE);
    }

    /** Whatever is written: an answer in bounds, soon. */
    @Test
    void answersAnything_withinBounds() {
        var random = new Random(SEED);
        List<String> parts = List.of(
                "1",
                "20",
                "999999999",
                " ",
                ",",
                ".",
                "'",
                "x",
                "bags",
                "bag",
                "of",
                "about",
                "-",
                "±",
                "+",
                "/",
                "(",
                ")",
                "each",
                "a",
                "g",
                "½",
                "\u202f",
                "drills",
                "!",
                "é",
                "\ud83d\ude00");
        int faults = 0;
        int known = 0;
        for (int round = 0; round < 100_000; round++) {
            var written = new StringBuilder();
            for (int i = random.nextInt(9); i >= 0; i--) {
                written.append(parts.get(random.nextInt(parts.size())));
            }
            Said said = read(written.toString());
            String what = "seed " + SEED + ": '" + written + "'";
            assertThat(said.amount().count().orElse(0L)).as(what).isBetween(0L, Amount.MOST);
            assertThat(said.bags().orElse(0)).as(what).isBetween(0, Amount.MOST_BAGS);
            faults += said.fault().isPresent() ? 1 : 0;
            known += said.amount().known() ? 1 : 0;
        }
        assertThat(faults).isGreaterThan(50_000);
        assertThat(known).isGreaterThan(1_000);
    }
}
