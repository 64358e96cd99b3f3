package org.glintery.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.T2;
import static org.glintery.stash.WorkshopInFolder.bags;
import static org.glintery.stash.WorkshopInFolder.kit;
import static org.glintery.stash.WorkshopInFolder.line;
import static org.glintery.stash.WorkshopInFolder.refusal;
import static org.glintery.stash.WorkshopInFolder.silent;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Source;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitShelvingTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void putsSuppliedDrillsIntoOneBagNamedAfterThePiece_andSetsThemAside() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200), line("B", T2, 90, 100));

        assertThat(shop.view().contents(shop.bagNamed("Rope-walk")))
                .isEqualTo(Map.of(T1, new Balance(200, 0, 0), T2, new Balance(100, 0, 0)));
        assertThat(shop.view().available(T1)).isZero();
        assertThat(new PieceReservations(shop.view(), piece).of(T1)).isEqualTo(200);
    }

    @Test
    void namesThePieceAndItsKitInEachOther() {
        NewKit kit = kit(UUID.randomUUID(), "Net loft", Standing.SHELVED, Optional.empty());
        shop.apply(shop.stash().shelve(shop.view(), kit));

        assertThat(shop.view().all(Piece.TYPE))
                .singleElement()
                .satisfies(piece -> assertThat(piece.value().kit()).contains(kit.id()));
    }

    @Test
    void booksSomeNotCountedYet_whenALineIsSilentAboutItsAmount() {
        shop.shelve("Rope-walk", silent("A", T1));

        Balance there = shop.view().balance(shop.bagNamed("Rope-walk"), T1);
        assertThat(there.words()).isEqualTo("some, not counted yet");
        assertThat(shop.view().reserved(T1)).isZero();
    }

    @Test
    void takesTwoHundredABag_whenNothingElseIsKnownOfTheSource() {
        shop.shelve("Rope-walk", bags("A", T1, 4));

        // 200 a bag and 5 % of a bag as its uncertainty: common practice, no published source. sqrt(4) x 10 = 20
        assertThat(shop.view().balance(shop.bagNamed("Rope-walk"), T1)).isEqualTo(new Balance(800, 400, 0));
    }

    @Test
    void takesTheBagSizeOfTheSource_whenItIsKnown() {
        Source source = new Source("Quay shop", 500);
        shop.apply(Result.ok(ChangeSet.named("Know a source")
                .put(Source.TYPE, Source.idOf("Quay shop"), source)
                .build()));
        shop.apply(shop.stash()
                .shelve(
                        shop.view(),
                        kit(UUID.randomUUID(), "Crane", Standing.SHELVED, Optional.of("quay shop"), bags("A", T1, 1))));

        assertThat(shop.count(shop.bagNamed("Crane"), T1)).isEqualTo(500);
    }

    @Test
    void warnsAndKeepsBothLines_whenASymbolIsRepeated() {
        UUID piece = UUID.randomUUID();
        List<String> warnings = shop.apply(shop.stash()
                .shelve(
                        shop.view(),
                        kit(
                                piece,
                                "Rope-walk",
                                Standing.SHELVED,
                                Optional.empty(),
                                line("A", T1, 10, 20),
                                line("A", T2, 30, 40))));

        assertThat(warnings).containsExactly("The symbol A stands on lines 1 and 2. All were kept.");
        assertThat(Legend.of(shop.view(), piece).lines()).hasSize(2);
    }

    @Test
    void namesEveryLineOfASymbol_whenThereAreMoreThanTwo() {
        NewKit kit = kit(
                UUID.randomUUID(),
                "Rope-walk",
                Standing.SHELVED,
                Optional.empty(),
                line("A", T1, 10, 20),
                line("B", T1, 10, 20),
                line("A", T2, 30, 40),
                line("A", T2, 1, 1));

        assertThat(shop.apply(shop.stash().shelve(shop.view(), kit)))
                .containsExactly("The symbol A stands on lines 1, 3 and 4. All were kept.");
    }

    @Test
    void saysHowLongALegendCanBe_whenItIsTooLong() {
        LegendLine[] lines = new LegendLine[Legend.MOST_LINES + 1];
        Arrays.fill(lines, line("A", T1, 1, 1));
        NewKit kit = kit(UUID.randomUUID(), "Crane", Standing.SHELVED, Optional.empty(), lines);

        assertThat(refusal(shop.stash().shelve(shop.view(), kit)).text())
                .isEqualTo("A legend has at most 1\u2009000 lines and this one has 1\u2009001. Nothing was saved. "
                        + "Is it another table?");
    }

    @Test
    void addsTheLinesUp_whenTwoShareADrill() {
        shop.shelve("Rope-walk", line("A", T1, 10, 20), line("B", T1, 30, 40));

        assertThat(shop.count(shop.bagNamed("Rope-walk"), T1)).isEqualTo(60);
        assertThat(shop.view().reserved(T1)).isEqualTo(60);
    }

    @Test
    void booksNoDrills_whenOnlyTheBookIsKept() {
        Settings onlyBook = new Settings(Settings.Depth.ONLY_THE_BOOK, "EUR", false);
        shop.apply(Result.ok(ChangeSet.named("Choose")
                .put(Settings.TYPE, Settings.ID, onlyBook)
                .build()));
        shop.shelve("Rope-walk", line("A", T1, 180, 200));

        assertThat(shop.view().spots()).isEmpty();
        assertThat(shop.view().all(Bag.TYPE)).isEmpty();
    }

    @Test
    void booksDrillsOnArrival_whenTheKitIsOnlyOrdered() {
        UUID piece = UUID.randomUUID();
        shop.apply(shop.stash()
                .shelve(shop.view(), kit(piece, "Crane", Standing.ORDERED, Optional.empty(), line("A", T1, 180, 200))));
        assertThat(shop.view().inTheHouse(T1)).isZero();

        shop.apply(shop.stash().setStanding(shop.view(), piece, Standing.SHELVED, Optional.empty()));
        assertThat(shop.count(shop.bagNamed("Crane"), T1)).isEqualTo(200);

        shop.apply(shop.stash().setStanding(shop.view(), piece, Standing.RESTING, Optional.empty()));
        assertThat(shop.view().inTheHouse(T1)).isEqualTo(200);
    }

    @Test
    void givesTheBagANameOfItsOwn_whenTheSameKitIsBoughtTwice() {
        shop.shelve("Rope-walk", line("A", T1, 180, 200));
        shop.shelve("Rope-walk", line("A", T1, 180, 200));

        assertThat(shop.count(shop.bagNamed("Rope-walk 2"), T1)).isEqualTo(200);
    }

    @Test
    void fillsGapsOnACard_andKeepsWhatWasKnown() {
        CardEntry known = new CardEntry(Optional.of("Sea"), Optional.of("#104060"), false);
        shop.apply(shop.stash().describe(shop.view(), "own", "T1", known));
        NewKit plain = kit(UUID.randomUUID(), "Ferry", Standing.SHELVED, Optional.empty(), line("A", T1, 1, 1));
        CardEntry told = new CardEntry(Optional.of("Ocean"), Optional.of("#ABCDEF"), true);
        NewKit kit = new NewKit(
                plain.id(), plain.kit(), plain.pieces(), Map.of("own", Map.of("T1", told, "T9", told)), List.of());
        List<String> warnings = shop.apply(shop.stash().shelve(shop.view(), kit));

        assertThat(ColourCard.entry(shop.view(), "own", "T1")).contains(known);
        assertThat(ColourCard.entry(shop.view(), "own", "T9").orElseThrow().hex())
                .contains("#abcdef");
        assertThat(warnings).containsExactly("own T1 is known as #104060, here it is #abcdef. What was known stays.");
    }

    @Test
    void makesACodeKnown_whenTheLegendIsTheFirstToUseIt() {
        shop.shelve("Rope-walk", line("A", T1, 180, 200));

        assertThat(ColourCard.entry(shop.view(), "own", "T1")).contains(CardEntry.UNKNOWN);
    }

    @Test
    void refusesAKitWithoutATitle() {
        NewKit kit = kit(UUID.randomUUID(), "  ", Standing.SHELVED, Optional.empty());

        assertThat(refusal(shop.stash().shelve(shop.view(), kit)).code()).isEqualTo("no-title");
    }

    @Test
    void refusesANegativeNeed_andNamesTheLine() {
        NewKit kit = kit(UUID.randomUUID(), "Crane", Standing.SHELVED, Optional.empty(), line("A", T1, -5, 10));

        assertThat(refusal(shop.stash().shelve(shop.view(), kit)).text())
                .isEqualTo("Line 1 (A T1) has an amount that can't be right. Nothing was saved.");
    }

    @Test
    void isUndoneWhole() {
        String before = shop.view().contentDigest();
        shop.shelve("Rope-walk", line("A", T1, 180, 200), silent("B", T2));
        shop.workshop().undo().orThrow();

        assertThat(shop.view().contentDigest()).isEqualTo(before);
        assertThat(shop.view().balance(Spot.SUPPLIER, T1).count()).isZero();
    }
}
