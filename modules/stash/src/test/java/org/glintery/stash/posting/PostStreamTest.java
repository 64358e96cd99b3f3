package org.glintery.stash.posting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.line;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.JsonCodec;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.storage.Bag;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.stash.FoundPlaces;
import org.glintery.stash.WorkshopInFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.Lookup;

class PostStreamTest {

    private static final String ID = "11111111-2222-3333-4444-555555555555";

    private final List<PostAnswer> answers = new ArrayList<>();
    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private boolean post(String... lines) throws IOException {
        return post(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    private boolean post(byte[] bytes) throws IOException {
        JsonCodec codec = Lookup.getDefault().lookup(JsonCodec.class);
        return new PostStream(shop.workshop(), codec, answers::add).run(new ByteArrayInputStream(bytes));
    }

    private static String movement(String id, String from, String to, String count) {
        return "{\"id\":\"" + id + "\",\"drill\":{\"shape\":\"round\",\"sizeMm\":2.8,\"body\":\"resin\","
                + "\"coating\":\"none\",\"card\":\"own\",\"code\":\"T1\"},\"from\":\"" + from + "\",\"to\":\"" + to
                + "\",\"count\":" + count + ",\"reason\":\"bought\"}";
    }

    private static String id() {
        return UUID.randomUUID().toString();
    }

    private String refusedText() {
        assertThat(answers).hasSize(1);
        return answers.get(0).refused().orElseThrow().text();
    }

    private long flagged(String bag) {
        return FoundPlaces.at(shop.view(), shop.bagNamed(bag), T1);
    }

    @Test
    void flagsWhatComesFromFound_onceForEachMovement() throws IOException {
        String batch =
                "[" + movement(id(), "found", "bag:b1", "5") + "," + movement(id(), "found", "bag:b1", "2") + "]";
        post(movement(ID, "found", "bag:b1", "12"), movement(ID, "found", "bag:b1", "12"), batch);

        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(19);
        assertThat(flagged("b1")).isEqualTo(19);
    }

    @Test
    void flagsNothing_whenDrillsComeFromASupplierOrAreRefused() throws IOException {
        post(movement(ID, "supplier", "bag:b1", "12"), movement(id(), "found", "lost", "3"));

        assertThat(shop.view().all(FoundDrills.TYPE)).isEmpty();
    }

    @Test
    void takesTheFlagAwayOnceItWasLookedAt_andBringsItBackByUndo() throws IOException {
        post(movement(ID, "found", "bag:b1", "12"));
        UUID flag = FoundPlaces.all(shop.view()).get(0).id();

        shop.apply(FoundPlaces.lookedAt(shop.view(), flag));
        assertThat(flagged("b1")).isZero();
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(12);
        assertThat(WorkshopInFolder.refusal(FoundPlaces.lookedAt(shop.view(), flag))
                        .text())
                .isEqualTo("That was looked at already. Nothing was changed.");

        shop.workshop().undo().orThrow();
        assertThat(flagged("b1")).isEqualTo(12);
    }

    @Test
    void booksALineAndAnswersItsId() throws IOException {
        assertThat(post(movement(ID, "supplier", "bag:b1", "12"))).isFalse();

        assertThat(answers).containsExactly(PostAnswer.booked(UUID.fromString(ID)));
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(12);
    }

    @Test
    void makesABag_whoseNameBeginsThoseOfOthers() throws IOException {
        post(movement(id(), "supplier", "bag:b10", "12"), movement(id(), "supplier", "bag:b11", "3"));
        post(movement(id(), "supplier", "bag:b1", "5"));

        assertThat(answers).allMatch(answer -> answer.refused().isEmpty());
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(5);
    }

    @Test
    void makesBagAndCodeOnce_andFindsThemAgain() throws IOException {
        post(movement(id(), "supplier", "bag:b1", "12"), movement(id(), "supplier", "bag:B1", "3"));

        assertThat(shop.view().all(Bag.TYPE)).hasSize(1);
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(15);
        assertThat(ColourCard.entry(shop.view(), "own", "T1")).isPresent();
    }

    @Test
    void makesOneBag_whenABatchNamesItInTwoWays() throws IOException {
        post("[" + movement(id(), "supplier", "bag:b1", "12") + "," + movement(id(), "supplier", "bag:B1", "3") + "]");

        assertThat(shop.view().all(Bag.TYPE)).hasSize(1);
        assertThat(answers.get(0).ids().orElseThrow()).hasSize(2);
    }

    @Test
    void countsAMovementOnce_whenItIsSaidAgain() throws IOException {
        String line = movement(ID, "supplier", "bag:b1", "12");
        assertThat(post(line, line)).isFalse();

        assertThat(answers).hasSize(2);
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(12);
    }

    @Test
    void refusesAnIdThatComesBackWithOtherContent() throws IOException {
        assertThat(post(movement(ID, "supplier", "bag:b1", "12"), movement(ID, "supplier", "bag:b1", "13")))
                .isTrue();

        assertThat(answers.get(1).refused()).isPresent();
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(12);
    }

    @Test
    void goesOnAfterARefusedLine_andNamesIt() throws IOException {
        boolean refused = post(
                movement(id(), "supplier", "bag:b1", "12"),
                movement(ID, "bag:b1", "bag:b2", "99"),
                movement(id(), "bag:b1", "bag:b2", "5"));

        assertThat(refused).isTrue();
        assertThat(answers.get(1).line()).contains(2L);
        assertThat(answers.get(1).id()).contains(ID);
        assertThat(answers.get(1).refused().orElseThrow().code()).isEqualTo("not-enough");
        assertThat(shop.count(shop.bagNamed("b2"), T1)).isEqualTo(5);
    }

    @Test
    void booksNothingOfABatch_whenOneLineOfItIsRefused() throws IOException {
        post("[" + movement(id(), "supplier", "bag:b1", "12") + "," + movement(id(), "bag:b1", "lost", "13") + "]");

        assertThat(answers.get(0).refused()).isPresent();
        assertThat(shop.view().spots()).isEmpty();
        assertThat(shop.view().all(Bag.TYPE)).isEmpty();
    }

    @Test
    void namesTheMovementOfABatchThatCanNotBeRead() throws IOException {
        post("[" + movement(id(), "supplier", "bag:b1", "12") + "," + movement(ID, "supplier", "bag:b1", "-1") + "]");

        assertThat(refusedText()).startsWith("Movement 2 of the batch: 'count' must be from 1 to 1000000000");
        assertThat(answers.get(0).id()).contains(ID);
    }

    @Test
    void refusesAFieldThatIsNotThere_andNamesIt() throws IOException {
        String fine = movement(ID, "supplier", "bag:b1", "12");
        for (String field : List.of("cuont", "Count", "recordedAt", "")) {
            answers.clear();
            assertThat(post(fine.replace("\"count\"", "\"" + field + "\":5,\"count\"")))
                    .isTrue();
            assertThat(refusedText()).startsWith("A movement has no field '" + field + "'. Its fields are id, drill,");
            assertThat(answers.get(0).id()).contains(ID);
        }
        answers.clear();
        post(fine.replace("\"sizeMm\"", "\"size\""));
        assertThat(refusedText())
                .isEqualTo("The drill of a movement has no field 'size'. Its fields are shape, sizeMm, body, coating,"
                        + " outline, card, code.");
        answers.clear();
        post("[" + fine.replace("\"reason\"", "\"raeson\"") + "]");
        assertThat(refusedText()).startsWith("Movement 1 of the batch: A movement has no field 'raeson'.");
        answers.clear();
        post(fine.replace("\"count\":12", "\"basis\":\"unknown\",\"uncertainty\":5"));
        assertThat(refusedText()).isEqualTo("An amount that is not known has no 'uncertainty'.");
        assertThat(shop.view().spots()).isEmpty();
    }

    @Test
    void refusesAFieldOfAnotherKind_andNamesIt() throws IOException {
        String fine = movement(ID, "supplier", "bag:b1", "12").replace("}", ",\"lot\":\"L\"}");
        fine = fine.replaceFirst(",\"lot\":\"L\"", "");
        assertThat(post(fine)).isFalse();
        for (String field : List.of("from", "to", "reason", "lot", "code", "card", "shape", "body", "coating", "id")) {
            answers.clear();
            String wrong = fine.replaceFirst("\"" + field + "\":\"[^\"]*\"", "\"" + field + "\":7");
            assertThat(wrong).isNotEqualTo(fine);
            assertThat(post(wrong)).isTrue();
            assertThat(refusedText()).isEqualTo("'" + field + "' must be text.");
        }
        for (String field : List.of("\"happenedOn\":7", "\"basis\":true", "\"uncertainty\":\"5\"")) {
            answers.clear();
            assertThat(post(fine.replace("\"count\"", field + ",\"count\""))).isTrue();
            assertThat(refusedText()).contains(field.replaceAll("\"([a-zA-Z]+)\".*", "'$1'"));
        }
    }

    @Test
    void refusesCountsThatAreNoCounts() throws IOException {
        for (String count : List.of("0", "-5", "1.5", "1e400", "99999999999999999999", "\"12\"", "null", "1e-3")) {
            answers.clear();
            assertThat(post(movement(id(), "supplier", "bag:b1", count)))
                    .as(count)
                    .isTrue();
            assertThat(refusedText()).as(count).contains("'count'");
        }
        assertThat(shop.view().spots()).isEmpty();
    }

    @Test
    void refusesWhatIsNoMovement_withoutStopping() throws IOException {
        boolean refused = post(
                "not json",
                "42",
                "{}",
                "[]",
                "{\"id\":\"" + ID + "\"}",
                "",
                movement(id(), "supplier", "bag:b1", "12"));

        assertThat(refused).isTrue();
        assertThat(answers.subList(0, 5))
                .allSatisfy(a -> assertThat(a.refused()).isPresent());
        assertThat(answers.get(4).id()).contains(ID);
        assertThat(answers.get(5).refused()).isEmpty();
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(12);
    }

    @Test
    void refusesAShapeThatDoesNotExist_andSaysWhichDo() throws IOException {
        post(movement(ID, "supplier", "bag:b1", "12").replace("round", "oval"));

        assertThat(refusedText()).isEqualTo("'shape' must be one of round, square, special.");
    }

    @Test
    void refusesASpotThatDoesNotExist() throws IOException {
        post(movement(ID, "supplier", "pocket:Nowhere/A1", "12"));

        assertThat(answers.get(0).refused().orElseThrow().code()).isEqualTo("unknown-name");
    }

    @Test
    void refusesALineThatIsTooLong_andReadsTheNext() throws IOException {
        byte[] next = ("\n" + movement(ID, "supplier", "bag:b1", "12")).getBytes(StandardCharsets.UTF_8);
        byte[] bytes = new byte[LineInput.MOST_BYTES + 1 + next.length];
        Arrays.fill(bytes, (byte) 'x');
        System.arraycopy(next, 0, bytes, bytes.length - next.length, next.length);
        post(bytes);

        assertThat(answers.get(0).refused().orElseThrow().text()).isEqualTo("A line may have at most 16 MiB.");
        assertThat(answers.get(1).id()).contains(ID);
    }

    @Test
    void refusesBytesThatAreNotText() throws IOException {
        post(new byte[] {'{', (byte) 0xff, (byte) 0xfe, '}'});

        assertThat(refusedText()).isEqualTo("The line is not text in UTF-8.");
    }

    @Test
    void takesTheUsualDrill_whereTheLineIsSilent() throws IOException {
        post("{\"id\":\"" + ID + "\",\"drill\":{\"shape\":\"square\",\"code\":\"S1\"},\"from\":\"supplier\","
                + "\"to\":\"bag:b1\",\"count\":3}");

        Drill usual = new Drill(Shape.SQUARE, 250, Body.RESIN, Coating.NONE, Optional.empty(), "own", "S1");
        assertThat(shop.count(shop.bagNamed("b1"), usual)).isEqualTo(3);
    }

    @Test
    void keepsUncertaintyAndUnknownAmounts() throws IOException {
        post(
                movement(id(), "supplier", "bag:b1", "200,\"uncertainty\":10"),
                movement(id(), "supplier", "bag:b2", "1").replace("\"count\":1", "\"basis\":\"unknown\""));

        assertThat(shop.view().balance(shop.bagNamed("b1"), T1)).isEqualTo(new Balance(200, 100, 0));
        assertThat(shop.view().balance(shop.bagNamed("b2"), T1)).isEqualTo(new Balance(0, 0, 1));
    }

    @Test
    void releasesWhatIsLaidOnACanvasOnce_evenWhenSaidAgain() throws IOException {
        shop.shelve("Rope-walk", line("A", T1, 180, 200));
        String laid = movement(ID, "bag:Rope-walk", "canvas:Rope-walk", "50");
        assertThat(post(laid, laid)).isFalse();

        assertThat(shop.view().reserved(T1)).isEqualTo(150);
        assertThat(shop.count(shop.bagNamed("Rope-walk"), T1)).isEqualTo(150);
    }

    @Test
    void booksAsManyEntriesAsItAnswers() throws IOException {
        String[] lines = new String[200];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = movement(id(), "supplier", "bag:b" + i % 7, "1").replace("T1", "T" + i % 13);
        }
        post(lines);

        List<String> booked = new ArrayList<>();
        shop.workshop()
                .ledger(
                        LedgerQuery.all(),
                        entry -> booked.add(entry.action().id().toString()));
        assertThat(booked)
                .containsExactlyElementsOf(
                        answers.stream().map(a -> a.id().orElseThrow()).toList());
        assertThat(shop.view().balance(Spot.SUPPLIER, T1).count()).isNegative();
    }

    @Test
    void refusesALineThatIsNoMovement_andGoesOn() throws IOException {
        String noCard = movement(id(), "supplier", "bag:b1", "12").replace("\"own\"", "\"\"");
        String tooLarge = movement(id(), "supplier", "bag:b1", "12").replace("2.8", "1000.5");
        assertThat(post(noCard, "[" + noCard + "]", tooLarge, movement(ID, "supplier", "bag:b1", "12")))
                .isTrue();

        assertThat(answers).hasSize(4);
        assertThat(answers.subList(0, 3)).allMatch(answer -> answer.refused().isPresent());
        assertThat(answers.get(3)).isEqualTo(PostAnswer.booked(UUID.fromString(ID)));
    }

    @Test
    void releasesOnce_whatABatchSaysAmongOthersThatAreNew() throws IOException {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        String laid = movement(ID, "bag:Rope-walk", "canvas:" + piece, "50");
        String more = movement(id(), "bag:Rope-walk", "canvas:" + piece, "30");
        assertThat(post(laid, "[" + laid + "," + more + "]", "[" + more + "," + laid + "]"))
                .isFalse();

        assertThat(shop.count(shop.bagNamed("Rope-walk"), T1)).isEqualTo(120);
        assertThat(shop.view().reserved(T1)).isEqualTo(120);
    }

    @Test
    void refusesANumberWithAnExponentBeyondAll_andGoesOn() throws IOException {
        String huge = movement(id(), "supplier", "bag:b1", "1e3000000000");
        assertThat(post(huge, movement(ID, "supplier", "bag:b1", "12"))).isTrue();

        assertThat(answers).hasSize(2);
        assertThat(answers.get(0).refused()).isPresent();
        assertThat(answers.get(1)).isEqualTo(PostAnswer.booked(UUID.fromString(ID)));
    }

    @Test
    void releasesOnce_whatABatchSaysTwice() throws IOException {
        UUID piece = shop.shelve("Rope-walk", WorkshopInFolder.line("A", T1, 180, 200));
        String laid = movement(ID, "bag:Rope-walk", "canvas:" + piece, "50");
        post("[" + laid + "," + laid + "]");

        assertThat(shop.count(shop.bagNamed("Rope-walk"), T1)).isEqualTo(150);
        assertThat(shop.view().reserved(T1)).isEqualTo(150);
    }
}
