package org.glintery.exchange.legend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.BadRow;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How people fill in the cells of a legend: numbers, bags, sizes, colours and words. */
class LegendCellsTest {
    private static Reading text(String text) {
        LegendReader reader = (LegendReader) new LegendReading().create(null);
        return reader.readText(text, new Assumed("own", Optional.empty())).orThrow();
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
                "1,234.0|1234",
                "12,0|12",
                "12.00|12",
                "007|7",
                "0|0",
                "200 pcs|200",
                "1 234|1234"
            })
    void understandsNumbers_asSpreadsheetsWriteThem(String written, long meant) {
        Reading reading = text("symbol;code;needed\nA;T1;" + written + "\n");
        assertThat(reading.badRows()).isEmpty();
        assertThat(reading.lines().get(0).needed()).contains(meant);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1.5", "1,5", "12,34", "1.234.5", "1,23,456", "1e5", "ten", "0.500", "1.234,5", "--3", "1,234,00"})
    void refusesANumber_thatIsNotWhole(String written) {
        assertThat(text("symbol;code;needed\nA;T1;" + written + "\n").badRows())
                .extracting(BadRow::line)
                .containsExactly(2);
    }

    @Test
    void takesThePointForDecimals_whereOtherNumbersOfTheTableShowIt() {
        Reading reading = text("symbol;code;needed\nA;T1;250.000\nB;T2;12.50\nC;T3;1.234\n");
        assertThat(reading.lines()).extracting(LegendLine::needed).containsExactly(Optional.of(250L));
        assertThat(reading.badRows()).extracting(BadRow::line).containsExactly(3, 4);
    }

    @Test
    void warnsOfANumberThatMayHaveDecimals_onceForTheTable() {
        assertThat(text("symbol;code;needed\nA;T1;120.000\n").warnings())
                .containsExactly("Line 2: '120.000' was read as 120\u2009000. If it means 120, write 120.");
        assertThat(text("symbol;code;needed;supplied\nA;T1;85;90\nB;T2;1,000;2,000 pcs\nC;T3;~3,000;\n")
                        .warnings())
                .containsExactly(
                        "Line 3: '1,000' was read as 1\u2009000, and 2 more numbers like it. If it means 1, write 1.");
        assertThat(text("symbol;code;needed\nA;T1;120.000\nB;T2;80.000\n").warnings())
                .containsExactly(
                        "Line 2: '120.000' was read as 120\u2009000, and one more number like it. If it means 120, write 120.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.234", "2.000.000", "1.234,00", "12.50", "1240.000", "0.5"})
    void warnsOfNone_whereAnotherNumberTellsWhichIsMeant(String other) {
        assertThat(text("symbol;code;needed\nA;T1;120.000\nB;T2;" + other + "\n")
                        .warnings())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"''", "-", "–", "?", "n/a", "Unknown", "' '"})
    void leavesANumberUnknown_whereTheCellDoesNotSay(String written) {
        LegendLine line = text("symbol;code;needed;supplied;bags\nA;T1;" + written + ";" + written + ";" + written
                        + "\n")
                .lines()
                .get(0);
        assertThat(line.needed()).isEmpty();
        assertThat(line.supplied()).isEqualTo(Amount.unknown());
        assertThat(line.bags()).isEmpty();
    }

    @Test
    void readsWordsAndColours_inTheFormsPeopleWrite() {
        Reading reading = text("symbol;code;hex;shape;body;coating;size\n"
                + "A;T1;rgb(60, 110, 113);Squares;Glow in the dark;Aurora Borealis;2,8 mm\n"
                + "B;T2;#ABC;R;clear;matte;\n");
        assertThat(reading.lines().get(0).drill())
                .isEqualTo(new Drill(Shape.SQUARE, 280, Body.GLOW, Coating.AB, Optional.empty(), "own", "T1"));
        assertThat(reading.lines().get(1).drill())
                .isEqualTo(new Drill(Shape.ROUND, 280, Body.TRANSLUCENT, Coating.MATT, Optional.empty(), "own", "T2"));
        assertThat(reading.entries())
                .extractingByKey("T1")
                .isEqualTo(new CardEntry(Optional.empty(), Optional.of("#3c6e71"), false));
        assertThat(reading.entries())
                .extractingByKey("T2")
                .isEqualTo(new CardEntry(Optional.empty(), Optional.of("#aabbcc"), false));
    }

    @Test
    void takesBagsForBags_inWhicheverColumnTheyStand() {
        List<LegendLine> lines = text("symbol;code;quantity;supplied;bags\n"
                        + "A;T1;350;2 bags;\nB;T2;350;2 x 200;\nC;T3;2 bags;;\nD;T4;;;2 x 200\nE;T5;;2 bags;2\n")
                .lines();
        assertThat(lines).extracting(LegendLine::bags).containsOnly(Optional.of(2));
        assertThat(lines)
                .extracting(LegendLine::supplied)
                .containsExactly(
                        Amount.unknown(),
                        Amount.inBags(400, 2),
                        Amount.unknown(),
                        Amount.inBags(400, 2),
                        Amount.unknown());
        assertThat(lines)
                .extracting(LegendLine::needed)
                .containsExactly(
                        Optional.of(350L), Optional.of(350L), Optional.empty(), Optional.empty(), Optional.empty());
    }

    @Test
    void takesWhatABagHolds_fromTheHeading() {
        Reading reading = text("symbol;code;Bags of 250\nA;T1;3\n");
        assertThat(reading.columns()).containsEntry("Bags of 250", "bags");
        assertThat(reading.lines().get(0).bags()).contains(3);
        assertThat(reading.lines().get(0).supplied()).isEqualTo(Amount.inBags(750, 3));
    }

    @Test
    void keepsAsANote_whatAnAmountCantHold() {
        Reading reading = text("symbol;code;needed;In the kit\nA;T1;about 200;half a bag\nB;T2;350;5 g\n");
        assertThat(reading.badRows()).isEmpty();
        assertThat(reading.lines().get(0).needed()).contains(200L);
        assertThat(reading.lines())
                .extracting(LegendLine::supplied)
                .containsExactly(Amount.rough(100, 29), Amount.unknown());
        assertThat(reading.warnings())
                .containsExactly(
                        "Line 2: 'half a bag' was taken for about 100 (±29).",
                        "Line 3: '5 g' was taken for some, not counted yet.");
        assertThat(reading.lines().get(0).extras())
                .isEqualTo(Map.of("needed", "about 200", "In the kit", "half a bag"));
        assertThat(reading.lines().get(1).extras()).isEqualTo(Map.of("In the kit", "5 g"));
        assertThat(text("symbol;code;needed\nA;T1;some\n").badRows())
                .containsExactly(new BadRow(2, "needed: 'some' is not a whole number"));
    }

    @Test
    void takesPartsOfABag_byWhatABagHolds() {
        LegendReader reader = (LegendReader) new LegendReading().create(null);
        Reading reading = reader.readText(
                        "symbol;code;bags\nA;T1;half a bag\nB;T2;¼ bag\nC;T3;half a bag\n",
                        new Assumed("own", Optional.empty(), 1_000))
                .orThrow();
        assertThat(reading.lines())
                .extracting(LegendLine::supplied)
                .containsExactly(Amount.rough(500, 144), Amount.rough(250, 144), Amount.rough(500, 144));
        assertThat(reading.lines()).allSatisfy(line -> assertThat(line.bags()).isEmpty());
        assertThat(reading.warnings())
                .containsExactly(
                        "Line 2: 'half a bag' was taken for about 500 (±144), and so on one more line.",
                        "Line 3: '¼ bag' was taken for about 250 (±144).");
        assertThat(text("symbol;code;needed;supplied\nA;T1;half a bag;half a boat\n")
                        .badRows())
                .containsExactly(new BadRow(
                        2,
                        "needed: 'half a bag' is not a whole number; supplied: 'half a boat' is not a whole number"));
    }

    @Test
    void refusesARow_whoseColumnsContradictEachOther() {
        assertThat(text("symbol;code;shape;size;supplied;bags\nA;T1;round 2.8 mm;2.5;2 bags;3\n")
                        .badRows())
                .containsExactly(new BadRow(
                        2, "the shape says round 2.8 mm and the size 2.5; one column says 3 bags and another 2"));
    }

    @Test
    void readsASpecialShape_withItsOutline() {
        assertThat(text("symbol;code;shape\nA;T1;special (drop)\n")
                        .lines()
                        .get(0)
                        .drill())
                .isEqualTo(new Drill(Shape.SPECIAL, 250, Body.RESIN, Coating.NONE, Optional.of("drop"), "own", "T1"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"2.8|280", "2,8 mm|280", "Ø 2.8|280", "0.28 cm|280", "2.5 x 2.5 mm|250", "2.50|250", ".25cm|250"})
    void readsSizes_asPeopleWriteThem(String written, int hundredths) {
        LegendLine line =
                text("symbol;code;size\nA;T1;" + written + "\n").lines().get(0);
        assertThat(line.drill().sizeHundredths()).isEqualTo(hundredths);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0|#000000",
                "3366|#003366",
                "#3C6E71FF|#3c6e71",
                "&H3c6e71|#3c6e71",
                "60/110/113|#3c6e71",
                "R:60 G:110 B:113|#3c6e71",
                "rgb(100%, 0%, 50%)|#ff0080"
            })
    void readsColours_asPeopleWriteThem(String written, String hex) {
        assertThat(text("symbol;code;hex\nA;T1;" + written + "\n")
                        .entries()
                        .get("T1")
                        .hex())
                .contains(hex);
    }

    @Test
    void takesADash_forNothingSaid() {
        LegendLine line = text("symbol;code;name;hex;shape;size;body;coating\n-;-;Tar;-;n/a;–;?;—\n")
                .lines()
                .get(0);
        assertThat(line.symbol()).isEqualTo("-");
        assertThat(line.drill()).isEqualTo(Drill.of(Shape.SQUARE, 250, "own", "Tar"));
    }

    @Test
    void takesOffWhatASpreadsheetNeeds_toKeepTheZerosOfACode() {
        assertThat(text("symbol,code\nA,=\"0123\"\n").lines().get(0).drill().code())
                .isEqualTo("0123");
    }
}
