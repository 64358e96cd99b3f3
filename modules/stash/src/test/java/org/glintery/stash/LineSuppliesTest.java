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
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.LineSupply;
import org.glintery.api.storage.Bag;
import org.glintery.api.workshop.ChangeSet;
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

    @Test
    void looksPastRepairPackets_forWhatIsAtHandAndForWhatWasNeverCounted() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 500, 200));
        UUID packet = new UUID(9, 9);
        shop.apply(Result.ok(ChangeSet.named("Keep for repairs")
                .create(
                        Bag.TYPE,
                        packet,
                        new Bag("Repair packet", Optional.empty(), Optional.empty(), Optional.of(piece)))
                .post(kept(packet, Amount.counted(30)))
                .post(kept(packet, Amount.unknown()))
                .build()));

        assertThat(supplies(piece).get(0).atHand()).isEqualTo(200);
        assertThat(supplies(piece).get(0).uncounted()).isFalse();
        assertThat(supplies(piece).get(0).missing()).contains(300L);
    }

    private static LedgerAction.Movement kept(UUID packet, Amount amount) {
        return LedgerAction.Movement.of(
                UUID.randomUUID(), T1, Spot.SUPPLIER, new Spot.InBag(packet), amount, "for repairs");
    }
}
