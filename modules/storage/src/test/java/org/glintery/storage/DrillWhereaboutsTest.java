package org.glintery.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.storage.WorkshopInFolder.drill;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Storage.Whereabouts;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillWhereaboutsTest {

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
    void findsByCode_mostFirst() {
        Spot few = shop.bag("few");
        Spot many = shop.bag("many");
        shop.move(drill(1), Spot.SUPPLIER, few, 5);
        shop.move(drill(1), Spot.SUPPLIER, many, 50);

        assertThat(shop.storage().find(shop.view(), "t1"))
                .extracting(Whereabouts::words)
                .containsExactly("bag many: 50", "bag few: 5");
    }

    @Test
    void findsByTheSymbolOfAPieceThatIsKittedUp() {
        UUID holder = shop.holder("Case A", 2, Optional.empty());
        shop.kitUp(shop.piece("Rope-walk", 200, 100), holder);

        assertThat(shop.storage().find(shop.view(), "b"))
                .extracting(Whereabouts::spot)
                .containsExactly(shop.pocket(holder, 1));
    }

    @Test
    void leavesOutCanvasesAndBoundaries() {
        UUID piece = shop.piece("Rope-walk", 0);
        shop.move(drill(1), Spot.SUPPLIER, new Spot.OnCanvas(piece), 7);

        assertThat(shop.storage().find(shop.view(), "T1")).isEmpty();
    }
}
