package org.glintery.stash.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Source;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.storage.KeepingPlaces;
import org.glintery.api.verb.VerbResult;
import org.glintery.stash.WorkshopInFolder;
import org.glintery.testkit.FakeCall;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitAddVerbTest {

    private static final Drill T1 = Drill.of(Shape.ROUND, 280, "own", "T1");

    private WorkshopInFolder shop;
    private Path folder;

    @BeforeEach
    void open(@TempDir Path given) {
        folder = given;
        shop = WorkshopInFolder.at(given);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private String legend(String text) throws IOException {
        return Files.writeString(folder.resolve("rope-walk_two.csv"), text).toString();
    }

    private FakeCall call() {
        return new FakeCall(shop.workshop());
    }

    private VerbResult add(FakeCall call) {
        return new KitAddVerb().run(call);
    }

    private Piece only() {
        assertThat(shop.view().all(Piece.TYPE)).hasSize(1);
        return shop.view().all(Piece.TYPE).get(0).value();
    }

    @Test
    void shelvesALegendWithNoOtherOption_namedAfterTheFile() throws IOException {
        add(call().with("legend", legend("Symbol;Code;Shape;Needed;Supplied\nA;T1;round;1 240;1 400\n")));

        assertThat(only().title()).isEqualTo("Rope-walk two");
        assertThat(only().standing()).isEqualTo(Standing.SHELVED);
        assertThat(shop.count(shop.bagNamed("Rope-walk two"), T1)).isEqualTo(1400);
    }

    @Test
    void makesThePlaceWhereItIsKept_once() {
        add(call().with("title", "Rope-walk").with("kept-at", "Tall shelf"));
        add(call().with("title", "Net loft").with("kept-at", "tall shelf "));

        assertThat(shop.view().all(KeepingPlace.TYPE)).hasSize(1);
        assertThat(shop.view().all(Piece.TYPE))
                .allSatisfy(piece -> assertThat(
                                KeepingPlaces.name(shop.view(), piece.value().keptAt()))
                        .isEqualTo("Tall shelf"));
        VerbResult shown = new PieceShowVerb().run(call().with("piece", "Net loft"));
        assertThat(((VerbResult.Said) shown).text()).contains("Kept at Tall shelf");
    }

    @Test
    void importsNothing_whenItOnlyPreviews() throws IOException {
        VerbResult result = add(
                call().with("legend", legend("Symbol;Code;Needed\nA;T1;10\n")).flagged("preview"));

        assertThat(((VerbResult.Said) result).text()).contains("Would shelve").contains("Code is code");
        assertThat(((KitAdded) ((VerbResult.Said) result).answer()).outcome())
                .isEqualTo(KitAdded.Outcome.WOULD_BE_SHELVED);
        assertThat(shop.view().all(Kit.TYPE)).isEmpty();
    }

    @Test
    void saysInThePreview_thatNothingWouldBeShelved_whileARowIsBad() throws IOException {
        VerbResult result = add(call().with("legend", legend("Symbol;Code;Needed\nA;T1;10\nB;T2;lots\n"))
                .flagged("preview"));

        assertThat(((VerbResult.Said) result).text())
                .contains("Nothing would be shelved")
                .contains("Line 3:")
                .doesNotContain("Would shelve");
        assertThat(((KitAdded) ((VerbResult.Said) result).answer()).outcome())
                .isEqualTo(KitAdded.Outcome.WOULD_BE_REFUSED);
    }

    @Test
    void importsNothing_whenARowIsBad_andNamesTheRow() throws IOException {
        VerbResult result = add(call().with("legend", legend("Symbol;Code;Needed\nA;T1;10\nB;T2;lots\n")));

        assertThat(((VerbResult.Refused) result).refusal().code()).isEqualTo("bad-rows");
        assertThat(((VerbResult.Refused) result).refusal().text()).contains("line 3:");
        assertThat(shop.view().all(Kit.TYPE)).isEmpty();
    }

    @Test
    void tellsLinesAndDrillsAsPeopleSayThem() throws IOException {
        VerbResult one = add(call().with("legend", legend("Symbol;Code;Needed\nA;T1;1\n")));
        VerbResult many = add(call().with("legend", legend("Symbol;Code;Needed\nA;T1;1240\nB;T2;10\n"))
                .with("title", "Crane"));
        VerbResult unknown = add(call().with("legend", legend("Symbol;Code;Needed\nA;T1;\n"))
                .with("title", "Ferry")
                .flagged("preview"));
        VerbResult none = add(call().with("title", "Net loft"));

        assertThat(((VerbResult.Said) one).text()).startsWith("Shelved Rope-walk two: 1 line, 1 drill (");
        assertThat(((VerbResult.Said) many).text()).startsWith("Shelved Crane: 2 lines, 1\u2009250 drills (");
        assertThat(((VerbResult.Said) unknown).text())
                .startsWith("Would shelve Ferry: 1 line, drills not known (")
                .contains("Read as UTF-8, separated by semicolons.");
        assertThat(((VerbResult.Said) none).text()).startsWith("Shelved Net loft: no legend yet (");
    }

    @Test
    void refusesALegendWithoutALine() throws IOException {
        for (FakeCall call : new FakeCall[] {call(), call().flagged("preview")}) {
            VerbResult result = add(call.with("legend", legend("Symbol;Code;Needed\n")));
            assertThat(((VerbResult.Refused) result).refusal().text())
                    .startsWith("rope-walk_two.csv is a legend without a line. Nothing was imported");
        }
        assertThat(shop.view().all(Kit.TYPE)).isEmpty();
    }

    @Test
    void previewTellsShapeAndCoating() throws IOException {
        VerbResult result = add(call().with("legend", legend("Symbol;Code;Shape;Coating\nA;T1;square;metallic\n"))
                .flagged("preview"));

        assertThat(((VerbResult.Said) result).text()).contains("own T1, square 2.5 mm, metallic");
    }

    @Test
    void namesBadRows_theFirstOfMany() throws IOException {
        String bad = "B;T2;lots\n";
        VerbResult one = add(call().with("legend", legend("Symbol;Code;Needed\n" + bad)));
        VerbResult many = add(call().with("legend", legend("Symbol;Code;Needed\n" + bad.repeat(23))));

        assertThat(((VerbResult.Refused) one).refusal().text())
                .startsWith("Nothing was imported, because of 1 row: line 2: ")
                .endsWith(".");
        assertThat(((VerbResult.Refused) many).refusal().text())
                .startsWith("Nothing was imported, because of 23 rows: line 2: ")
                .endsWith("; and 3 more.");
    }

    @Test
    void saysARepeatedSymbolOnce_andKeepsBothLines() throws IOException {
        FakeCall call = call().with("legend", legend("Symbol;Code;Needed\nA;T1;10\nA;T2;20\n"));
        add(call);

        assertThat(call.said).hasSize(1);
        assertThat(Legend.of(shop.view(), shop.view().all(Piece.TYPE).get(0).id())
                        .lines())
                .hasSize(2);
    }

    @Test
    void keepsTheBagSizeWithItsSource() throws IOException {
        String legend = legend("Symbol;Code;Shape;Bags\nA;T1;round;2\n");
        add(call().with("legend", legend).with("source", "Quay shop").with("bag-size", "500"));

        assertThat(shop.count(shop.bagNamed("Rope-walk two"), T1)).isEqualTo(1000);
        assertThat(Source.drillsPerBag(shop.view(), Optional.of("quay shop"))).isEqualTo(500);
    }

    @Test
    void takesWhatTheOptionsSay() {
        add(call().with("title", "Crane")
                .with("standing", "ordered")
                .with("price", "24,90")
                .with("columns", "140")
                .with("rows", "180")
                .with("pitch", "2.5"));

        assertThat(only().standing()).isEqualTo(Standing.ORDERED);
        assertThat(only().canvas().columns()).contains(140);
        assertThat(only().canvas().pitchMm()).contains(2.5);
        assertThat(shop.view()
                        .all(Kit.TYPE)
                        .get(0)
                        .value()
                        .price()
                        .orElseThrow()
                        .amount())
                .isEqualByComparingTo("24.90");
    }

    @Test
    void isWrongUsage_whenANumberCanBeReadInTwoWays() {
        for (String[] option : new String[][] {
            {"price", "1,234", "1.234", "1234"},
            {"postage", "1.234", "1.234", "1234"},
            {"width", "1,200", "1.200", "1200"}
        }) {
            assertThat(add(call().with("title", "Crane").with(option[0], option[1])))
                    .isEqualTo(VerbResult.wrongUsage("--%s '%s' can be read as %s or as %s. Write %s0 or %s."
                            .formatted(option[0], option[1], option[2], option[3], option[2], option[3])));
        }
        assertThat(shop.view().all(Kit.TYPE)).isEmpty();
        assertThat(add(call().with("title", "Crane").with("price", "1234,50"))).isInstanceOf(VerbResult.Said.class);
    }

    @Test
    void isWrongUsage_whenAnOptionCanNotBeUnderstood_orNothingIsSaid() {
        assertThat(add(call())).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(add(call().with("title", "Crane").with("standing", "lost")))
                .isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(add(call().with("title", "Crane").with("rows", "-1"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(add(call().with("legend", "a.csv").with("json-file", "a.json")))
                .isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(shop.view().all(Kit.TYPE)).isEmpty();
    }

    @Test
    void refusesACoverThatIsNoPicture() throws IOException {
        String cover =
                Files.writeString(folder.resolve("cover.png"), "no picture").toString();

        Path huge = Files.write(folder.resolve("huge.png"), TestPictures.claiming(60_000, 60_000));

        assertThat(add(call().with("title", "Crane").with("cover", cover))).isInstanceOf(VerbResult.Refused.class);
        VerbResult refused = add(call().with("title", "Crane").with("cover", huge.toString()));
        assertThat(((VerbResult.Refused) refused).refusal().code()).isEqualTo("picture-too-large");
        assertThat(shop.view().all(Kit.TYPE)).isEmpty();
    }

    @Test
    void keepsACoverInWebP_andRefusesOneThatBreaksOff() throws IOException {
        Path cover = Files.write(folder.resolve("cover.webp"), TestPictures.webp());
        Path cut = Files.write(folder.resolve("cut.jpg"), TestPictures.jpegThatBreaksOff());

        VerbResult refused = add(call().with("title", "Crane").with("cover", cut.toString()));
        assertThat(((VerbResult.Refused) refused).refusal().text()).startsWith("cut.jpg: This is not a picture");
        assertThat(shop.view().all(Kit.TYPE)).isEmpty();

        assertThat(add(call().with("title", "Crane").with("cover", cover.toString())))
                .isInstanceOf(VerbResult.Said.class);
        assertThat(shop.view().blobs().values()).containsExactly("image/webp");
    }

    @Test
    void refusesAFileThatIsNotThere() {
        assertThat(add(call().with("legend", folder.resolve("none.csv").toString())))
                .isInstanceOf(VerbResult.Refused.class);
    }

    @Test
    void refusesABagSizeThatIsNone_onEveryPath() throws IOException {
        String kit = Files.writeString(folder.resolve("crane.json"), "{}").toString();
        VerbResult asKit =
                add(call().with("json-file", kit).with("source", "Quay shop").with("bag-size", "many"));
        assertThat(((VerbResult.WrongUsage) asKit).text()).contains("--bag-size");

        String bags = legend("Symbol;Code;Bags\nA;T1;9000\n");
        VerbResult tooMany = add(call().with("legend", bags).with("bag-size", "1000000"));
        assertThat(((VerbResult.Refused) tooMany).refusal().code()).isEqualTo("out-of-range");
    }
}
