package org.glintery.activework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.refusal;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.RunningSitting;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SittingClockTest {

    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    private static final ZonedDateTime EVENING = at("2025-05-02T20:00+02:00");

    private BenchShop shop;
    private UUID piece;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
        piece = shop.piece("Rope-walk", Standing.SHELVED);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    /** A moment as the clock in Oslo shows it; the offset tells which, where the clock shows it twice. */
    private static ZonedDateTime at(String moment) {
        return ZonedDateTime.parse(moment).withZoneSameInstant(OSLO);
    }

    private Result<ChangeSet> end(ZonedDateTime now) {
        return shop.bench().end(shop.view(), piece, now, Laid.drills(10), Optional.of("kitchen table"), "calm");
    }

    private void begin(ZonedDateTime now) {
        shop.apply(shop.bench().begin(shop.view(), piece, now));
    }

    private void pause(ZonedDateTime now) {
        shop.apply(shop.bench().pause(shop.view(), piece, now));
    }

    private void resume(ZonedDateTime now) {
        shop.apply(shop.bench().resume(shop.view(), piece, now));
    }

    private Sitting sitting() {
        return shop.bench().sittings(shop.view(), piece).get(0).value();
    }

    @Test
    void recordsTheSittingThatWasRun_andPutsThePieceOnTheBench() {
        begin(EVENING);
        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.ON_THE_BENCH);
        shop.apply(end(EVENING.plusMinutes(95)));

        assertThat(sitting())
                .isEqualTo(new Sitting(
                        piece,
                        About.on(EVENING.toLocalDate()),
                        Optional.of(LocalDateTime.of(2025, 5, 2, 20, 0)),
                        Optional.of("Europe/Oslo"),
                        Optional.of(95),
                        0,
                        Laid.drills(10),
                        Optional.of("kitchen table"),
                        "calm"));
        assertThat(shop.view().find(RunningSitting.TYPE, piece)).isEmpty();
    }

    @Test
    void leavesPausesOut_alsoOneThatStillGoesOn() {
        begin(EVENING);
        pause(EVENING.plusMinutes(30));
        resume(EVENING.plusMinutes(45));
        pause(EVENING.plusMinutes(60));
        shop.apply(end(EVENING.plusMinutes(80)));

        assertThat(sitting().minutes()).contains(45);
        assertThat(sitting().pausedMinutes()).isEqualTo(35);
    }

    @Test
    void outlivesARestart() {
        begin(EVENING);
        pause(EVENING.plusMinutes(30));
        shop = shop.reopened();
        resume(EVENING.plusMinutes(50));
        shop.apply(end(EVENING.plusMinutes(60)));

        assertThat(sitting().minutes()).contains(40);
    }

    @Test
    void neitherGainsNorLosesAnHour_whenTheClocksGoForward() {
        // 30 March 2025, 2:00 becomes 3:00
        begin(at("2025-03-30T01:30+01:00"));
        shop.apply(end(at("2025-03-30T03:30+02:00")));

        assertThat(sitting().minutes()).contains(60);
    }

    @Test
    void neitherGainsNorLosesAnHour_whenTheClocksGoBack() {
        // 26 October 2025, 3:00 becomes 2:00
        begin(at("2025-10-26T01:30+02:00"));
        shop.apply(end(at("2025-10-26T03:30+01:00")));

        assertThat(sitting().minutes()).contains(180);
        assertThat(sitting().startedAt()).contains(LocalDateTime.of(2025, 10, 26, 1, 30));
    }

    @Test
    void knowsWhichOfTwoEqualHoursWasMeant() {
        begin(at("2025-10-26T02:10+01:00"));
        pause(at("2025-10-26T02:40+01:00"));
        resume(at("2025-10-26T02:50+01:00"));
        shop.apply(end(at("2025-10-26T03:10+01:00")));

        assertThat(sitting().minutes()).contains(50);
        assertThat(sitting().pausedMinutes()).isEqualTo(10);
        assertThat(sitting().zone()).contains("Europe/Oslo");
    }

    @Test
    void knowsWhichOfTwoEqualHoursThePauseBeganIn() {
        begin(at("2025-10-26T01:50+02:00"));
        pause(at("2025-10-26T02:20+01:00"));
        resume(at("2025-10-26T02:30+01:00"));
        shop.apply(end(at("2025-10-26T02:40+01:00")));

        assertThat(sitting().pausedMinutes()).isEqualTo(10);
        assertThat(sitting().minutes()).contains(100);
    }

    @Test
    void aSittingForgottenForDaysIsKeptWithoutItsMinutes() {
        begin(EVENING);
        List<String> warnings = shop.apply(end(EVENING.plusDays(3)));

        assertThat(warnings).singleElement().asString().contains("more than a day");
        assertThat(sitting().minutes()).isEmpty();
        assertThat(sitting().laid()).isEqualTo(Laid.drills(10));
    }

    @Test
    void refusesWhatDoesNotFollow() {
        assertThat(refusal(end(EVENING)).code()).isEqualTo("not-going-on");
        begin(EVENING);
        assertThat(refusal(shop.bench().begin(shop.view(), piece, EVENING)).code())
                .isEqualTo("goes-on");
        assertThat(refusal(shop.bench().resume(shop.view(), piece, EVENING)).code())
                .isEqualTo("not-paused");
        assertThat(refusal(shop.bench().rest(shop.view(), piece, About.on(EVENING.toLocalDate())))
                        .code())
                .isEqualTo("goes-on");
        pause(EVENING.plusMinutes(1));
        assertThat(refusal(shop.bench().pause(shop.view(), piece, EVENING)).code())
                .isEqualTo("paused");
        assertThat(refusal(shop.bench().begin(shop.view(), UUID.randomUUID(), EVENING))
                        .code())
                .isEqualTo("no-piece");
    }
}
