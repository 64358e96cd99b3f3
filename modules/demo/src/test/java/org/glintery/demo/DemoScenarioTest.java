package org.glintery.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Holder;
import org.glintery.api.time.About;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.demo.drills.DemoCard;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What newcomers are to find in the demo, and that its sums agree. */
class DemoScenarioTest {
    private static final int MOST_PICTURE_BYTES = 400_000;

    @TempDir
    static Path temp;

    private static Workshop workshop;
    private static View view;

    @BeforeAll
    static void fill() {
        workshop = FilledDemo.filled(temp.resolve("demo"), FilledDemo.SEED);
        view = workshop.view();
    }

    @AfterAll
    static void close() {
        workshop.close();
    }

    private static Stored<Piece> piece(String title) {
        return view.all(Piece.TYPE).stream()
                .filter(piece -> piece.value().title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void passesTheWorkshopsOwnCheck() {
        assertThat(workshop.check().problems()).isEmpty();
        assertThat(workshop.check().movements()).isGreaterThan(1000);
    }

    @Test
    void holdsKitsInEveryStanding_aCaseForEachLetterAndAFullCard() {
        assertThat(view.all(Kit.TYPE)).hasSizeGreaterThanOrEqualTo(30);
        assertThat(view.all(Piece.TYPE))
                .extracting(piece -> piece.value().standing())
                .contains(Standing.values());
        assertThat(view.all(Holder.TYPE))
                .extracting(holder -> holder.value().name())
                .containsExactlyInAnyOrder("Case A", "Case B", "Case C", "Case D", "Case E", "Case F");
        assertThat(view.find(ColourCard.TYPE, ColourCard.idOf(DemoCard.NAME))
                        .orElseThrow()
                        .value()
                        .entries())
                .hasSize(120)
                .allSatisfy((code, entry) -> {
                    assertThat(entry.name()).isPresent();
                    assertThat(entry.hex()).isPresent();
                });
    }

    @Test
    void tellsFourteenFinishes_someUnscoredSomeOnlyATitleSomeForLater() {
        List<Finish> finishes =
                view.all(Finish.TYPE).stream().map(Stored::value).toList();
        assertThat(finishes).hasSize(14);
        assertThat(new HashSet<>(
                        finishes.stream().flatMap(f -> f.score().stream()).toList()))
                .contains(2, 3, 4, 5);
        assertThat(finishes).anyMatch(finish -> finish.score().isEmpty());
        assertThat(finishes).anyMatch(finish -> finish.equals(Finish.titled(finish.title(), Optional.empty())));
        assertThat(finishes).anyMatch(finish -> !finish.later().isEmpty());
        assertThat(view.all(FramePlan.TYPE))
                .extracting(plan -> plan.value().decision())
                .contains(FramePlan.Decision.FRAMED, FramePlan.Decision.NOT_FRAMED, FramePlan.Decision.NOT_DECIDED);
    }

    @Test
    void layExactlyWhatTheLegendNeeds_onEveryMadePiece() {
        int compared = 0;
        for (Stored<Piece> piece : view.all(Piece.TYPE)) {
            if (piece.value().standing() != Standing.MADE) {
                continue;
            }
            for (LegendLine line : Legend.of(view, piece.id()).lines()) {
                compared++;
                assertThat(view.balance(new Spot.OnCanvas(piece.id()), line.drill())
                                .count())
                        .as("%s, symbol %s", piece.value().title(), line.symbol())
                        .isEqualTo(line.needed().orElseThrow());
            }
        }
        assertThat(compared).isGreaterThan(200);
    }

    @Test
    void needsOneDrillForEveryCell_whereTheLegendSaysSo() {
        int compared = 0;
        for (Stored<Piece> piece : view.all(Piece.TYPE)) {
            var needed = Legend.of(view, piece.id()).needed();
            if (needed.isPresent()) {
                compared++;
                var canvas = piece.value().canvas();
                assertThat(needed.get())
                        .as(piece.value().title())
                        .isEqualTo((long) canvas.columns().orElseThrow()
                                * canvas.rows().orElseThrow());
            }
        }
        assertThat(compared).isGreaterThan(15);
    }

    @Test
    void keepsLegendsOfWhichLittleIsKnown() {
        List<LegendLine> bags = Legend.of(view, piece("Five oilskins").id()).lines();
        assertThat(bags)
                .isNotEmpty()
                .allMatch(line -> line.needed().isEmpty() && line.bags().isPresent());
        List<LegendLine> codes =
                Legend.of(view, piece("Crane at first light").id()).lines();
        assertThat(codes)
                .isNotEmpty()
                .allMatch(line -> line.needed().isEmpty() && line.bags().isEmpty());
    }

    @Test
    void sitsThroughSevenMonths_atMostOnceADayAtAPieceAndNeverAfterTheDemosDay() {
        List<Sitting> all = view.all(Sitting.TYPE).stream().map(Stored::value).toList();
        Set<String> days = new HashSet<>();
        for (Sitting sitting : all) {
            assertThat(days.add(sitting.piece() + " " + sitting.day()))
                    .as("%s twice", sitting.day())
                    .isTrue();
            sitting.startedAt()
                    .ifPresent(start -> assertThat(start.toLocalDate())
                            .isBetween(Calendar.FIRST_SITTING, LocalDate.of(2026, 11, 14)));
        }
        Set<Integer> months = new HashSet<>();
        all.forEach(sitting -> sitting.startedAt().ifPresent(start -> months.add(start.getMonthValue())));
        assertThat(months).contains(4, 5, 6, 7, 8, 9, 10, 11);
        assertThat(all).anyMatch(sitting -> sitting.laid().percent().isPresent());
        assertThat(all).anyMatch(sitting -> sitting.startedAt().isEmpty());
        assertThat(all).anyMatch(sitting -> sitting.pausedMinutes() > 0);
        assertThat(all).allMatch(sitting -> sitting.minutes().orElseThrow() <= 240);
    }

    @Test
    void overfillsNoPocket() {
        int filled = 0;
        for (Stored<Holder> holder : view.all(Holder.TYPE)) {
            for (var pocket : holder.value().pockets()) {
                var contents = view.contents(new Spot.InPocket(holder.id(), pocket.id()));
                filled += contents.isEmpty() ? 0 : 1;
                assertThat(contents.values().stream()
                                .mapToLong(balance -> balance.count())
                                .sum())
                        .isLessThanOrEqualTo(pocket.capacity().orElseThrow());
            }
        }
        assertThat(filled).isGreaterThan(100);
    }

    @Test
    void showsPicturesThatDecodeAndAreSmall() throws IOException {
        assertThat(view.blobs()).hasSizeGreaterThan(25);
        for (String hash : view.blobs().keySet()) {
            byte[] bytes = workshop.blob(hash).orElseThrow();
            assertThat(bytes.length).isLessThan(MOST_PICTURE_BYTES);
            var picture = ImageIO.read(new ByteArrayInputStream(bytes));
            assertThat(picture).isNotNull();
            assertThat(picture.getWidth()).isBetween(600, 850);
        }
    }

    @Test
    void booksEveryPiecesDrillsInOrder_suppliedThenKittedUpThenLaid() {
        UUID made = piece(Plot.LATEST).id();
        List<LocalDate> days = new ArrayList<>();
        Drill first = Legend.of(view, made).lines().get(0).drill();
        workshop.ledger(LedgerQuery.all(), entry -> {
            if (entry.action() instanceof LedgerAction.Movement movement
                    && movement.drill().equals(first)
                    && movement.reason().endsWith(Plot.LATEST)) {
                days.add(movement.happenedOn().flatMap(About::earliest).orElseThrow());
            }
        });
        assertThat(days).hasSizeGreaterThan(2).isSorted();
    }
}
