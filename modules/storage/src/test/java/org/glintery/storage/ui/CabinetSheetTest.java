package org.glintery.storage.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.storage.WorkshopInFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CabinetSheetTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private CabinetSheet.HolderDrawing only() {
        return CabinetSheet.of(shop.view()).holders().get(0);
    }

    @Test
    void fillsAPocketByItsShareOfTheCapacity() {
        UUID holder = shop.holder("Case A", 2, Optional.of(400L));
        shop.kitUp(shop.piece("Rope-walk", 100), holder);

        assertThat(only().pockets().get(0).level()).isEqualTo(0.25);
        assertThat(only().pockets().get(0).guessed()).isFalse();
        assertThat(only().pockets().get(0).symbols()).containsExactly("A");
        assertThat(only().pockets().get(1).level()).isZero();
    }

    @Test
    void guessesTheLevel_whereNobodyCounted() {
        UUID holder = shop.holder("Case A", 1, Optional.of(400L));
        shop.kitUp(shop.piece("Rope-walk", Amount.unknown()), holder);

        assertThat(only().pockets().get(0).guessed()).isTrue();
        assertThat(CabinetWords.pocket(only().pockets().get(0))).isEqualTo("A1: some, not counted yet of T1. Symbol A");
    }

    @Test
    void tellsWhoSitsInAHolder() {
        UUID holder = shop.holder("Case A", 1, Optional.empty());
        assertThat(CabinetWords.state(only())).isEqualTo("free");

        shop.apply(HolderEdits.named(shop.view(), shop.storage(), holder, "Case A", "the club"));
        assertThat(CabinetWords.state(only())).isEqualTo("empty, lent to the club");

        UUID piece = shop.piece("Rope-walk", 100);
        shop.kitUp(piece, holder);
        assertThat(CabinetWords.state(only())).isEqualTo("Rope-walk, lent to the club");
    }

    @Test
    void leavesOutEmptyBags() {
        shop.bag("nothing in it");
        shop.piece("Rope-walk", 100);

        assertThat(CabinetSheet.of(shop.view()).bags())
                .extracting(CabinetSheet.BagLine::name)
                .containsExactly("Rope-walk");
    }

    @Test
    void tellsTheFirstFewOfABag_andHowManyMore() {
        shop.piece("Rope-walk", 500, 400, 300, 200, 100);

        assertThat(CabinetWords.bag(CabinetSheet.of(shop.view()).bags().get(0)))
                .startsWith("Rope-walk: 500 of ")
                .endsWith("; and 2 more");
    }
}
