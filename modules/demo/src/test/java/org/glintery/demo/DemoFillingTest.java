package org.glintery.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import javax.imageio.ImageIO;
import org.glintery.api.Result;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Holder;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.glintery.demo.drills.DemoCard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.Lookup;

class DemoFillingTest {
    @TempDir
    Path temp;

    private Workshop filled(String name, long seed) {
        Workshop workshop =
                Lookup.getDefault().lookup(Workshops.class).create(temp.resolve(name)).orThrow();
        new DemoFilling().fill(workshop, seed).orThrow();
        return workshop;
    }

    @Test
    void holdsWhatTheScenarioNeeds() throws IOException {
        try (Workshop workshop = filled("a", 1)) {
            View view = workshop.view();
            assertThat(view.all(Kit.TYPE)).hasSizeGreaterThanOrEqualTo(30);
            Set<Standing> standings = EnumSet.noneOf(Standing.class);
            view.all(Piece.TYPE).forEach(piece -> standings.add(piece.value().standing()));
            assertThat(standings).containsExactlyInAnyOrder(Standing.values());
            assertThat(view.all(Holder.TYPE)).hasSize(6);
            assertThat(view.all(Finish.TYPE)).hasSize(14);
            assertThat(view.all(FramePlan.TYPE)).hasSizeGreaterThanOrEqualTo(8);
            assertThat(view.all(Sitting.TYPE)).hasSizeGreaterThan(80);
            assertThat(view.find(ColourCard.TYPE, ColourCard.idOf(DemoCard.NAME)).orElseThrow().value().entries())
                    .hasSize(120);
            assertThat(workshop.check().problems()).isEmpty();
            for (String hash : view.blobs().keySet()) {
                byte[] bytes = workshop.blob(hash).orElseThrow();
                assertThat(ImageIO.read(new ByteArrayInputStream(bytes))).isNotNull();
                assertThat(bytes.length).isLessThan(600_000);
            }
            if (System.getProperty("demo.pictures") != null) {
                Path folder = Files.createDirectories(Path.of(System.getProperty("demo.pictures")));
                for (String hash : view.blobs().keySet()) {
                    Files.write(folder.resolve(hash.substring(0, 8) + ".jpg"), workshop.blob(hash).orElseThrow());
                }
            }
        }
    }

    @Test
    void layMatchesTheLegend_onEveryMadePiece() {
        try (Workshop workshop = filled("a", 1)) {
            View view = workshop.view();
            int compared = 0;
            for (var piece : view.all(Piece.TYPE)) {
                Legend legend = Legend.of(view, piece.id());
                if (piece.value().standing() == Standing.MADE && !legend.lines().isEmpty()) {
                    compared++;
                    long laid = view.contents(new Spot.OnCanvas(piece.id())).values().stream()
                            .mapToLong(balance -> balance.count())
                            .sum();
                    assertThat(laid).isEqualTo(legend.needed().orElseThrow());
                }
            }
            assertThat(compared).isEqualTo(11);
        }
    }

    @Test
    void isTheSameForTheSameSeed_andAnotherForAnother() {
        try (Workshop first = filled("a", 1);
                Workshop second = filled("b", 1);
                Workshop third = filled("c", 2)) {
            assertThat(second.view().contentDigest()).isEqualTo(first.view().contentDigest());
            assertThat(third.view().contentDigest()).isNotEqualTo(first.view().contentDigest());
        }
    }

    @Test
    void refusesAWorkshopThatIsNotEmpty() {
        try (Workshop workshop = filled("a", 1)) {
            assertThat(new DemoFilling().fill(workshop, 1)).isInstanceOf(Result.Refused.class);
        }
    }
}
