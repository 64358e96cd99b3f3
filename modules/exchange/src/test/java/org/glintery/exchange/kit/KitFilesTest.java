package org.glintery.exchange.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.exchange.TestWorkshops.refusal;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.glintery.api.Result;
import org.glintery.api.exchange.KitFiles;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Money;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Workshop;
import org.glintery.exchange.TestWorkshops;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitFilesTest {
    private static final UUID KIT = new UUID(1, 1);

    @TempDir
    Path temp;

    private Workshop workshop;
    private KitFiles files;

    @BeforeEach
    void open() {
        workshop = TestWorkshops.create(temp.resolve("workshop"));
        files = workshop.find(KitFiles.class).orElseThrow();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private static byte[] picture(String format) throws IOException {
        var out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    private static Picture named(Blob blob, String caption) {
        return new Picture(blob.hash(), blob.mediaType(), caption);
    }

    private NewKit everything() throws IOException {
        Blob cover = Blob.of("image/png", picture("png"));
        Blob back = Blob.of("image/jpeg", picture("jpeg"));
        Drill gleam = new Drill(
                Shape.SPECIAL, 315, Body.CRYSTAL, Coating.METALLIC, Optional.of("a drop"), "harbour", "4R2-K");
        Drill tar = Drill.of(Shape.ROUND, 280, ColourCard.OWN, "T1");
        var kit = new Kit(
                "Ferry Slip",
                Optional.of("Quay shop"),
                About.edtf("2024-05~"),
                About.edtf("2024-06-02"),
                Optional.of(new Money(new BigDecimal("24.90"))),
                Optional.of(new Money(new BigDecimal("3.50"))),
                Optional.empty(),
                List.of(named(cover, "The box")),
                "Two canvases\nin one roll");
        var canvas = new Canvas(
                Optional.of(350.0),
                Optional.of(450.5),
                Optional.of(400.0),
                Optional.of(500.0),
                Optional.of(2.53),
                Optional.of(138),
                Optional.of(178));
        var first = new Piece(
                "Rope-walk",
                Optional.of(KIT),
                Optional.empty(),
                Standing.RESTING,
                About.edtf("2024-07"),
                Coverage.PARTIAL,
                Optional.of(Shape.ROUND),
                canvas,
                Optional.of(9),
                List.of(named(back, ""), named(cover, "again")),
                Optional.empty(),
                "Bought on the pier");
        List<LegendLine> legend = List.of(
                new LegendLine("A", tar, Optional.of(1200L), Amount.counted(1300), Optional.of(7), Map.of("Bag", "12")),
                new LegendLine(
                        "=B",
                        gleam,
                        Optional.empty(),
                        new Amount(Amount.Basis.BY_BAG, Optional.of(400L), 40),
                        Optional.empty(),
                        Map.of()),
                new LegendLine("A", tar, Optional.of(0L), Amount.unknown(), Optional.empty(), Map.of()),
                new LegendLine("C", gleam, Optional.of(5L), Amount.rough(0, 12), Optional.of(0), Map.of()));
        var second = Piece.titled("Net loft", Standing.SHELVED);
        var ofKit = new Piece(
                second.title(),
                Optional.of(KIT),
                second.madeAgainFrom(),
                second.standing(),
                second.standingSince(),
                second.coverage(),
                second.drillShape(),
                second.canvas(),
                second.sections(),
                second.pictures(),
                second.keptAt(),
                second.story());
        Map<String, Map<String, CardEntry>> cards = Map.of(
                "harbour",
                Map.of("4R2-K", new CardEntry(Optional.of("Gleam"), Optional.of("#aab0b5"), true)),
                ColourCard.OWN,
                Map.of("T1", new CardEntry(Optional.empty(), Optional.of("#101010"), false)));
        return new NewKit(
                KIT,
                kit,
                List.of(
                        new NewKit.NewPiece(
                                new UUID(2, 1), first, new Legend(legend, Optional.of(named(back, "The legend")))),
                        new NewKit.NewPiece(new UUID(2, 2), ofKit, Legend.of(List.of()))),
                cards,
                List.of(cover, back));
    }

    private void keep(NewKit kit) {
        ChangeSet.Builder change = ChangeSet.named("Shelve").create(Kit.TYPE, kit.id(), kit.kit());
        for (NewKit.NewPiece piece : kit.pieces()) {
            change.create(Piece.TYPE, piece.id(), piece.piece());
            change.create(Legend.TYPE, piece.id(), piece.legend());
        }
        kit.cards()
                .forEach((name, entries) -> change.create(
                        ColourCard.TYPE, ColourCard.idOf(name), new ColourCard(name, name, entries, List.of())));
        kit.blobs().forEach(change::blob);
        workshop.apply(change.build()).orThrow();
    }

    /** What a kit holds, whatever its ids are. */
    private static List<Object> content(NewKit kit) {
        List<Object> content = new ArrayList<>(List.of(kit.kit(), kit.cards()));
        kit.blobs().forEach(blob -> content.add(List.of(blob.hash(), blob.mediaType())));
        for (NewKit.NewPiece piece : kit.pieces()) {
            assertThat(piece.piece().kit()).contains(kit.id());
            content.add(piece.legend());
            String mapped = piece.piece().toString().replace(kit.id().toString(), "");
            content.add(mapped);
        }
        return content;
    }

    private Path file(String json) throws IOException {
        return Files.writeString(temp.resolve("kit.json"), json);
    }

    @Test
    void readsBackWhatItWrote() throws IOException {
        NewKit kit = everything();
        keep(kit);
        Path file = temp.resolve("kit.json");
        Result<Path> written = files.write(workshop.view(), KIT, file);
        assertThat(written).isEqualTo(Result.ok(file));
        NewKit read = files.read(file).orThrow();
        assertThat(read.id()).isNotEqualTo(KIT);
        assertThat(content(read)).isEqualTo(content(kit));
        assertThat(Files.readString(file)).doesNotContain(KIT.toString());
    }

    @Test
    void readsTheLeastKit_andLeavesUnknownWhatItDoesNotSay() throws IOException {
        NewKit kit = files.read(file(
                        "\uFEFF{\"format\":\"glintery-kit\",\"version\":1,\"title\":\"Crane\",\"pieces\":[{\"title\":\"Crane\","
                                + "\"shape\":\"round\",\"legend\":[{\"symbol\":\"A\",\"code\":\"T1\"}]}]}"))
                .orThrow();
        assertThat(kit.kit()).isEqualTo(Kit.titled("Crane"));
        assertThat(kit.pieces().get(0).piece().standing()).isEqualTo(Standing.SHELVED);
        assertThat(kit.pieces().get(0).legend().lines())
                .containsExactly(new LegendLine(
                        "A",
                        Drill.of(Shape.ROUND, 280, "own", "T1"),
                        Optional.empty(),
                        Amount.unknown(),
                        Optional.empty(),
                        Map.of()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"title\":\"A\",\"pieces\":[{}]}|pieces[0]: title is missing",
                "{\"title\":\"A\",\"pieces\":[{\"title\":\"P\",\"legend\":[{\"symbol\":\"A\",\"code\":\"T\"},{\"symbol\":\"A\",\"code\":\"T\",\"needed\":-1}]}]}|pieces[0].legend[1].needed"
                        + " should be at least 0",
                "{\"title\":\"A\",\"pieces\":[{\"title\":\"P\",\"legend\":[{\"symbol\":\"A\",\"code\":\"T\",\"neded\":1}]}]}|pieces[0].legend[0]:"
                        + " neded is not a word we know here",
                "{\"title\":\"A\",\"pieces\":[{\"title\":\"P\",\"coverage\":\"half\"}]}|pieces[0].coverage should be"
                        + " one of full, partial, not-said",
                "{\"title\":7,\"pieces\":[]}|title should be text",
                "{\"title\":\"  \",\"pieces\":[]}|title is blank",
                "{\"title\":\"A\",\"orderedOn\":\"soonish\",\"pieces\":[]}|orderedOn",
                "{\"title\":\"A\",\"pictures\":[{\"caption\":\"x\"}],\"pieces\":[]}|pictures[0] should have either"
                        + " bytes or a file",
                "{\"title\":\"A\",\"pieces\":[{\"title\":\"P\",\"legend\":[{\"symbol\":\"A\",\"code\":\"T\",\"needed\":1e30}]}]}|pieces[0].legend[0].needed"
                        + " should be at most 1\u2009000\u2009000\u2009000",
                "{\"title\":\"A\",\"pieces\":[{\"title\":\"P\",\"legend\":[{\"symbol\":\"A\",\"code\":\"T\",\"sizeMm\":2.855}]}]}|pieces[0].legend[0].sizeMm"
                        + " should be a multiple of 0.01",
                "{\"title\":\"A\",\"pieces\":[{\"title\":\"P\",\"legend\":[{\"symbol\":\"A\",\"code\":\"T\",\"suppliedBasis\":\"weighed\"}]}]}|pieces[0].legend[0]:"
                        + " supplied is missing, though suppliedBasis",
                "{\"title\":\"\",\"pieces\":[]}|title is blank"
            })
    void saysWhatIsWrongAndWhere(String json, String words) throws IOException {
        Path file = file("{\"format\":\"glintery-kit\",\"version\":1," + json.substring(1));
        assertThat(refusal(files.read(file)).code()).isEqualTo("not-a-kit");
        assertThat(refusal(files.read(file)).text()).contains(words).contains("Nothing was imported");
    }

    @Test
    void saysWhatIsMissing_whenAFileDoesNotSayThatItIsAKit() throws IOException {
        for (String unnamed : List.of("{\"title\":\"Net loft\",\"pieces\":[]}", "[]", "7")) {
            assertThat(refusal(files.read(file(unnamed))).text())
                    .isEqualTo("This file doesn't say that it is a kit: \"format\": \"glintery-kit\" is missing at its "
                            + "beginning. Nothing was imported; 'glintery-do kit schema' prints the form of a kit.");
        }
        assertThat(refusal(files.read(file("{\"format\":\"drawing\"}"))).text())
                .isEqualTo("This file is not a kit: its \"format\" should be \"glintery-kit\". Nothing was imported; "
                        + "'glintery-do kit schema' prints the form of a kit.");
        Path bytes = temp.resolve("bytes.json");
        Files.write(bytes, new byte[] {(byte) 0xC3, 0x28});
        assertThat(refusal(files.read(bytes)).text())
                .contains("it is no text in UTF-8")
                .contains("'glintery-do kit schema'");
    }

    @Test
    void refuses_whatIsNoKitOrANewerOne() throws IOException {
        assertThat(refusal(files.read(file("[]"))).code()).isEqualTo("not-a-kit");
        assertThat(refusal(files.read(file("{"))).code()).isEqualTo("not-a-kit");
        assertThat(refusal(files.read(file("[".repeat(100_000)))).code()).isEqualTo("not-a-kit");
        assertThat(refusal(files.read(file("{\"format\":\"glintery-kit\",\"version\":2}")))
                        .code())
                .isEqualTo("newer");
        assertThat(refusal(files.read(temp.resolve("gone.json"))).code()).isEqualTo("unreadable");
        Path bytes = Files.write(temp.resolve("a.json"), new byte[] {(byte) 0xFF, (byte) 0xC0, 7});
        assertThat(refusal(files.read(bytes)).code()).isEqualTo("not-a-kit");
    }

    @Test
    void takesPicturesFromBesideTheKit() throws IOException {
        Files.createDirectory(temp.resolve("shots"));
        Files.write(temp.resolve("shots/box.jpg"), picture("jpeg"));
        NewKit kit = files.read(file(withPicture("shots/box.jpg"))).orThrow();
        assertThat(kit.blobs()).extracting(Blob::mediaType).containsExactly("image/jpeg");
        assertThat(kit.kit().pictures()).containsExactly(named(kit.blobs().get(0), ""));
    }

    @Test
    void takesAPictureOnce_thatIsToldByItsBytesAndByItsName() throws IOException {
        byte[] bytes = picture("png");
        Files.write(temp.resolve("box.png"), bytes);
        String inside = "{\"bytes\":\"" + Base64.getEncoder().encodeToString(bytes) + "\"}";
        String beside = "{\"file\":\"box.png\",\"caption\":\"the box\"}";
        String again = "{\"file\":\"./box.png\",\"caption\":\"again\"}";
        NewKit kit = files.read(file("{\"format\":\"glintery-kit\",\"version\":1,\"title\":\"A\",\"pictures\":["
                        + String.join(",", inside, beside, again) + "],\"pieces\":[{\"title\":\"A\",\"pictures\":["
                        + String.join(",", beside, inside) + "]}]}"))
                .orThrow();
        assertThat(kit.blobs()).hasSize(1);
        Picture once = named(kit.blobs().get(0), "the box");
        assertThat(kit.kit().pictures()).containsExactly(once);
        assertThat(kit.pieces().get(0).piece().pictures()).containsExactly(once);
    }

    private static String withPicture(String name) {
        return "{\"format\":\"glintery-kit\",\"version\":1,\"title\":\"A\",\"pictures\":[{\"file\":\"" + name
                + "\"}],\"pieces\":[]}";
    }

    @ParameterizedTest
    @CsvSource({"../box.png", "shots/../../box.png", "/etc/hostname", "C:/box.png", "shots\\\\box.png", "link.png"})
    void leavesPicturesAlone_thatDoNotLieBesideTheKit(String name) throws IOException {
        Path home = Files.createDirectory(temp.resolve("home"));
        Files.write(temp.resolve("box.png"), picture("png"));
        Files.createSymbolicLink(home.resolve("link.png"), temp.resolve("box.png"));
        Path file = Files.writeString(home.resolve("kit.json"), withPicture(name));
        assertThat(refusal(files.read(file)).code()).isEqualTo("picture-outside");
    }

    @Test
    void refusesPictures_thatAreNoneOrMissing() throws IOException {
        Files.writeString(temp.resolve("words.png"), "these are words");
        assertThat(refusal(files.read(file(withPicture("words.png")))).code()).isEqualTo("not-a-picture");
        assertThat(refusal(files.read(file(withPicture("gone.png")))).code()).isEqualTo("picture-missing");
        assertThat(refusal(files.read(
                                file(withPicture("gone.png").replace("\"file\":\"gone.png\"", "\"bytes\":\"AAAA\""))))
                        .code())
                .isEqualTo("not-a-picture");
    }

    @Test
    void takesWebP_andRefusesAPictureThatBreaksOff_besideTheKitAndInIt() throws IOException {
        Files.write(temp.resolve("cover.webp"), TestPictures.webp());
        assertThat(files.read(file(withPicture("cover.webp"))).orThrow().blobs())
                .singleElement()
                .satisfies(blob -> assertThat(blob.mediaType()).isEqualTo("image/webp"));

        byte[] cut = TestPictures.jpegThatBreaksOff();
        Files.write(temp.resolve("cut.jpg"), cut);
        assertThat(refusal(files.read(file(withPicture("cut.jpg")))).text())
                .isEqualTo(
                        "cut.jpg is not a picture that can be shown here. Nothing was imported; take it out of the kit.");
        String inIt =
                "{\"format\":\"glintery-kit\",\"version\":1,\"title\":\"Ferry\",\"pieces\":[],\"pictures\":[{\"bytes\":\""
                        + Base64.getEncoder().encodeToString(cut) + "\"}]}";
        assertThat(refusal(files.read(file(inIt))).code()).isEqualTo("not-a-picture");
    }

    @Test
    void refusesPictures_thatClaimToBeHuge_besideTheKitAndInIt() throws IOException {
        byte[] huge = TestPictures.claiming(60_000, 60_000);
        Files.write(temp.resolve("huge.png"), huge);
        String inside = "\"bytes\":\"" + Base64.getEncoder().encodeToString(huge) + "\"";
        for (String kit :
                List.of(withPicture("huge.png"), withPicture("huge.png").replace("\"file\":\"huge.png\"", inside))) {
            assertThat(refusal(files.read(file(kit))).code()).isEqualTo("picture-too-large");
            assertThat(refusal(files.read(file(kit))).text())
                    .contains("says it is 60\u2009000 x 60\u2009000 pixels")
                    .contains("Nothing was imported");
        }
        Files.write(temp.resolve("huge.png"), Arrays.copyOf(huge, 20));
        assertThat(refusal(files.read(file(withPicture("huge.png")))).code()).isEqualTo("not-a-picture");
    }

    @Test
    void writesPicturesWithoutWhatTheyTellOfThePlace_andLeavesOutTheUnsure() throws IOException {
        byte[] plain = picture("jpeg");
        byte[] secret = "59.9139N 10.7522E".getBytes(StandardCharsets.US_ASCII);
        byte[] told = new byte[plain.length + secret.length + 4];
        System.arraycopy(plain, 0, told, 0, 2);
        told[2] = (byte) 0xFF;
        told[3] = (byte) 0xFE;
        told[5] = (byte) (secret.length + 2);
        System.arraycopy(secret, 0, told, 6, secret.length);
        System.arraycopy(plain, 2, told, 6 + secret.length, plain.length - 2);
        Blob photo = Blob.of("image/jpeg", told);
        Blob moving = Blob.of("image/gif", picture("gif"));
        Kit kit = Kit.titled("Crane");
        keep(new NewKit(
                KIT,
                new Kit(
                        kit.title(),
                        kit.source(),
                        kit.orderedOn(),
                        kit.arrivedOn(),
                        kit.price(),
                        kit.postage(),
                        kit.keptAt(),
                        List.of(named(photo, "p"), named(moving, "m")),
                        kit.notes()),
                List.of(),
                Map.of(),
                List.of(photo, moving)));
        Path file = temp.resolve("kit.json");
        Result<Path> written = files.write(workshop.view(), KIT, file);
        assertThat(((Result.Ok<Path>) written).warnings())
                .singleElement()
                .asString()
                .startsWith("One picture was left out");
        assertThat(files.read(file).orThrow().blobs())
                .singleElement()
                .satisfies(blob -> assertThat(blob.bytes()).isEqualTo(plain));
        assertThat(Arrays.equals(workshop.blob(photo.hash()).orElseThrow(), told))
                .isTrue();
    }

    @Test
    void neverWritesOverAFile() throws IOException {
        keep(everything());
        Path file = file("precious");
        assertThat(refusal(files.write(workshop.view(), KIT, file)).code()).isEqualTo("file-exists");
        assertThat(Files.readString(file)).isEqualTo("precious");
        assertThat(refusal(files.write(workshop.view(), KIT, temp.resolve("no/kit.json")))
                        .code())
                .isEqualTo("no-folder");
        assertThat(refusal(files.write(workshop.view(), new UUID(9, 9), temp.resolve("b.json")))
                        .code())
                .isEqualTo("unknown-kit");
    }
}
