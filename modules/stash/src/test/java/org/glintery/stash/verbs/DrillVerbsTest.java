package org.glintery.stash.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.line;
import static org.glintery.stash.WorkshopInFolder.silent;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.HistoryLine;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.stash.WorkshopInFolder;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillVerbsTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private FakeCall call() {
        return new FakeCall(shop.workshop());
    }

    private VerbResult move(String code, String from, String to, String count) {
        return new DrillsMoveVerb()
                .run(call().with("code", code).with("from", from).with("to", to).with("count", count));
    }

    private static String text(VerbResult result) {
        assertThat(result).isInstanceOf(VerbResult.Said.class);
        return ((VerbResult.Said) result).text();
    }

    @Test
    void moveMakesTheBagThatIsNamedFirst_andSaysWhatItDid() {
        assertThat(text(move("T1", "supplier", "bag:b1", "12")))
                .isEqualTo("Moved 12 of own T1, round 2.8 mm from a supplier to bag b1.");
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(12);
    }

    @Test
    void moveNamesTheLot_whereOneIsTold() {
        new DrillsMoveVerb()
                .run(call().with("code", "T1")
                        .with("from", "supplier")
                        .with("to", "bag:b1")
                        .with("count", "12")
                        .with("lot", " 2024-B "));

        List<LedgerEntry> booked = new ArrayList<>();
        shop.workshop().ledger(LedgerQuery.all(), booked::add);
        assertThat(booked)
                .singleElement()
                .satisfies(entry -> assertThat(((LedgerAction.Movement) entry.action()).lot())
                        .contains("2024-B"));
    }

    @Test
    void findTellsWhatWasFound_andAloneWhenAsked() {
        move("T1", "found", "bag:b1", "12");
        move("T2", "supplier", "bag:b1", "5");

        assertThat(text(new DrillsFindVerb().run(call()))).contains("T2", "bag b1: 12 (12 found)");
        assertThat(text(new DrillsFindVerb().run(call().flagged("found"))))
                .contains("bag b1: 12 (12 found)")
                .doesNotContain("T2");
    }

    @Test
    void moveIsRefused_whenTooFewAreThere() {
        move("T1", "supplier", "bag:b1", "12");

        assertThat(move("T1", "bag:b1", "bag:b2", "13")).isInstanceOf(VerbResult.Refused.class);
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(12);
    }

    @Test
    void moveIsWrongUsage_whenTheCardOrTheCodeIsBlank() {
        VerbResult noCard = new DrillsMoveVerb()
                .run(call().with("code", "T1")
                        .with("card", "")
                        .with("from", "supplier")
                        .with("to", "bag:b1")
                        .with("count", "1"));

        assertThat(noCard).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(move(" ", "supplier", "bag:b1", "1")).isInstanceOf(VerbResult.WrongUsage.class);
    }

    @Test
    void callsABagByItsName_alsoWhenItWasNeverUsed() {
        VerbResult refused = move("T1", "bag:b9", "bag:b1", "5");
        assertThat(((VerbResult.Refused) refused).refusal().text())
                .isEqualTo("There are 0 of T1 in bag b9, and 5 were asked for. Nothing was moved.");
        assertThat(shop.view().all(Bag.TYPE)).isEmpty();

        move("T1", "supplier", "bag:b1", "12");
        new DrillsStocktakeVerb()
                .run(call().with("code", "T1").with("spot", "bag:b2").with("count", "9"));
        assertThat(shop.workshop().history(2))
                .extracting(HistoryLine::sentence)
                .containsExactly("Count T1 in bag b2", "Move T1 to bag b1");
    }

    @Test
    void findDoesNotOffer_whatIsKeptForRepairs() {
        UUID packet = UUID.randomUUID();
        Bag bag = new Bag("Repair packet of Crane", Optional.empty(), Optional.empty(), Optional.of(UUID.randomUUID()));
        shop.apply(Result.ok(
                ChangeSet.named("Keep some").create(Bag.TYPE, packet, bag).build()));
        move("T1", "supplier", "bag:Repair packet of Crane", "20");
        move("T1", "supplier", "bag:b1", "12");

        VerbResult found = new DrillsFindVerb().run(call().with("text", "T1"));
        assertThat(text(found)).contains("Repair packet of Crane: 20");
        assertThat(((DrillsFindVerb.Found) ((VerbResult.Said) found).answer()).drills())
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.inTheHouse().count()).isEqualTo(32);
                    assertThat(one.available().count()).isEqualTo(12);
                });
    }

    @Test
    void moveIsWrongUsage_whenASpotOrNumberCanNotBeUnderstood() {
        assertThat(move("T1", "nowhere", "bag:b1", "12")).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(move("T1", "supplier", "canvas:Unknown", "12")).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(move("T1", "supplier", "bag:b1", "-3")).isInstanceOf(VerbResult.WrongUsage.class);
    }

    @Test
    void moveAsksWhichDrill_whenSeveralHaveTheCode() {
        Drill metallic = new Drill(Shape.ROUND, 280, T1.body(), Coating.METALLIC, Optional.empty(), "own", "T1");
        shop.bag("b1", T1, 5);
        shop.bag("b2", metallic, 5);

        VerbResult unclear = move("T1", "supplier", "bag:b3", "1");
        assertThat(unclear).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(((VerbResult.WrongUsage) unclear).text()).contains("own T1, round 2.8 mm, metallic");
        // the bag it comes from settles it
        move("T1", "bag:b2", "bag:b3", "2");
        assertThat(shop.count(shop.bagNamed("b3"), metallic)).isEqualTo(2);
    }

    @Test
    void findTellsWhereADrillLies() {
        move("T1", "supplier", "bag:b1", "12");

        assertThat(text(new DrillsFindVerb().run(call().with("text", "t1"))))
                .contains("own T1")
                .contains("bag b1: 12");
    }

    @Test
    void stocktakePinsTheAmount() {
        move("T1", "supplier", "bag:b1", "12");
        VerbResult counted = new DrillsStocktakeVerb()
                .run(call().with("code", "T1").with("spot", "bag:b1").with("count", "9"));

        assertThat(text(counted)).isEqualTo("There are 9 of own T1, round 2.8 mm in bag b1; 12 were booked.");
    }

    @Test
    void stocktakeTellsOneAndMany_andWhatNobodyHadCounted() {
        move("T1", "supplier", "bag:b1", "1");
        assertThat(text(count("T1", "bag:b1", "1200")))
                .isEqualTo("There are 1\u2009200 of own T1, round 2.8 mm in bag b1; 1 was booked.");
        assertThat(text(count("T1", "bag:b1", "1")))
                .isEqualTo("There is 1 of own T1, round 2.8 mm in bag b1; 1\u2009200 were booked.");

        VerbResult moved = new DrillsMoveVerb()
                .run(call().with("code", "T2").with("from", "supplier").with("to", "bag:b2"));
        assertThat(text(moved))
                .isEqualTo("Moved some of own T2, round 2.8 mm from a supplier to bag b2, not counted yet.");
        assertThat(text(count("T2", "bag:b2", "9")))
                .isEqualTo("There are 9 of own T2, round 2.8 mm in bag b2; nobody had counted them before.");
    }

    private VerbResult count(String code, String spot, String count) {
        return new DrillsStocktakeVerb()
                .run(call().with("code", code).with("spot", spot).with("count", count));
    }

    @Test
    void setsThousandsApart_inWhatPeopleRead() {
        shop.shelve("Rope-walk", line("A", T1, 5_000, 1_240));

        assertThat(text(new DrillsFindVerb().run(call()))).contains("bag Rope-walk: 1\u2009240");
        assertThat(text(new PieceShowVerb().run(call().with("piece", "Rope-walk"))))
                .contains("5\u2009000", "1\u2009240", "3\u2009760");
        assertThat(text(new PieceListVerb().run(call()))).contains("5\u2009000");
        assertThat(text(new KitShowVerb().run(call().with("kit", "Rope-walk")))).contains("5\u2009000");
        FakeCall call = call();
        new DrillsLedgerVerb().run(call);
        assertThat(call.lines).singleElement().asString().contains("movement", "1\u2009240  own T1");
        assertThat(call.answers)
                .singleElement()
                .extracting(answer -> ((DrillsLedgerVerb.Booked) answer).count())
                .isEqualTo(1_240L);
    }

    @Test
    void saysWhyNothingIsListed() {
        assertThat(text(new DrillsFindVerb().run(call()))).isEqualTo("No drills yet.");
        move("T1", "supplier", "bag:b1", "12");

        assertThat(text(new DrillsFindVerb().run(call().with("text", "Z9")))).isEqualTo("No drill fits 'Z9'.");
        assertThat(text(new DrillsFindVerb().run(call().flagged("found"))))
                .isEqualTo("Nothing was found that was not booked.");
    }

    @Test
    void tellsStandingsInWords() {
        UUID piece = shop.shelve("Rope-walk");
        shop.apply(
                shop.stash().setStanding(shop.view(), piece, Standing.ON_THE_BENCH, Optional.of(WorkshopInFolder.MAY)));

        assertThat(text(new PieceShowVerb().run(call().with("piece", "Rope-walk"))))
                .isEqualTo("Rope-walk, on the bench since 2 May 2025\nNo legend yet.");
        assertThat(text(new PieceListVerb().run(call()))).contains("on the bench");
        assertThat(shop.workshop().history(1))
                .extracting(HistoryLine::sentence)
                .containsExactly("Put Rope-walk on the bench");
    }

    @Test
    void tellsWhereAKitCameFromAndWhen_whereThatIsKnown() {
        assertThat(headOf("Crane", call())).isEqualTo("Crane");
        assertThat(headOf("Ferry", call().with("source", "Quay shop"))).isEqualTo("Ferry from Quay shop");
        assertThat(headOf("Net loft", call().with("arrived", "2025-05-02"))).isEqualTo("Net loft, arrived 2 May 2025");
        assertThat(headOf("Slip", call().with("source", "Quay shop").with("arrived", "2025-05-02")))
                .isEqualTo("Slip from Quay shop, arrived 2 May 2025");
    }

    private String headOf(String title, FakeCall said) {
        new KitAddVerb().run(said.with("title", title));
        return text(new KitShowVerb().run(call().with("kit", title)))
                .lines()
                .findFirst()
                .orElseThrow();
    }

    @Test
    void tellsHowAnOptionIsWritten_whenItIsNotUnderstood() {
        assertThat(move("T1", "supplier", "bag:b1", "many"))
                .isEqualTo(VerbResult.wrongUsage(
                        "--count is a whole number from 1 to 1\u2009000\u2009000\u2009000, not 'many'."));
        assertThat(new KitAddVerb().run(call().with("title", "Crane").with("pitch", "2000")))
                .isEqualTo(VerbResult.wrongUsage("--pitch is a number of millimetres up to 1\u2009000, not '2000'."));
        assertThat(new PieceListVerb().run(call().with("standing", "lost")))
                .isEqualTo(VerbResult.wrongUsage("--standing is one of hoped-for, ordered, shelved, on-the-bench, "
                        + "resting, made, let-go, not 'lost'."));
        assertThat(new KitAddVerb().run(call().with("title", "Crane").with("since", "soon")))
                .isEqualTo(VerbResult.wrongUsage("--since 'soon' is not a date. Write it like 2025-03-31, "
                        + "'about October 2024' or 'spring 2023'."));
    }

    @Test
    void ledgerPrintsEveryMovementWithItsId() {
        move("T1", "supplier", "bag:b1", "12");
        move("T1", "bag:b1", "bag:b2", "2");
        FakeCall call = call();
        new DrillsLedgerVerb().run(call);

        assertThat(call.lines).hasSize(2);
        assertThat(call.lines.get(1)).containsPattern("[0-9a-f-]{36}").contains("bag:b1 -> bag:b2");
    }

    @Test
    void ledgerRefusesASpotThatIsNotThere() {
        move("T1", "supplier", "bag:b1", "12");
        assertThat(new DrillsLedgerVerb().run(call().with("spot", "bag:zzz")))
                .isEqualTo(VerbResult.wrongUsage("There is no 'bag:zzz' here."));
        assertThat(new DrillsLedgerVerb().run(call().with("spot", "bag:b1"))).isInstanceOf(VerbResult.Streamed.class);
    }

    @Test
    void takesNumbersAsWePrintThem() {
        move("T1", "supplier", "bag:b1", "1\u2009200");
        move("T1", "supplier", "bag:b1", "1 200");
        assertThat(shop.count(shop.bagNamed("b1"), T1)).isEqualTo(2_400);
    }

    @Test
    void postPrintsBareIds_andRefusedLinesAsJson() throws IOException {
        String id = "11111111-2222-3333-4444-555555555555";
        String line = "{\"id\":\"" + id + "\",\"drill\":{\"shape\":\"round\",\"code\":\"T1\"},\"from\":\"supplier\","
                + "\"to\":\"bag:b1\",\"count\":12}\nnonsense\n";
        FakeCall call = call().with("file", "-").reading(line.getBytes(StandardCharsets.UTF_8));
        VerbResult result = new DrillsPostVerb().run(call);

        assertThat(result).isEqualTo(new VerbResult.Streamed(true));
        assertThat(call.lines.get(0)).isEqualTo(id);
        assertThat(call.lines.get(1)).startsWith("{\"line\":2,\"refused\":{\"code\":\"malformed\"");
    }

    @Test
    void pieceShowTellsWhatIsMissing() {
        shop.shelve("Rope-walk", line("A", T1, 500, 200));

        assertThat(text(new PieceShowVerb().run(call().with("piece", "rope-walk"))))
                .startsWith("Rope-walk, shelved")
                .contains("300");
    }

    @Test
    void neverSaysNoneOfWhatNobodyCounted() {
        shop.shelve("Rope-walk", silent("A", T1));

        assertThat(text(new PieceShowVerb().run(call().with("piece", "Rope-walk"))))
                .containsPattern("not known +0 +some, not counted yet +not known");
        assertThat(text(new DrillsFindVerb().run(call().with("text", "T1"))))
                .containsPattern("own T1 +some, not counted yet +some, not counted yet +bag Rope-walk: some");
    }

    @Test
    void findTellsHowSureItIs() {
        new DrillsMoveVerb()
                .run(call().with("code", "T1")
                        .with("from", "supplier")
                        .with("to", "bag:b1")
                        .with("count", "2000")
                        .with("give-or-take", "32"));

        assertThat(text(new DrillsFindVerb().run(call().with("text", "T1"))))
                .containsPattern("own T1 +about 2\u2009000 \\(±32\\) +about 2\u2009000 \\(±32\\) +bag b1: about");
    }

    @Test
    void saysHowManyAreShort_whenMoreIsLostThanIsFree() {
        shop.shelve("Rope-walk", line("A", T1, 500, 200));
        FakeCall call = call().with("code", "T1")
                .with("from", "bag:Rope-walk")
                .with("to", "lost")
                .with("count", "150");
        new DrillsMoveVerb().run(call);

        assertThat(call.said).containsExactly("200 are set aside of T1 for Rope-walk; 150 short now.");
        assertThat(text(new DrillsFindVerb().run(call().with("text", "T1"))))
                .containsPattern("own T1 +50 +150 short +");
        FakeCall counted =
                call().with("code", "T1").with("spot", "bag:Rope-walk").with("count", "20");
        new DrillsStocktakeVerb().run(counted);
        assertThat(counted.said).containsExactly("200 are set aside of T1 for Rope-walk; 180 short now.");
    }

    @Test
    void saysWhatToDo_whenWhatIsSetAsideIsGivenAway() {
        shop.shelve("Rope-walk", line("A", T1, 500, 200));

        assertThat(((VerbResult.Refused) move("T1", "bag:Rope-walk", "swapped:Ada", "150")).refusal())
                .isEqualTo(new Refusal(
                        "reserved",
                        "200 are set aside of T1 for Rope-walk, and 150 too few would be left. Nothing was moved. "
                                + "Complete Rope-walk or let it go first."));
    }

    @Test
    void pieceShowOffersCandidates_whenTheNameIsAmbiguous() {
        shop.shelve("Rope-walk");
        shop.shelve("Rope locker");
        VerbResult result = new PieceShowVerb().run(call().with("piece", "rope"));

        assertThat(((VerbResult.WrongUsage) result).candidates()).hasSize(2);
    }
}
