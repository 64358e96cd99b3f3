package org.glintery.framing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FrameDepth;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.workshop.ChangeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Heights of drills, cloth and backing: common practice, no published source. */
class RebateSumTest {
    private FrameShop shop;
    private UUID piece;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = FrameShop.at(folder);
        piece = shop.made("Rope-walk", 400, 600);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void countsTheTallestDrill_notTheMost() {
        legend(drill(Shape.ROUND, Body.RESIN), drill(Shape.ROUND, Body.RESIN), drill(Shape.ROUND, Body.CRYSTAL));

        FrameDepth depth = depth(Glazing.NONE, 15);

        assertThat(depth.drillMm()).isEqualTo(2.5);
        assertThat(depth.neededMm()).isEqualTo(2.5 + 0.5 + 3);
        assertThat(depth.shortMm()).isEmpty();
    }

    @Test
    void aSpacerStandsBesideTheDrills_soThatTheyAreNotCountedTwice() {
        FrameDepth depth = depth(Glazing.usual(Glazing.Material.GLASS), 7);

        assertThat(depth.spacerMm()).isEqualTo(1.5 + 1.5);
        assertThat(depth.neededMm()).isEqualTo(2 + 3 + 0.5 + 3);
        assertThat(depth.shortMm()).contains(1.5);
    }

    @Test
    void aRebateThatWasNotTold_isNotTakenForNone() {
        FrameDepth depth = depth(Glazing.usual(Glazing.Material.GLASS), 0);

        assertThat(depth.rebateMm()).isEmpty();
        assertThat(depth.shortMm()).isEmpty();
    }

    private FrameDepth depth(Glazing glazing, double rebateMm) {
        FramePlan usual = FramePlan.decided(Decision.FRAMED, "");
        FramePlan plan = new FramePlan(
                usual.decision(),
                usual.artworkWidthMm(),
                usual.artworkHeightMm(),
                Optional.of(new Moulding("", 20, 5, rebateMm)),
                usual.allowanceMm(),
                usual.kerfMm(),
                glazing,
                usual.livesAt(),
                usual.place(),
                usual.decidedOn(),
                usual.notes());
        return shop.framing().depth(shop.view(), piece, plan);
    }

    private void legend(Drill... drills) {
        List<LegendLine> lines = List.of(drills).stream()
                .map(drill ->
                        new LegendLine("A", drill, Optional.of(100L), Amount.unknown(), Optional.empty(), Map.of()))
                .toList();
        shop.apply(Result.ok(ChangeSet.named("Legend")
                .create(Legend.TYPE, piece, Legend.of(lines))
                .build()));
    }

    private static Drill drill(Shape shape, Body body) {
        return new Drill(shape, 280, body, Coating.NONE, Optional.empty(), "own", "T1");
    }
}
