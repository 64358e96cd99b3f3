package org.glintery.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.glintery.api.Result;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.MemoryWorkshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoFillingTest {
    @TempDir
    Path temp;

    @Test
    void isTheSameForTheSameSeed_andAnotherForAnother() {
        try (Workshop first = FilledDemo.filled(temp.resolve("a"), 1);
                Workshop second = FilledDemo.filled(temp.resolve("b"), 1);
                Workshop third = FilledDemo.filled(temp.resolve("c"), 2)) {
            assertThat(second.view().contentDigest()).isEqualTo(first.view().contentDigest());
            assertThat(third.view().contentDigest()).isNotEqualTo(first.view().contentDigest());
        }
    }

    @Test
    void refusesAndChangesNothing_whenTheWorkshopIsNotEmpty() {
        try (Workshop workshop = FilledDemo.filled(temp.resolve("a"), FilledDemo.SEED)) {
            String before = workshop.view().contentDigest();
            assertThat(new DemoFilling().fill(workshop, 2))
                    .isInstanceOfSatisfying(
                            Result.Refused.class,
                            refused -> assertThat(refused.refusal().code()).isEqualTo("not-empty"));
            assertThat(workshop.view().contentDigest()).isEqualTo(before);
        }
    }

    @Test
    void changesNothing_whenItIsStoppedHalfWay() {
        try (Workshop workshop = FilledDemo.empty(temp.resolve("a"))) {
            String before = workshop.view().contentDigest();
            AtomicInteger asked = new AtomicInteger();

            assertThat(new DemoFilling().fill(workshop, 2, share -> asked.incrementAndGet() < 3))
                    .isInstanceOfSatisfying(
                            Result.Refused.class,
                            refused -> assertThat(refused.refusal().code()).isEqualTo("left"));

            assertThat(asked).hasValueLessThan(Plot.pieces().size());
            assertThat(workshop.view().contentDigest()).isEqualTo(before);
        }
    }

    @Test
    void tellsHowFarItIs_upToTheWhole() {
        List<Double> shares = new CopyOnWriteArrayList<>();
        try (Workshop workshop = FilledDemo.empty(temp.resolve("a"))) {
            new DemoFilling().fill(workshop, 2, shares::add).orThrow();
        }
        assertThat(shares).hasSize(Plot.pieces().size()).contains(1.0).allMatch(share -> share > 0 && share <= 1);
    }

    @Test
    void marksTheWorkshopAsDemo_alsoWhenADepthWasChosenBefore() {
        try (Workshop workshop = FilledDemo.empty(temp.resolve("a"))) {
            workshop.apply(ChangeSet.named("Choose")
                            .put(Settings.TYPE, Settings.ID, Settings.USUAL)
                            .build())
                    .orThrow();
            new DemoFilling().fill(workshop, FilledDemo.SEED).orThrow();
            assertThat(Settings.of(workshop.view()).orElseThrow().demo()).isTrue();
        }
    }

    @Test
    void fillsAWorkshopInMemoryAlike() {
        try (Workshop onDisk = FilledDemo.filled(temp.resolve("a"), FilledDemo.SEED);
                Workshop inMemory = MemoryWorkshop.withDemo(FilledDemo.SEED)) {
            assertThat(inMemory.view().documents()).containsExactlyElementsOf(documents(onDisk));
            assertThat(inMemory.view().blobs()).isEqualTo(onDisk.view().blobs());
            assertThat(inMemory.view().spots()).isEqualTo(onDisk.view().spots());
            for (Spot spot : onDisk.view().spots()) {
                assertThat(inMemory.view().contents(spot))
                        .isEqualTo(onDisk.view().contents(spot));
            }
        }
    }

    private static List<RawDocument> documents(Workshop workshop) {
        return workshop.view().documents().toList();
    }
}
