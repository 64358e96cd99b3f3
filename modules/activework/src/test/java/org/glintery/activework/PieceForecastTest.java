package org.glintery.activework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.TODAY;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Laid;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PieceForecastTest {

    private static final LocalDate FIRST = LocalDate.of(2025, 4, 1);

    private BenchShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Forecast forecast(UUID piece) {
        return shop.bench().forecast(shop.view(), piece, TODAY);
    }

    /** So many sittings of so many drills each, from a day on, one every so many days. */
    private void sitEvery(UUID piece, LocalDate from, int sittings, int everyDays, long drills) {
        for (int i = 0; i < sittings; i++) {
            shop.sit(piece, About.on(from.plusDays((long) i * everyDays)), Laid.drills(drills));
        }
    }

    @Test
    void anEvenPaceEndsOnADay() {
        // 31 days of 100 drills from 1 April to 1 May, and today not over: 6 900 more take 69 days from 2 May on
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(piece, FIRST, 31, 1, 100);
        Forecast forecast = forecast(piece);

        assertThat(forecast.early()).contains(LocalDate.of(2025, 7, 9));
        assertThat(forecast.late()).contains(LocalDate.of(2025, 7, 9));
        assertThat(forecast.rough()).isFalse();
        assertThat(forecast.words()).isEqualTo("early July");
    }

    @Test
    void aSittingTodayCounts_andTheRestBeginsTomorrow() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(piece, FIRST, 32, 1, 100);

        assertThat(forecast(piece).likely()).contains(TODAY.plusDays(68));
    }

    @Test
    void daysWithoutASittingSlowItDown_andWidenTheAnswer() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(piece, FIRST, 11, 3, 300);
        Forecast forecast = forecast(piece);

        assertThat(forecast.early().orElseThrow()).isBefore(forecast.likely().orElseThrow());
        assertThat(forecast.likely().orElseThrow()).isBefore(forecast.late().orElseThrow());
        // a third of the days at 300 is 100 a day: 6 700 more take about 67 days
        assertThat(forecast.likely().orElseThrow()).isBetween(TODAY.plusDays(50), TODAY.plusDays(90));
        assertThat(forecast.words()).startsWith("between ").doesNotContain("2025");
        assertThat(forecast.howWeKnow())
                .contains("3\u2009300 of 10\u2009000 drills")
                .contains("Since 1 April 2025 there was work on 11 days, and none on 20.");
    }

    @Test
    void percentAndSectionsDoAsWell_withoutKnowingTheWhole() {
        UUID piece = shop.inSections("Rope-walk", 10);
        for (int i = 0; i < 5; i++) {
            shop.sit(piece, About.on(TODAY.minusDays(5 - i)), i % 2 == 0 ? Laid.sections(1) : Laid.percent(10));
        }
        Forecast forecast = forecast(piece);

        assertThat(forecast.likely())
                .hasValueSatisfying(day -> assertThat(day).isBetween(TODAY.plusDays(4), TODAY.plusDays(5)));
        assertThat(forecast.howWeKnow()).startsWith("About 50 percent is laid.");
    }

    @Test
    void aSittingWithoutAnExactDayCountsAsProgress_butNotForThePace() {
        UUID dated = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(dated, FIRST, 31, 1, 100);
        UUID partly = shop.canvas("Net loft", 100, 100, Optional.empty());
        sitEvery(partly, FIRST, 31, 1, 100);
        shop.sit(partly, About.edtf("2024").orElseThrow(), Laid.drills(3_400));

        assertThat(forecast(partly).likely())
                .contains(forecast(dated).likely().orElseThrow().minusDays(34));
    }

    @Test
    void aDayOnWhichNobodySaidHowMuchIsNeitherWorkNorIdle() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(piece, FIRST, 31, 1, 100);
        UUID silent = shop.canvas("Net loft", 100, 100, Optional.empty());
        sitEvery(silent, FIRST, 30, 1, 100);
        shop.sit(silent, About.on(FIRST.plusDays(30)), Laid.NOT_SAID);

        // 7 000 left instead of 6 900, at the same pace
        assertThat(forecast(silent).likely())
                .contains(forecast(piece).likely().orElseThrow().plusDays(1));
    }

    @Test
    void everySittingIsADayOfWork_whereASectionIsToldWhenItIsDone() {
        UUID piece = shop.inSections("Ferry", 10);
        for (int day = 0; day < 30; day++) {
            shop.sit(piece, About.on(FIRST.plusDays(day)), day % 6 == 5 ? Laid.sections(1) : Laid.NOT_SAID);
        }
        Forecast forecast = forecast(piece);

        assertThat(forecast.howWeKnow()).contains("there was work on 30 days, and none on 1.");
        // a sixth of a section on each of 30 days, then an idle one: five sections take 31 days more, give or take few
        assertThat(forecast.likely().orElseThrow()).isBetween(TODAY.plusDays(29), TODAY.plusDays(33));
        assertThat(forecast.early().orElseThrow()).isAfter(TODAY.plusDays(25));
        assertThat(forecast.late().orElseThrow()).isBefore(TODAY.plusDays(40));
    }

    @Test
    void saysAbout_whereWhatIsLaidIsWorkedOut() {
        UUID piece = shop.canvas("Ferry", 100, 100, Optional.of(4));
        shop.sit(piece, About.on(FIRST), Laid.sections(1));

        assertThat(forecast(piece).howWeKnow()).startsWith("About 2\u2009500 of 10\u2009000 drills are laid.");
    }

    @Test
    void aSittingInSectionsOfAPieceWithoutAny_leavesTheForecastOfTheOthers() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(piece, FIRST, 31, 1, 100);
        Optional<LocalDate> before = forecast(piece).likely();
        shop.keptSitting(piece, About.on(FIRST.plusDays(30)), Laid.sections(3));

        assertThat(forecast(piece).likely()).isPresent().isEqualTo(before);
    }

    @Test
    void twoDaysOfWorkAreOnlyAGuess() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(piece, TODAY.minusDays(2), 2, 1, 1_000);

        assertThat(forecast(piece).rough()).isTrue();
        assertThat(forecast(piece).words()).startsWith("perhaps ");
        assertThat(forecast(piece).howWeKnow()).contains("guess");
    }

    @Test
    void theYearIsSaid_whenItIsNotThisOne() {
        UUID piece = shop.canvas("Rope-walk", 200, 200, Optional.empty());
        sitEvery(piece, FIRST, 31, 1, 100);

        assertThat(forecast(piece).words()).contains("2026");
    }

    @Test
    void saysWhatIsMissing_whenNothingCanBeSaid() {
        UUID untouched = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        assertThat(forecast(untouched).words()).contains("before the first sitting");

        UUID noTotal = shop.piece("Net loft", Standing.SHELVED);
        shop.sit(noTotal, About.on(FIRST), Laid.drills(100));
        assertThat(forecast(noTotal).words()).contains("how many drills the whole takes");

        UUID noSections = shop.piece("Signal flags", Standing.SHELVED);
        shop.keptSitting(noSections, About.on(FIRST), Laid.sections(1));
        assertThat(forecast(noSections).words()).contains("how many sections");

        UUID silent = shop.canvas("Ferry", 100, 100, Optional.empty());
        shop.sit(silent, About.on(FIRST), Laid.NOT_SAID);
        assertThat(forecast(silent).words()).contains("no sitting tells how much");

        UUID undated = shop.canvas("Crane", 100, 100, Optional.empty());
        shop.sit(undated, About.edtf("2024").orElseThrow(), Laid.drills(100));
        assertThat(forecast(undated).words()).contains("day of its own");
        assertThat(forecast(undated).likely()).isEmpty();
    }

    @Test
    void saysSo_whenAllIsLaid() {
        UUID piece = shop.canvas("Rope-walk", 10, 10, Optional.empty());
        shop.sit(piece, About.on(FIRST), Laid.drills(100));

        assertThat(forecast(piece).words()).isEqualTo("All of it is laid. It can be completed.");
        assertThat(forecast(piece).late()).contains(TODAY);
    }

    @Test
    void sittingsToComeAreLeftOut() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(piece, FIRST, 31, 1, 100);
        LocalDate before = forecast(piece).likely().orElseThrow();
        shop.keptSitting(piece, About.on(TODAY.plusDays(30)), Laid.NOT_SAID);

        assertThat(forecast(piece).likely()).contains(before);
    }

    private void stand(UUID piece, Standing standing, LocalDate since) {
        shop.apply(shop.workshop()
                .find(Stash.class)
                .orElseThrow()
                .setStanding(shop.view(), piece, standing, Optional.of(About.on(since))));
    }

    @Test
    void daysOfADeclaredRestAreNotIdle() {
        UUID resting = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        sitEvery(resting, FIRST, 20, 1, 100);
        stand(resting, Standing.RESTING, FIRST.plusDays(20));
        // 8 000 left at 100 a day, from today on
        assertThat(forecast(resting).late()).contains(TODAY.plusDays(79));

        UUID goesOn = shop.canvas("Net loft", 100, 100, Optional.empty());
        sitEvery(goesOn, FIRST, 10, 1, 100);
        stand(goesOn, Standing.RESTING, FIRST.plusDays(10));
        stand(goesOn, Standing.ON_THE_BENCH, FIRST.plusDays(21));
        sitEvery(goesOn, FIRST.plusDays(21), 10, 1, 100);
        assertThat(forecast(goesOn).late()).contains(TODAY.plusDays(79));
    }
}
