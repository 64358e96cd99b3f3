package org.glintery.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.storage.WorkshopInFolder.drill;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.storage.Storage.Whereabouts;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
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
    void namesEverySymbolOfTheDrill() {
        UUID holder = shop.holder("Case A", 2, Optional.empty());
        shop.kitUp(shop.piece("Rope-walk", 1_200), holder);
        assertThat(shop.storage().find(shop.view(), "t1"))
                .extracting(Whereabouts::words)
                .containsExactly("Case A, A1, symbol A: 1\u2009200");

        UUID crane = shop.piece("Crane", 100);
        Stored<Legend> legend = shop.view().find(Legend.TYPE, crane).orElseThrow();
        LegendLine line = legend.value().lines().get(0);
        List<LegendLine> twice = List.of(
                line, new LegendLine("#", line.drill(), line.needed(), line.supplied(), line.bags(), line.extras()));
        shop.apply(Result.ok(ChangeSet.named("A second symbol")
                .replace(Legend.TYPE, legend, legend.value().withLines(twice))
                .build()));
        shop.kitUp(crane, shop.holder("Case B", 1, Optional.empty()));
        assertThat(shop.storage().find(shop.view(), "#"))
                .extracting(Whereabouts::words)
                .containsExactly("Case B, A1, symbols A, #: 100");
    }

    @Test
    void leavesOutCanvasesAndBoundaries() {
        UUID piece = shop.piece("Rope-walk", 0);
        shop.move(drill(1), Spot.SUPPLIER, new Spot.OnCanvas(piece), 7);

        assertThat(shop.storage().find(shop.view(), "T1")).isEmpty();
    }
}
