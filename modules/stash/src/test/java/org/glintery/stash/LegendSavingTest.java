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
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Source;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Picture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LegendSavingTest {

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
    void booksOnlyTheNewLine_whenTypingGoesOn() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        shop.apply(
                shop.stash().saveLegend(shop.view(), piece, List.of(line("A", T1, 180, 200), line("B", T2, 50, 60))));

        Spot bag = shop.bagNamed("Rope-walk");
        assertThat(shop.count(bag, T1)).isEqualTo(200);
        assertThat(shop.count(bag, T2)).isEqualTo(60);
    }

    @Test
    void keepsThePhotoOfTheLegend_whateverIsTyped() {
        UUID piece = shop.shelve("Rope-walk");
        Blob bytes = Blob.of("image/png", new byte[] {1, 2, 3});
        NewPicture photo = new NewPicture(new Picture(bytes.hash(), bytes.mediaType(), "legend.png"), bytes);
        shop.apply(shop.stash().keepLegendPhoto(shop.view(), piece, photo));
        assertThat(Legend.of(shop.view(), piece).photo()).contains(photo.picture());

        shop.apply(shop.stash().saveLegend(shop.view(), piece, List.of(line("A", T1, 180, 200))));

        assertThat(Legend.of(shop.view(), piece).lines()).hasSize(1);
        assertThat(Legend.of(shop.view(), piece).photo()).contains(photo.picture());
        assertThat(shop.view().blobs()).containsKey(bytes.hash());
        assertThat(refusal(shop.stash().keepLegendPhoto(shop.view(), UUID.randomUUID(), photo))
                        .code())
                .isEqualTo("no-piece");
    }

    @Test
    void booksTheFirstLines_whenTheLegendIsTypedAfterShelving() {
        UUID piece = shop.shelve("Rope-walk");
        shop.apply(shop.stash().saveLegend(shop.view(), piece, List.of(line("A", T1, 180, 200))));

        assertThat(shop.count(shop.bagNamed("Rope-walk"), T1)).isEqualTo(200);
        assertThat(shop.view().reserved(T1)).isEqualTo(200);
    }

    @Test
    void booksTheCorrectionAsLost_asFarAsDrillsAreThere() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        Spot elsewhere = shop.bag("spare", T1, 0);
        shop.apply(shop.stash()
                .move(shop.view(), DrillMovesTest.request(T1, shop.bagNamed("Rope-walk"), elsewhere, 150, false)));
        shop.apply(shop.stash().saveLegend(shop.view(), piece, List.of(line("A", T1, 180, 100))));

        assertThat(shop.count(shop.bagNamed("Rope-walk"), T1)).isZero();
        assertThat(shop.count(elsewhere, T1)).isEqualTo(150);
        assertThat(shop.view().reserved(T1)).isEqualTo(100);
    }

    @Test
    void replacesWhatWasNotCounted_whenTheAmountIsToldAtLast() {
        UUID piece = shop.shelve("Rope-walk", silent("A", T1));
        shop.apply(shop.stash().saveLegend(shop.view(), piece, List.of(line("A", T1, 180, 200))));

        assertThat(shop.view().balance(shop.bagNamed("Rope-walk"), T1)).isEqualTo(new Balance(200, 0, 0));
        assertThat(shop.view().reserved(T1)).isEqualTo(200);
    }

    @Test
    void keepsWhatWasBookedByTheBag_whenItsSourceTellsAnotherBagSizeLater() {
        UUID piece = UUID.randomUUID();
        shop.apply(shop.stash()
                .shelve(
                        shop.view(),
                        kit(piece, "Crane", Standing.SHELVED, Optional.of("Quay shop"), bags("A", T1, 2))));
        shop.apply(Result.ok(ChangeSet.named("Know a source")
                .put(Source.TYPE, Source.idOf("Quay shop"), new Source("Quay shop", 250))
                .build()));
        shop.apply(shop.stash().setStanding(shop.view(), piece, Standing.RESTING, Optional.empty()));
        assertThat(shop.count(shop.bagNamed("Crane"), T1)).isEqualTo(400);

        shop.apply(shop.stash().saveLegend(shop.view(), piece, List.of(line("A", T1, 380, 400))));
        assertThat(shop.count(shop.bagNamed("Crane"), T1)).isEqualTo(400);
        assertThat(shop.view().balance(Spot.LOST, T1).count()).isZero();
        assertThat(shop.view().reserved(T1)).isEqualTo(400);
    }

    @Test
    void booksTheSupplies_whenTheKitsBagIsThereAlready() {
        UUID piece = shop.shelve("Crane");
        UUID bag = UUID.randomUUID();
        shop.apply(Result.ok(ChangeSet.named("Overflow of a kit up")
                .create(Bag.TYPE, bag, new Bag("Crane", Optional.empty(), Optional.of(piece), Optional.empty()))
                .put(Legend.TYPE, piece, Legend.of(List.of(line("A", T1, 180, 200))))
                .build()));
        shop.apply(shop.stash().setStanding(shop.view(), piece, Standing.ON_THE_BENCH, Optional.empty()));

        assertThat(shop.count(new Spot.InBag(bag), T1)).isEqualTo(200);
    }

    @Test
    void bringsTheReservationBack_whenACodeIsWrittenAgain() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        shop.apply(shop.stash().saveLegend(shop.view(), piece, List.of()));
        assertThat(shop.view().reserved(T1)).isZero();
        shop.apply(shop.stash().saveLegend(shop.view(), piece, List.of(line("A", T1, 180, 200))));

        assertThat(shop.view().reserved(T1)).isEqualTo(200);
        assertThat(shop.view().inTheHouse(T1)).isEqualTo(200);
    }

    @Test
    void refusesATableThatIsNoLegend_andKeepsTheOld() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        var million = Collections.nCopies(1_000_000, line("A", T1, 1, 1));

        assertThat(refusal(shop.stash().saveLegend(shop.view(), piece, million)).code())
                .isEqualTo("too-long");
        assertThat(Legend.of(shop.view(), piece).lines()).hasSize(1);
    }

    @Test
    void refusesBagsThatComeToMoreThanAnyoneHas() {
        shop.apply(Result.ok(ChangeSet.named("Know a source")
                .put(Source.TYPE, Source.idOf("Quay shop"), new Source("Quay shop", 1_000_000))
                .build()));
        UUID piece = UUID.randomUUID();
        NewKit many = kit(piece, "Crane", Standing.SHELVED, Optional.of("Quay shop"), bags("A", T1, 10_000));
        assertThat(refusal(shop.stash().shelve(shop.view(), many)).code()).isEqualTo("out-of-range");
        NewKit few = kit(piece, "Crane", Standing.SHELVED, Optional.of("Quay shop"), bags("A", T1, 600));
        shop.apply(shop.stash().shelve(shop.view(), few));
        List<LegendLine> twice = List.of(bags("A", T1, 600), bags("B", T1, 600));
        assertThat(refusal(shop.stash().saveLegend(shop.view(), piece, twice)).code())
                .isEqualTo("out-of-range");
        List<LegendLine> needed = List.of(line("A", T1, Amount.MOST, 1), line("B", T1, Amount.MOST, 1));
        assertThat(refusal(shop.stash().saveLegend(shop.view(), piece, needed)).code())
                .isEqualTo("out-of-range");
    }

    @Test
    void refusesToTakeAKitIn_whenItsSourceTellsOfTooLargeABagMeanwhile() {
        UUID piece = UUID.randomUUID();
        shop.apply(shop.stash()
                .shelve(
                        shop.view(),
                        kit(piece, "Crane", Standing.ORDERED, Optional.of("Quay shop"), bags("A", T1, 10_000))));
        shop.apply(Result.ok(ChangeSet.named("Know a source")
                .put(Source.TYPE, Source.idOf("Quay shop"), new Source("Quay shop", 1_000_000))
                .build()));

        assertThat(refusal(shop.stash().setStanding(shop.view(), piece, Standing.SHELVED, Optional.empty()))
                        .code())
                .isEqualTo("out-of-range");
    }
}
