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
import org.glintery.api.ledger.Balance;
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
            assertThat(supply.atHand()).isEqualTo(sure(200));
            assertThat(supply.missing()).contains(sure(300));
        });
    }

    private static Balance sure(long count) {
        return new Balance(count, 0, 0);
    }

    @Test
    void keepsWhatIsUnsure_inWhatIsAtHandAndMissing() {
        LegendLine line = new LegendLine("A", T1, Optional.of(1_240L), Amount.unknown(), Optional.of(2), Map.of());
        UUID piece = shop.shelve("Rope-walk", line);
        shop.apply(shop.stash()
                .stocktake(shop.view(), shop.bag("spare", T1, 0), T1, Amount.rough(100, 10), Optional.empty()));

        // two bags are sure to 0.05 * 400 / sqrt(2) = 14 drills, and 14 and 10 in quadrature come to 17
        assertThat(supplies(piece).get(0).atHand()).isEqualTo(new Balance(500, 14 * 14 + 10 * 10, 0));
        assertThat(supplies(piece).get(0).atHand().words()).isEqualTo("about 500 (±17)");
        assertThat(supplies(piece).get(0).missing().orElseThrow().words()).isEqualTo("about 740 (±17)");
    }

    @Test
    void isOnlyPerhapsEnough_whenLessIsLeftOverThanItIsUnsure() {
        LegendLine line = new LegendLine("A", T1, Optional.of(390L), Amount.unknown(), Optional.of(2), Map.of());
        LegendLine plenty = new LegendLine("B", T2, Optional.of(300L), Amount.unknown(), Optional.of(2), Map.of());
        List<LineSupply> supplies = supplies(shop.shelve("Rope-walk", line, plenty));

        // two bags hold 400 and are sure to 14 drills
        assertThat(supplies.get(0).missing().orElseThrow().words()).isEqualTo("about 0 (±14)");
        assertThat(supplies.get(1).missing()).contains(Balance.ZERO);
    }

    @Test
    void leavesMissingOpen_whenSomeWereLaidUncounted() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 500, 200));
        shop.apply(Result.ok(ChangeSet.named("Lay some")
                .post(LedgerAction.Movement.of(
                        UUID.randomUUID(), T1, Spot.SUPPLIER, new Spot.OnCanvas(piece), Amount.unknown(), "laid"))
                .build()));

        assertThat(supplies(piece).get(0).missing()).isEmpty();
    }

    @Test
    void countsLeftovers_butNotWhatIsSetAsideForOthers() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 500, 200));
        shop.shelve("Net loft", line("A", T1, 100, 150));
        shop.bag("leftovers", T1, 40);

        assertThat(supplies(piece).get(0).atHand()).isEqualTo(sure(240));
        assertThat(supplies(piece).get(0).missing()).contains(sure(260));
    }

    @Test
    void tellsOfLinesThatShareADrillOnce_onTheFirst() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 100, 50), line("B", T2, 1, 1), line("C", T1, 100, 50));

        assertThat(supplies(piece)).extracting(LineSupply::index).containsExactly(0, 1);
        assertThat(supplies(piece).get(0).missing()).contains(sure(100));
    }

    @Test
    void leavesMissingOpen_whenSomeWereNeverCounted() {
        LegendLine line = new LegendLine("A", T1, Optional.of(100L), Amount.unknown(), Optional.empty(), Map.of());
        UUID piece = shop.shelve("Rope-walk", line);

        assertThat(supplies(piece).get(0).atHand()).isEqualTo(new Balance(0, 0, 1));
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

        assertThat(supplies(piece).get(0).atHand()).isEqualTo(sure(200));
        assertThat(supplies(piece).get(0).missing()).contains(sure(300));
    }

    private static LedgerAction.Movement kept(UUID packet, Amount amount) {
        return LedgerAction.Movement.of(
                UUID.randomUUID(), T1, Spot.SUPPLIER, new Spot.InBag(packet), amount, "for repairs");
    }
}
