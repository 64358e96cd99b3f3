package org.glintery.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.activework.Question;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.KitUp;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.Lookup;

/** The demo's bookings agree with each other, as if the services had made them. */
class DemoBookingsTest {
    private static final Set<Standing> IN_THE_HOUSE = Set.of(Standing.SHELVED, Standing.ON_THE_BENCH, Standing.RESTING);

    @TempDir
    static Path temp;

    private static Workshop workshop;
    private static View view;

    @BeforeAll
    static void fill() {
        workshop = Lookup.getDefault()
                .lookup(Workshops.class)
                .create(temp.resolve("demo"))
                .orThrow();
        new DemoFilling().fill(workshop, 7).orThrow();
        view = workshop.view();
    }

    @AfterAll
    static void close() {
        workshop.close();
    }

    @Test
    void setsAsideWhatCame_underTheIdThatTheStashLooksFor() {
        int counted = 0;
        for (Stored<Piece> piece : view.all(Piece.TYPE)) {
            boolean inTheHouse = IN_THE_HOUSE.contains(piece.value().standing());
            for (LegendLine line : Legend.of(view, piece.id()).lines()) {
                var aside = view.find(Reservation.TYPE, Reservation.idForPiece(piece.id(), line.drill()));
                if (!inTheHouse) {
                    assertThat(aside).as(piece.value().title()).isEmpty();
                } else if (line.supplied().known()) {
                    assertThat(aside.map(one -> one.value().count()))
                            .as("%s, %s", piece.value().title(), line.symbol())
                            .isEqualTo(line.supplied().count());
                    counted++;
                }
            }
        }
        assertThat(counted).isGreaterThan(80);
    }

    @Test
    void setsAsideNoMoreThanTheHouseHolds() {
        Map<Drill, Long> aside = new HashMap<>();
        view.all(Reservation.TYPE)
                .forEach(one -> aside.merge(one.value().drill(), one.value().count(), Long::sum));
        assertThat(aside).hasSizeGreaterThan(20);
        aside.keySet()
                .forEach(drill ->
                        assertThat(view.available(drill)).as(drill.code()).isNotNegative());
    }

    @Test
    void hasDrillsInEverySeatOfAKitUp_unlessItWaitsToBeCleared() {
        int looked = 0;
        for (Stored<KitUp> kitUp : view.all(KitUp.TYPE)) {
            for (KitUp.Seat seat : kitUp.value().seats()) {
                if (!kitUp.value().toClear()) {
                    assertThat(view.contents(seat.spot()))
                            .as("%s of %s", seat.symbol(), kitUp.id())
                            .containsKey(seat.drill());
                    looked++;
                }
            }
        }
        assertThat(looked).isGreaterThan(50);
    }

