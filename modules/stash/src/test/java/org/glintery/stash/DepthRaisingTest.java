package org.glintery.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.T2;
import static org.glintery.stash.WorkshopInFolder.kit;
import static org.glintery.stash.WorkshopInFolder.line;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Settings.Depth;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DepthRaisingTest {
    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
        choose(Depth.ONLY_THE_BOOK);
    }

    private void choose(Depth depth) {
        ChangeSet.Builder change = ChangeSet.named("Choose");
        Settings.choose(change, shop.view(), depth);
        shop.workshop().apply(change.build()).orThrow();
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void booksWhatCameWithPiecesInTheHouse_andWithNoOthers() {
        UUID shelved = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        shop.apply(shop.stash()
                .shelve(
                        shop.view(),
                        kit(UUID.randomUUID(), "Net loft", Standing.MADE, Optional.empty(), line("B", T2, 50, 60))));
        assertThat(shop.view().spots()).isEmpty();

        assertThat(shop.apply(shop.stash().keepDrills(shop.view()))).isEmpty();

        assertThat(Settings.keepsDrills(shop.view())).isTrue();
        Spot bag = shop.bagNamed("Rope-walk");
        assertThat(shop.count(bag, T1)).isEqualTo(200);
        assertThat(shop.view().reserved(T1)).isEqualTo(200);
        assertThat(shop.view().inTheHouse(T2)).isZero();
        assertThat(shop.view().find(SuppliesBooked.TYPE, shelved)).isPresent();
    }

    @Test
    void sharesOutADrillThatCameWithTwoPieces() {
        shop.shelve("Rope-walk", line("A", T1, 180, 200));
        shop.shelve("Signal flags", line("A", T1, 90, 100));
        shop.apply(shop.stash().keepDrills(shop.view()));
        assertThat(shop.view().inTheHouse(T1)).isEqualTo(300);
        assertThat(shop.view().reserved(T1)).isEqualTo(300);
        assertThat(shop.workshop().check().problems()).isEmpty();
    }

    @Test
    void booksOnlyWhatIsNew_whenDrillsWereKeptBefore() {
        choose(Depth.DRILLS_AS_WELL);
        shop.shelve("Rope-walk", line("A", T1, 180, 200));
        choose(Depth.ONLY_THE_BOOK);
        shop.shelve("Signal flags", line("B", T2, 50, 60));
        shop.apply(shop.stash().keepDrills(shop.view()));
        assertThat(shop.view().inTheHouse(T1)).isEqualTo(200);
        assertThat(shop.view().inTheHouse(T2)).isEqualTo(60);
    }

    @Test
    void changesNothing_whenDrillsAreKept() {
        choose(Depth.DRILLS_AS_WELL);
        long before = shop.view().revision();
        shop.apply(shop.stash().keepDrills(shop.view()));
        assertThat(shop.view().revision()).isEqualTo(before);
    }
}
