package org.glintery.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.T2;
import static org.glintery.stash.WorkshopInFolder.line;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.LineSupply;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LineSuppliesTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private List<LineSupply> supplies(UUID piece) {
        return shop.stash().supplies(shop.view(), piece);
    }

    @Test
    void tellsWhatIsMissing_beyondWhatIsAtHand() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 500, 200));

        assertThat(supplies(piece)).singleElement().satisfies(supply -> {
            assertThat(supply.atHand()).isEqualTo(200);
            assertThat(supply.missing()).contains(300L);
        });
    }

    @Test
    void countsLeftovers_butNotWhatIsSetAsideForOthers() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 500, 200));
        shop.shelve("Net loft", line("A", T1, 100, 150));
        shop.bag("leftovers", T1, 40);

        assertThat(supplies(piece).get(0).atHand()).isEqualTo(240);
        assertThat(supplies(piece).get(0).missing()).contains(260L);
    }

    @Test
    void tellsOfLinesThatShareADrillOnce_onTheFirst() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 100, 50), line("B", T2, 1, 1), line("C", T1, 100, 50));

        assertThat(supplies(piece)).extracting(LineSupply::index).containsExactly(0, 1);
        assertThat(supplies(piece).get(0).missing()).contains(100L);
    }

    @Test
    void leavesMissingOpen_whenSomeWereNeverCounted() {
        LegendLine line = new LegendLine("A", T1, Optional.of(100L), Amount.unknown(), Optional.empty(), Map.of());
        UUID piece = shop.shelve("Rope-walk", line);

        assertThat(supplies(piece).get(0).uncounted()).isTrue();
        assertThat(supplies(piece).get(0).missing()).isEmpty();
    }
}
