package org.glintery.activework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.MAY;
import static org.glintery.activework.BenchShop.T1;
import static org.glintery.activework.BenchShop.T2;
import static org.glintery.activework.BenchShop.bySymbol;
import static org.glintery.activework.BenchShop.line;
import static org.glintery.activework.BenchShop.refusal;
import static org.glintery.activework.BenchShop.sitting;
import static org.glintery.activework.BenchShop.uncounted;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Settings;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SittingRecordingTest {

    private BenchShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Result<ChangeSet> sit(UUID piece, Laid laid) {
        return shop.bench().sit(shop.view(), UUID.randomUUID(), sitting(piece, MAY, laid));
    }

    /** Puts the drills of a piece into a holder of one pocket and gives that. */
    private Spot kitUp(UUID piece) {
        UUID id = UUID.randomUUID();
        Storage storage = shop.workshop().find(Storage.class).orElseThrow();
        shop.apply(storage.addHolder(shop.view(), id, Holder.grid("Case A", 1, 1, Optional.empty())));
        shop.apply(storage.planKitUp(shop.view(), piece, id, Optional.empty()).then(plan -> Result.ok(plan.change())));
        return KitUp.of(shop.view(), piece).orElseThrow().seats().get(0).spot();
    }

    @Test
    void aSittingCountsDrills_withoutBookingAny() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 600));
        shop.sit(piece, MAY, Laid.drills(300));

        assertThat(shop.view().contents(new Spot.OnCanvas(piece))).isEmpty();
        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(600);
    }

    @Test
    void drillsBySymbolGoFromThePocketToTheCanvas_andAreNoLongerSetAside() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 600));
        Spot pocket = kitUp(piece);
        shop.sit(piece, MAY, bySymbol(Map.of("A", 120L)));

        assertThat(shop.count(pocket, T1)).isEqualTo(480);
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(120);
        assertThat(shop.view().reserved(T1)).isEqualTo(480);
        assertThat(shop.view().available(T1)).isZero();
    }

    @Test
    void thePocketIsEmptiedBeforeTheBag() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 100));
        Spot pocket = kitUp(piece);
        // the legend is corrected upwards: the rest comes into the kit's bag
        shop.apply(shop.workshop()
                .find(Stash.class)
                .orElseThrow()
                .saveLegend(shop.view(), piece, List.of(line("A", T1, 500, 300))));
        shop.sit(piece, MAY, bySymbol(Map.of("A", 150L)));

        assertThat(shop.count(pocket, T1)).isZero();
        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(150);
        assertThat(shop.view().reserved(T1)).isEqualTo(150);
    }

    @Test
    void oneDrillMoreIsToldAsOne() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 200));

        assertThat(shop.apply(sit(piece, bySymbol(Map.of("A", 201L)))))
                .containsExactly("Of A, 1 more was laid than was booked in the pockets and the bag of Rope-walk."
                        + " It is booked as found.");
    }

    @Test
    void aMakerWhoLaidMoreThanIsBookedIsBelieved_andTold() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 200));
        List<String> warnings = shop.apply(sit(piece, bySymbol(Map.of("A", 250L))));

        assertThat(warnings)
                .containsExactly("Of A, 50 more were laid than were booked in the pockets and the bag of Rope-walk."
                        + " They are booked as found.");
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(250);
        assertThat(shop.count(shop.bagOf(piece), T1)).isZero();
        assertThat(shop.view().reserved(T1)).isZero();
        List<String> found = new ArrayList<>();
        shop.workshop().ledger(LedgerQuery.all(), entry -> {
            if (entry.from().equals(Spot.FOUND)) {
                found.add(entry.count() + "");
            }
        });
        assertThat(found).containsExactly("50");
    }

    @Test
    void twoSymbolsOfOneDrillDrawOnTheSameBag() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 100, 100), line("B", T1, 100, 100));
        shop.apply(sit(piece, bySymbol(Map.of("A", 90L, "B", 100L))));

        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(10);
        assertThat(shop.view().reserved(T1)).isEqualTo(10);
    }

    @Test
    void booksNothing_whenTheWorkshopKeepsOnlyTheBook() {
        shop.apply(Result.ok(ChangeSet.named("Only the book")
                .put(Settings.TYPE, Settings.ID, new Settings(Settings.Depth.ONLY_THE_BOOK, "EUR", false))
                .build()));
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 600));
        shop.sit(piece, MAY, bySymbol(Map.of("A", 120L)));

        assertThat(shop.view().spots()).isEmpty();
        assertThat(shop.bench().progress(shop.view(), piece).laidDrills()).contains(120L);
    }

    @Test
    void aPieceComesOntoTheBench_whenItIsSatAt() {
        UUID piece = shop.piece("Rope-walk", Standing.RESTING);
        shop.sit(piece, MAY, Laid.NOT_SAID);

        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.ON_THE_BENCH);
        assertThat(shop.pieceOf(piece).standingSince()).contains(MAY);
    }

    @Test
    void aForgottenSittingOfAMadePieceLeavesItMade_andBooksNothingTwice() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 100, 200));
        shop.apply(shop.bench().complete(shop.view(), new Completion(piece, MAY, Optional.empty(), "")));
        shop.sit(piece, MAY, bySymbol(Map.of("A", 60L)));

        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.MADE);
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(100);
    }

    @Test
    void refusesSymbols_whileTheDrillsAreNotInTheHouse() {
        UUID piece = shop.piece("Rope-walk", Standing.ORDERED, line("A", T1, 100, 200));

        assertThat(refusal(sit(piece, bySymbol(Map.of("A", 60L)))).code()).isEqualTo("not-in-the-house");
        shop.apply(shop.bench().start(shop.view(), piece, MAY));
        shop.apply(sit(piece, bySymbol(Map.of("A", 60L))));
        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(140);
    }

    @Test
    void refusesWhatCanNotBe() {
        UUID piece = shop.piece(
                "Rope-walk", Standing.SHELVED, line("A", T1, 100, 200), line("B", T1, 1, 1), line("B", T2, 1, 1));

        assertThat(refusal(sit(piece, Laid.drills(-1))).code()).isEqualTo("negative");
        assertThat(refusal(sit(piece, Laid.drills(4_000_001))).code()).isEqualTo("too-many");
        assertThat(refusal(sit(piece, Laid.drills(0))).code()).isEqualTo("nothing-laid");
        assertThat(refusal(sit(piece, Laid.percent(0))).code()).isEqualTo("nothing-laid");
        assertThat(refusal(sit(piece, bySymbol(Map.of("A", 0L)))).code()).isEqualTo("nothing-laid");
        assertThat(refusal(sit(piece, Laid.percent(100.5))).code()).isEqualTo("percent");
        assertThat(refusal(sit(piece, Laid.percent(Double.NaN))).code()).isEqualTo("percent");
        assertThat(refusal(sit(piece, Laid.sections(-1))).code()).isEqualTo("negative");
        assertThat(refusal(sit(piece, bySymbol(Map.of("A", -1L)))).code()).isEqualTo("negative");
        Laid fewerInAllThanOfOne = new Laid(Optional.of(10L), Optional.empty(), Optional.empty(), Map.of("A", 40L));
        assertThat(refusal(sit(piece, fewerInAllThanOfOne)).code()).isEqualTo("contrary");
        assertThat(refusal(sit(piece, bySymbol(Map.of("C", 1L)))).code()).isEqualTo("unknown-symbol");
        assertThat(refusal(sit(piece, bySymbol(Map.of("B", 1L)))).code()).isEqualTo("ambiguous-symbol");
        assertThat(refusal(sit(UUID.randomUUID(), Laid.NOT_SAID)).code()).isEqualTo("no-piece");
    }

    @Test
    void refusesADayThatHasNotBeen() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        About tomorrow = About.on(shop.view().day().plusDays(1));
        About today = About.on(shop.view().day());

        assertThat(refusal(shop.bench().sit(shop.view(), UUID.randomUUID(), sitting(piece, tomorrow, Laid.drills(5))))
                        .code())
                .isEqualTo("future-day");
        shop.sit(piece, today, Laid.drills(5));
    }

    @Test
    void refusesSectionsOfAPieceWithoutAny_butNotToCorrectTheRestOfSuchASitting() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        UUID old = shop.keptSitting(piece, MAY, Laid.sections(3));

        assertThat(refusal(sit(piece, Laid.sections(3))).code()).isEqualTo("no-sections");
        assertThat(refusal(sit(piece, Laid.sections(3))).text()).contains("say drills or percent");
        About earlier = About.on(BenchShop.TODAY.minusDays(1));
        shop.apply(shop.bench().editSitting(shop.view(), old, sitting(piece, earlier, Laid.sections(3))));
        assertThat(refusal(shop.bench().editSitting(shop.view(), old, sitting(piece, earlier, Laid.sections(4))))
                        .code())
                .isEqualTo("no-sections");
    }

    @Test
    void warnsWithBothNumbers_whenTheSittingsComeToMoreThanTheWhole() {
        UUID drills = shop.canvas("Rope-walk", 140, 180, Optional.empty());
        shop.sit(drills, MAY, Laid.drills(10_804));
        assertThat(shop.apply(sit(drills, Laid.drills(14_396)))).isEmpty();
        assertThat(shop.apply(sit(drills, Laid.drills(1))))
                .containsExactly("Rope-walk takes 25\u2009200 drills, and 25\u2009201 were said to be laid by now."
                        + " The sitting was kept. Correct it if the number is wrong.");

        UUID percent = shop.piece("Net loft", Standing.SHELVED);
        UUID id = shop.sit(percent, MAY, Laid.percent(60));
        assertThat(shop.apply(sit(percent, Laid.percent(60))).get(0)).contains("120 percent", "more than 100");
        assertThat(shop.apply(shop.bench().editSitting(shop.view(), id, sitting(percent, MAY, Laid.percent(40)))))
                .isEmpty();

        UUID sections = shop.inSections("Ferry", 9);
        shop.sit(sections, MAY, Laid.sections(7));
        assertThat(shop.apply(sit(sections, Laid.sections(3))).get(0)).startsWith("Ferry has 9 sections, and 10 ");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 1_441})
    void refusesMinutesThatAreNoneOfADay(int minutes) {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        Sitting sitting = new Sitting(
                piece,
                MAY,
                Optional.empty(),
                Optional.empty(),
                Optional.of(minutes),
                0,
                Laid.NOT_SAID,
                Optional.empty(),
                "");

        assertThat(refusal(shop.bench().sit(shop.view(), UUID.randomUUID(), sitting))
                        .code())
                .isEqualTo("minutes");
    }

    @Test
    void correctingASittingCorrectsTheDrills_bothWays() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 600));
        UUID id = shop.sit(piece, MAY, bySymbol(Map.of("A", 120L)));
        shop.apply(shop.bench().editSitting(shop.view(), id, sitting(piece, MAY, bySymbol(Map.of("A", 100L)))));
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(100);
        assertThat(shop.view().reserved(T1)).isEqualTo(500);

        shop.apply(shop.bench().editSitting(shop.view(), id, sitting(piece, MAY, bySymbol(Map.of("A", 130L)))));
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(130);
        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(470);
        assertThat(shop.view().reserved(T1)).isEqualTo(470);
    }

    private long house(UUID piece) {
        return shop.view().inTheHouse(T1) + shop.count(new Spot.OnCanvas(piece), T1);
    }

    @Test
    void correctingATypoInventsNoDrills_alsoAfterUndo() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 400));
        UUID id = shop.sit(piece, MAY, bySymbol(Map.of("A", 1_000L)));
        String mistyped = shop.view().contentDigest();
        for (int time = 1; time <= 2; time++) {
            shop.apply(shop.bench().editSitting(shop.view(), id, sitting(piece, MAY, bySymbol(Map.of("A", 100L)))));

            assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(300);
            assertThat(house(piece)).isEqualTo(400);
            assertThat(shop.view().reserved(T1)).isEqualTo(300);
            if (time == 1) {
                shop.workshop().undo().orThrow();
                assertThat(shop.view().contentDigest()).isEqualTo(mistyped);
            }
        }
    }

    @Test
    void aCorrectedSittingIsReversedAndLinked() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 400));
        UUID id = shop.sit(piece, MAY, bySymbol(Map.of("A", 1_000L)));
        shop.apply(shop.bench().editSitting(shop.view(), id, sitting(piece, MAY, bySymbol(Map.of("A", 100L)))));

        Map<UUID, Long> laid = new HashMap<>();
        List<Long> takenBack = new ArrayList<>();
        shop.workshop().ledger(LedgerQuery.all(), entry -> {
            laid.put(entry.action().id(), entry.count());
            if (entry.action() instanceof LedgerAction.Reversal reversal) {
                takenBack.add(laid.get(reversal.reverses()));
            }
        });
        assertThat(takenBack).containsExactlyInAnyOrder(400L, 600L);
    }

    @Test
    void drillsOfACorrectedSittingGoWhereThePiecesDrillsAreNow() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 400));
        Spot pocket = kitUp(piece);
        UUID id = shop.sit(piece, MAY, bySymbol(Map.of("A", 100L)));
        Storage storage = shop.workshop().find(Storage.class).orElseThrow();
        shop.apply(storage.planKitDown(shop.view(), piece, 0, Optional.empty()).then(plan -> Result.ok(plan.change())));
        shop.apply(shop.bench().editSitting(shop.view(), id, sitting(piece, MAY, bySymbol(Map.of("A", 90L)))));

        assertThat(shop.count(pocket, T1)).isZero();
        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(310);
        assertThat(shop.view().reserved(T1)).isEqualTo(310);
    }

    private void tell(UUID piece, LegendLine... lines) {
        Stash stash = shop.workshop().find(Stash.class).orElseThrow();
        shop.apply(stash.saveLegend(shop.view(), piece, List.of(lines)));
    }

    @Test
    void drillsLaidBeforeTheirSupplyWasToldAreNotInTheBagAsWell() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, uncounted("A", T1));
        UUID id = shop.sit(piece, MAY, bySymbol(Map.of("A", 100L)));
        Spot canvas = new Spot.OnCanvas(piece);
        assertThat(shop.view().all(FoundDrills.TYPE))
                .extracting(found -> found.value())
                .containsExactly(new FoundDrills(T1, canvas, 100));

        tell(piece, line("A", T1, 500, 500));
        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(400);
        assertThat(shop.view().reserved(T1)).isEqualTo(400);
        assertThat(shop.view().all(FoundDrills.TYPE)).isEmpty();

        shop.apply(shop.bench().editSitting(shop.view(), id, sitting(piece, MAY, bySymbol(Map.of("A", 80L)))));
        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(420);
        assertThat(house(piece)).isEqualTo(500);
        assertThat(shop.view().reserved(T1)).isEqualTo(420);
    }

    @Test
    void setsDrillsThatComeBackAsideAgain_whenAllOfThemHadBeenLaid() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 100, 100));
        UUID id = shop.sit(piece, MAY, bySymbol(Map.of("A", 100L)));
        shop.apply(shop.bench().editSitting(shop.view(), id, sitting(piece, MAY, bySymbol(Map.of("A", 40L)))));

        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(60);
        assertThat(shop.view().reserved(T1)).isEqualTo(60);
    }

    @Test
    void aSittingThatIsTakenAwayGivesItsDrillsBack_andUndoBringsItBack() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 600));
        UUID id = shop.sit(piece, MAY, bySymbol(Map.of("A", 120L)));
        String before = shop.view().contentDigest();

        shop.apply(shop.bench().removeSitting(shop.view(), id));

        assertThat(shop.bench().sittings(shop.view(), piece)).isEmpty();
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isZero();
        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(600);
        assertThat(shop.view().reserved(T1)).isEqualTo(600);

        shop.workshop().undo().orThrow();
        assertThat(shop.view().contentDigest()).isEqualTo(before);
    }

    @Test
    void refusesToTakeAwayASittingThatIsGone() {
        assertThat(refusal(shop.bench().removeSitting(shop.view(), UUID.randomUUID()))
                        .code())
                .isEqualTo("no-sitting");
    }

    @Test
    void aSittingStaysWithItsPiece() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        UUID other = shop.piece("Net loft", Standing.SHELVED);
        UUID id = shop.sit(piece, MAY, Laid.drills(1));

        assertThat(refusal(shop.bench().editSitting(shop.view(), id, sitting(other, MAY, Laid.drills(1))))
                        .code())
                .isEqualTo("other-piece");
    }

    @Test
    void undoTakesBackTheSitting_itsDrillsAndTheStanding() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 500, 600), uncounted("B", T2));
        String before = shop.view().contentDigest();
        shop.sit(piece, MAY, bySymbol(Map.of("A", 120L, "B", 5L)));
        assertThat(shop.view().contentDigest()).isNotEqualTo(before);

        shop.workshop().undo().orThrow();
        assertThat(shop.view().contentDigest()).isEqualTo(before);
    }
}
