package org.glintery.activework.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.activework.ui.SittingDraft.Measure;
import org.glintery.api.Result;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.time.About;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SittingDraftTest {

    private static final UUID PIECE = new UUID(1, 2);
    private static final About MAY = About.on(LocalDate.of(2025, 5, 2));

    private static SittingDraft draft(Measure measure, String amount, String symbols, String minutes) {
        return new SittingDraft(MAY, measure, amount, symbols, minutes, " kitchen table ", "calm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1800 | 1800", "1 800 | 1800", "1.800 | 1800", "'1,800' | 1800", "1'800 | 1800", "0 | 0"})
    void readsDrills_withThousandsSeparators(String typed, long drills) {
        assertThat(draft(Measure.DRILLS, typed, "", "").laid().orThrow().drills())
                .contains(drills);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"12.5 | 12.5", "'12,5 %' | 12.5", "100 | 100"})
    void readsPercent(String typed, double percent) {
        assertThat(draft(Measure.PERCENT, typed, "", "").laid().orThrow().percent())
                .contains(percent);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"DRILLS | many", "DRILLS | -5", "PERCENT | 101", "SECTIONS | half", "DRILLS | 99999999999"})
    void saysWhatIsNotUnderstood(Measure measure, String typed) {
        assertThat(draft(measure, typed, "", "").sitting(PIECE)).isInstanceOf(Result.Refused.class);
    }

    @Test
    void whatIsLeftEmptyIsNotSaid() {
        Sitting sitting = new SittingDraft(MAY, Measure.DRILLS, "", "", "", "", "")
                .sitting(PIECE)
                .orThrow();

        assertThat(sitting.laid()).isEqualTo(Laid.NOT_SAID);
        assertThat(sitting.minutes()).isEmpty();
        assertThat(sitting.where()).isEmpty();
    }

    @Test
    void readsDrillsBySymbol_alsoOfASymbolThatIsAnEqualsSign() {
        assertThat(draft(Measure.DRILLS, "", "A=120, B = 30; ==7", "")
                        .laid()
                        .orThrow()
                        .bySymbol())
                .isEqualTo(Map.of("A", 120L, "B", 30L, "=", 7L));
        assertThat(draft(Measure.DRILLS, "", "A 120", "").laid()).isInstanceOf(Result.Refused.class);
    }

    @ParameterizedTest
    @CsvSource({"95, 95", "1:35, 95", "0, 0", "1440, 1440"})
    void readsMinutes(String typed, int minutes) {
        assertThat(draft(Measure.DRILLS, "", "", typed).sitting(PIECE).orThrow().minutes())
                .contains(minutes);
    }

    @ParameterizedTest
    @CsvSource({"1441", "1:75", "long", "30:00"})
    void refusesMinutesThatAreNoneOfADay(String typed) {
        assertThat(draft(Measure.DRILLS, "", "", typed).sitting(PIECE)).isInstanceOf(Result.Refused.class);
    }

    @Test
    void aCorrectedSittingKeepsItsStartAndPauses_whileItsDayStays() {
        Sitting before = new Sitting(
                PIECE,
                MAY,
                Optional.of(LocalDateTime.of(2025, 5, 2, 20, 0)),
                Optional.of("Europe/Oslo"),
                Optional.of(40),
                5,
                Laid.percent(2.5),
                Optional.of("kitchen table"),
                "calm");
        assertThat(SittingDraft.of(before).corrected(before).orThrow()).isEqualTo(before);

        SittingDraft moved = new SittingDraft(
                About.on(LocalDate.of(2025, 5, 1)), Measure.PERCENT, "3", "", "40", "kitchen table", "calm");
        assertThat(moved.corrected(before).orThrow().startedAt()).isEmpty();
        assertThat(moved.corrected(before).orThrow().pausedMinutes()).isEqualTo(5);
    }
}
