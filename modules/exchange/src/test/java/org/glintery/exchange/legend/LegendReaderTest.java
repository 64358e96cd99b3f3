package org.glintery.exchange.legend;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
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

class LegendReaderTest {
    private static final Assumed ASSUMED = new Assumed("own", Optional.empty());

    private final LegendReader reader = (LegendReader) new LegendReading().create(null);

    private static Path fixture(String name) {
        try {
            return Path.of(Objects.requireNonNull(LegendReaderTest.class.getResource(name), name)
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private Reading read(String name) {
        return reader.read(fixture(name), ASSUMED).orThrow();
    }

    private Reading text(String text) {
        return reader.readText(text, ASSUMED).orThrow();
    }

    private static Refusal refusal(Result<?> result) {
        assertThat(result).isInstanceOf(Result.Refused.class);
        return ((Result.Refused<?>) result).refusal();
    }

    @ParameterizedTest
    @CsvSource({
        "utf8.csv, UTF-8, commas",
        "utf8-mark-semicolons.csv, UTF-8 with a mark, semicolons",
        "utf16-little-mark-tabs.csv, UTF-16, tabs",
        "utf16-big-mark.csv, UTF-16, commas",
        "utf16-little.csv, UTF-16, semicolons",
        "utf16-big.csv, UTF-16, tabs",
        "latin1-bars.csv, Western (Windows-1252), bars"
    })
    void readsTheSameLegend_whateverTheEncodingAndSeparator(String file, String encoding, String separator) {
        Reading reading = read(file);
        assertThat(reading.encoding()).isEqualTo(encoding);
        assertThat(reading.separator()).isEqualTo(separator);
        assertThat(reading.badRows()).isEmpty();
        assertThat(reading.lines())
                .containsExactly(
                        new LegendLine(
                                "A",
                                Drill.of(Shape.ROUND, 280, "own", "T1"),
                                Optional.of(1234L),
                                Amount.counted(1400),
                                Optional.empty(),
                                Map.of("Shelf", "top")),
                        new LegendLine(
                                "B",
                                new Drill(Shape.ROUND, 280, Body.RESIN, Coating.AB, Optional.empty(), "own", "T2"),
                                Optional.of(560L),
                                Amount.unknown(),
                                Optional.empty(),
                                Map.of()),
                        new LegendLine(
                                "ß",
                                new Drill(Shape.SQUARE, 250, Body.RESIN, Coating.PEARL, Optional.empty(), "own", "T3"),
                                Optional.empty(),
                                Amount.counted(200),
                                Optional.empty(),
                                Map.of("Shelf", "bottom")));
        assertThat(reading.entries())
                .containsEntry("T1", new CardEntry(Optional.of("Café crème"), Optional.of("#f4e6d0"), false))
                .containsEntry("T2", new CardEntry(Optional.of("Bleu foncé"), Optional.of("#1b2a49"), false))
                .containsEntry("T3", new CardEntry(Optional.of("Größe 3"), Optional.of("#ffffff"), false));
        assertThat(reading.columns())
                .containsEntry("Colour code", "code")
                .containsEntry("RGB", "colour value")
                .containsEntry("Shelf", "a note");
    }

    @Test
    void readsSignsOfTheWesternEncoding_thatLatin1DoesNotHave() {
        Reading reading = read("windows1252-semicolons.csv");
        assertThat(reading.lines().get(1).symbol()).isEqualTo("€");
        assertThat(reading.entries().get("T2").name()).contains("“Ink”");
    }

    @Test
    void keepsQuotesAndLineEndsOfACell_andSkipsBlankRows() {
        Reading reading = read("quotes.csv");
        assertThat(reading.badRows()).isEmpty();
        assertThat(reading.lines()).extracting(LegendLine::symbol).containsExactly("A", "B", "C");
        assertThat(reading.entries().get("T1").name()).contains("Rope \"old\" brown");
        assertThat(reading.lines().get(0).needed()).contains(1234L);
        assertThat(reading.lines().get(0).extras()).containsEntry("remark", "said \"two bags\",\nthen one");
        assertThat(reading.lines().get(1).extras()).containsEntry("remark", "6\" tray");
        assertThat(reading.entries().get("T3").name()).contains("a,b");
    }

    @Test
    void namesEachBadRowByItsLineInTheFile_andTellsEveryReason() {
        Reading reading = read("bad-rows.csv");
        assertThat(reading.badRows())
                .containsExactly(
                        new BadRow(3, "'#12345g' is not a colour such as #3c6e71"),
                        new BadRow(4, "'hexagonal' is not a shape we know; needed: '-10' is below zero"),
                        new BadRow(
                                5,
                                "'wood' is not a body we know; 'sparkly' is not a coating we know; "
                                        + "needed: '99999999999999999999' is more than 1\u2009000\u2009000\u2009000"),
                        new BadRow(7, "needed: 'many' is not a whole number; bags: '-2' is below zero"),
                        new BadRow(8, "there is neither a symbol nor a code"),
                        new BadRow(9, "needed: '1.5' is not a whole number"),
                        new BadRow(11, "bags: '99999' is more than 10\u2009000"));
        assertThat(reading.lines()).extracting(LegendLine::symbol).containsExactly("G");
        assertThat(reading.lines().get(0).bags()).contains(1);
    }

    @Test
    void tellsWhichHeadingsWereTakenForNotes_whenCodesOrAmountsAreNotAmongTheOthers() {
        Reading reading = text("Symbol;Shade;Heap\nA;T1;120\n");
        assertThat(reading.warnings())
                .containsExactly(
                        "No heading was understood as the code of the drills, so their names or symbols stand for it. "
                                + "Taken as notes: Shade, Heap. Name the column in the file if it is among them.",
                        "No heading was understood as how many drills are needed or supplied, so that stays unknown. "
                                + "Taken as notes: Shade, Heap. Name the column in the file if it is among them.");
        assertThat(text("Symbol;Name\nA;Red\n").warnings()).isEmpty();
        assertThat(text("Symbol;Code;Needed;Shelf\nA;T1;120;3\n").warnings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Symbol;Farbnummer;Bezeichnung;Anzahl",
                "Symbole;Code couleur;Nom;Quantité",
                "Symbool;Kleurnummer;Naam;Aantal",
                "Símbolo;Código;Color;Cantidad"
            })
    void understandsHeadings_inTheLanguagesOfNeighbours(String headings) {
        Reading reading = text(headings + "\nA;T1;Red;120\n");
        assertThat(reading.columns().values()).containsExactly("symbol", "code", "name", "needed");
    }

    @Test
    void makesOutTheColumns_whenThereIsNoHeader() {
        Reading reading = read("no-header.csv");
        assertThat(reading.badRows()).isEmpty();
        assertThat(reading.columns().values())
                .containsExactly("symbol", "code", "name", "colour value", "shape", "needed");
        assertThat(reading.lines())
                .extracting(LegendLine::needed)
                .containsExactly(Optional.of(1200L), Optional.of(340L), Optional.empty());
        assertThat(reading.lines().get(2).drill()).isEqualTo(Drill.of(Shape.SQUARE, 250, "own", "T3"));
    }

    @Test
    void keepsBothLines_whenASymbolIsRepeated() {
        Reading reading = read("repeated-symbol.csv");
        assertThat(reading.lines()).hasSize(3);
        assertThat(reading.warnings()).containsExactly("The symbol A stands on lines 1 and 3. All were kept.");
    }

    @Test
    void takesTheSeparator_thatTheFirstLineSays() {
        Reading reading = read("sep-line.csv");
        assertThat(reading.separator()).isEqualTo("semicolons");
        assertThat(reading.lines()).hasSize(1);
        assertThat(reader.readText("sep=;\nsymbol;code;needed\nA;T1;x\n", ASSUMED)
                        .orThrow()
                        .badRows())
                .extracting(BadRow::line)
                .containsExactly(3);
    }

    @Test
    void namesTheLine_whereAQuotationMarkIsMissing() {
        Reading reading = read("unclosed.csv");
        assertThat(reading.badRows()).extracting(BadRow::line).containsExactly(3);
        assertThat(reading.badRows().get(0).reason()).contains("quotation mark");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Colour code|code",
                "COLOR-CODE|code",
                "Code no.|code",
                "Drills needed|needed",
                "qty|needed",
                "Count|needed",
                "Diamonds|needed",
                "Number of drills|needed",
                "Bag(s)|bags",
                "No. of bags|bags",
                "Colour name|name",
                "Hex code|colour value",
                "RGB|colour value",
                "Drill size (mm)|size in mm",
                "Finish|coating",
                "In the kit|supplied",
                "Bag number|a note",
                "Price|a note",
                "Needed (approx.)|needed",
                "# of drills|needed",
                "Drill #|code",
                "Colour №|code",
                "Drills in kit|supplied",
                "Bags (200)|bags",
                "No. of bags of 500|bags",
                "Drills per bag|a note"
            })
    void understandsAHeader_inPlainEnglish(String header, String meaning) {
        assertThat(text("symbol;" + header + "\nA;\n").columns()).containsEntry(header, meaning);
    }

    @Test
    void prefersWhatIsSurelyMeant_toWhatIsPerhapsMeant() {
        Map<String, String> columns =
                text("No;Symbol;Colour;Code;Count;Needed\n1;A;Tar;T1;2;30\n").columns();
        assertThat(columns)
                .containsEntry("No", "a note")
                .containsEntry("Colour", "name")
                .containsEntry("Code", "code")
                .containsEntry("Count", "a note")
                .containsEntry("Needed", "needed");
    }

    @Test
    void assumesCardAndShape_whereTheFileIsSilent() {
        Reading reading = reader.readText("symbol\tcode\nA\tT1\n", new Assumed("harbour", Optional.of(Shape.ROUND)))
                .orThrow();
        assertThat(reading.lines().get(0).drill()).isEqualTo(Drill.of(Shape.ROUND, 280, "harbour", "T1"));
    }

    @Test
    void keepsCellsBeyondTheHeader_andColumnsOfTheSameTitle() {
        LegendLine line =
                text("symbol,code,note,note\nA,T1,one,two,three\n").lines().get(0);
        assertThat(line.extras()).isEqualTo(Map.of("note", "one", "note 2", "two", "column 5", "three"));
    }

    @Test
    void refuses_whatIsNoLegend() {
        assertThat(refusal(reader.read(fixture("letter.csv"), ASSUMED)).code()).isEqualTo("not-a-legend");
        assertThat(refusal(reader.readText("", ASSUMED)).code()).isEqualTo("not-a-legend");
        assertThat(refusal(reader.readText("price,shop\n5,here\n", ASSUMED)).code())
                .isEqualTo("not-a-legend");
        assertThat(refusal(reader.read(fixture("utf8.csv").resolveSibling("gone.csv"), ASSUMED))
                        .code())
                .isEqualTo("unreadable");
    }

    @Test
    void keepsTheOrderOfRows() {
        List<String> symbols = text("symbol,code\nz,T1\na,T2\nm,T3\n").lines().stream()
                .map(LegendLine::symbol)
                .toList();
        assertThat(symbols).containsExactly("z", "a", "m");
    }
}