    @Test
    void laysInSittingsWhatThePieceTakes_forMadePieces() {
        Map<UUID, Long> laid = new HashMap<>();
        view.all(Sitting.TYPE)
                .forEach(sitting -> sitting.value()
                        .laid()
                        .drills()
                        .ifPresent(drills -> laid.merge(sitting.value().piece(), drills, Long::sum)));
        int compared = 0;
        for (Map.Entry<UUID, Long> one : laid.entrySet()) {
            long needed = Legend.of(view, one.getKey()).needed().orElseThrow();
            if (standing(one.getKey()) == Standing.MADE) {
                assertThat(one.getValue()).isEqualTo(needed);
                compared++;
            } else {
                assertThat(one.getValue()).isPositive().isLessThan(needed);
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(3);
    }

    @Test
    void keepsItsDatesInOrder() {
        int compared = 0;
        for (Stored<Sitting> sitting : view.all(Sitting.TYPE)) {
            Optional<LocalDate> day = sitting.value().startedAt().map(start -> start.toLocalDate());
            if (day.isEmpty()) {
                continue;
            }
            Piece piece =
                    view.find(Piece.TYPE, sitting.value().piece()).orElseThrow().value();
            Kit kit =
                    view.find(Kit.TYPE, piece.kit().orElseThrow()).orElseThrow().value();
            assertThat(first(kit.orderedOn())).isBefore(first(kit.arrivedOn()));
            assertThat(day.get()).isAfter(first(kit.arrivedOn())).isBefore(Calendar.TODAY);
            view.find(Finish.TYPE, sitting.value().piece()).ifPresent(finish -> {
                assertThat(day.get()).isAfterOrEqualTo(first(finish.value().startedOn()));
                assertThat(day.get())
                        .isBeforeOrEqualTo(finish.value()
                                .finishedOn()
                                .flatMap(About::latest)
                                .orElseThrow());
            });
            compared++;
        }
        assertThat(compared).isGreaterThan(80);
    }

    @Test
    void runsTheRelayForSevenMonths_withNineSectionsAndOneRested() {
        Stored<Piece> relay = titled(Plot.RELAY);
        assertThat(relay.value().sections()).contains(9);
        List<Sitting> sittings = view.all(Sitting.TYPE).stream()
                .map(Stored::value)
                .filter(sitting -> sitting.piece().equals(relay.id()))
                .toList();
        assertThat(sittings.stream()
                        .mapToInt(sitting -> sitting.laid().sections().orElse(0))
                        .sum())
                .isEqualTo(6);
        assertThat(sittings.stream()
                        .flatMap(sitting -> sitting.startedAt().stream())
                        .map(start -> start.getMonth())
                        .distinct())
                .hasSizeGreaterThanOrEqualTo(7);
    }

    @Test
    void hasOnlySquarePearl_inAShadeThatARoundPieceAsksFor() {
        List<Drill> pearl = view.spots().stream()
                .flatMap(spot -> view.contents(spot).keySet().stream())
                .filter(drill -> drill.coating() == Coating.PEARL)
                .distinct()
                .toList();
        assertThat(pearl).extracting(Drill::shape).containsExactly(Shape.SQUARE);
        Stored<Piece> lit = titled(Plot.LIT);
        assertThat(Legend.of(view, lit.id()).lines())
                .extracting(line -> line.drill().code())
                .contains(pearl.get(0).code());
        assertThat(lit.value().drillShape()).contains(Shape.ROUND);
    }

    @Test
    void asksItsOpenQuestions_andPinsThemToAPicture() {
        List<Question> open = view.all(Question.TYPE).stream()
                .map(Stored::value)
                .filter(question -> question.answer().isEmpty())
                .toList();
        assertThat(open).hasSizeGreaterThanOrEqualTo(4);
        for (Question question : open) {
            assertThat(view.blobs()).containsKey(question.pin().orElseThrow().picture());
        }
    }

    @Test
    void keepsRepairPacketsAndLeftovers() {
        assertThat(view.all(Bag.TYPE).stream()
                        .filter(bag -> bag.value().repairFor().isPresent()))
                .hasSizeGreaterThanOrEqualTo(3)
                .allSatisfy(bag ->
                        assertThat(view.contents(new Spot.InBag(bag.id()))).isNotEmpty());
    }

    @Test
    void writesCodesWithACheckLetter_eachOnce() {
        var entries = view.find(ColourCard.TYPE, ColourCard.idOf("slipway"))
                .orElseThrow()
                .value()
                .entries();
        assertThat(entries.keySet()).hasSize(120).allMatch(code -> code.matches("[0-9][A-Z][0-9]-[A-HJ-NPR-Z]"));
        assertThat(entries.values())
                .allSatisfy(entry -> assertThat(entry.name()).isPresent());
    }

    private static LocalDate first(Optional<About> on) {
        return on.flatMap(About::earliest).orElseThrow();
    }

    private static Standing standing(UUID piece) {
        return view.find(Piece.TYPE, piece).orElseThrow().value().standing();
    }

    private static Stored<Piece> titled(String title) {
        return view.all(Piece.TYPE).stream()
                .filter(piece -> piece.value().title().equals(title))
                .findFirst()
                .orElseThrow();
    }
}
