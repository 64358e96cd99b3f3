package org.glintery.api.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AboutTest {

    @ParameterizedTest
    @CsvSource({
        "2023-23, 2023-09-01, 2023-11-30",
        "2023-24, 2023-12-01, 2024-02-29",
        "2023-30, 2023-12-01, 2024-02-29",
        "2023-34, 2023-04-01, 2023-06-30",
        "2023-38, 2023-05-01, 2023-08-31",
        "2023-41, 2023-07-01, 2023-12-31",
        "199X, 1990-01-01, 1999-12-31",
        "-156X-12-25, -1569-12-25, -1560-12-25",
        "XXXX-02-29, 0000-02-29, 9996-02-29",
        "2015-02-X8, 2015-02-08, 2015-02-28",
        "1950S2, 1900-01-01, 1999-12-31",
        "-1859S3, -1859-01-01, -1850-12-31",
        "Y3388E2S3, +338000-01-01, +338999-12-31",
        "2004?-06-~11, 2004-06-11, 2004-06-11",
    })
    void boundsWholeDays_forEveryKind(String edtf, LocalDate first, LocalDate last) {
        assertThat(About.edtf(edtf).orElseThrow().earliest()).contains(first);
        assertThat(About.edtf(edtf).orElseThrow().latest()).contains(last);
    }

    @Test
    void hasNoBounds_whenTheYearIsBeyondTheCalendar() {
        About far = About.edtf("Y17E8").orElseThrow();
        assertThat(far.earliest()).isEmpty();
        assertThat(far.latest()).isEmpty();
        assertThat(far).isGreaterThan(About.edtf("9999").orElseThrow());
        assertThat(About.edtf("Y-17E8").orElseThrow())
                .isLessThan(About.edtf("-9999").orElseThrow());
        assertThat(About.edtf("Y17E99")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "?2004-06-04~, 2004%-~06-~04",
        "2004-?06-?11, 2004-?06-?11",
        "?2004-?06-?11, 2004-06-11?",
        "2004?-06?-11, 2004-06?-11",
        "2004?-%06, 2004?-%06",
        "?-2004-06, -2004?-06",
        "%2011-23, 2011%-23",
    })
    void writesMarksInOneForm_howeverTheyWereTyped(String typed, String canonical) {
        assertThat(About.edtf(typed).orElseThrow()).hasToString(canonical);
        assertThat(About.edtf(typed)).isEqualTo(About.edtf(canonical));
    }

    @Test
    void sortsByFirstDayThenLastThenText() {
        List<String> inOrder = List.of(
                "../2019",
                "[..2020]",
                "2023",
                "2023-01-01",
                "2023-01-01~",
                "2023-21",
                "2023-03~",
                "2023-12-31",
                "2024/..");
        List<About> sorted = new ArrayList<>(
                inOrder.stream().map(t -> About.edtf(t).orElseThrow()).toList());
        Collections.shuffle(sorted, new Random(7));
        Collections.sort(sorted);
        assertThat(sorted.stream().map(About::toString))
                .containsExactly(
                        "../2019",
                        "[..2020]",
                        "2023-01-01",
                        "2023-01-01~",
                        "2023",
                        "2023-03~",
                        "2023-21",
                        "2023-12-31",
                        "2024/..");
    }

    @ParameterizedTest
    @CsvSource({
        "2024-03, 2024-03-31, 2024-04-30, true",
        "2024-03, 2024-04-01, 2024-04-30, false",
        "2024-03, 2024-04-30, 2024-03-01, false",
        "[2019;2021], 2020-01-01, 2020-12-31, false",
        "[2019;2021], 2020-01-01, 2021-01-01, true",
        "../2019, 1800-01-01, 1800-01-01, true",
        "2020/, 1999-01-01, 2019-12-31, false",
        "XXXX, 2020-01-01, 2020-01-01, true",
    })
    void overlapsDays_whenItCanHaveBeenOnOne(String edtf, LocalDate from, LocalDate to, boolean expected) {
        About about = About.edtf(edtf.replace(';', ',')).orElseThrow();
        assertThat(about.overlaps(from, to)).isEqualTo(expected);
    }

    @Test
    void keepsOneDay_whenMadeFromACalendarDay() {
        LocalDate day = LocalDate.of(2024, 2, 29);
        About about = About.on(day);
        assertThat(about)
                .hasToString("2024-02-29")
                .isEqualTo(About.edtf("2024-02-29").orElseThrow());
        assertThat(about.earliest()).contains(day);
        assertThat(about.latest()).contains(day);
        assertThatThrownBy(() -> About.on(LocalDate.of(12_000, 1, 1))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesARoughRange_whenItEndsBeforeItBegins() {
        LocalDate day = LocalDate.of(2024, 5, 23);
        assertThat(About.roughlyBetween(day, day.plusDays(20))).hasToString("[2024-05-23~..2024-06-12~]");
        assertThatThrownBy(() -> About.roughlyBetween(day, day.minusDays(1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void staysTotalAndConsistent_whenTextIsRandom() {
        long seed = 20_260_101L;
        Random random = new Random(seed);
        String alphabet = "0123456789XY-/.?~%[]{},TZ:ES";
        int read = 0;
        for (int i = 0; i < 200_000; i++) {
            StringBuilder text = new StringBuilder(List.of("2004", "19XX-06", "2004-06-11", "[2004..2006]", "2004/2006")
                    .get(random.nextInt(5)));
            for (int change = 1 + random.nextInt(3); change > 0; change--) {
                text.insert(random.nextInt(text.length() + 1), alphabet.charAt(random.nextInt(alphabet.length())));
                if (random.nextBoolean()) {
                    text.deleteCharAt(random.nextInt(text.length()));
                }
            }
            var about = About.edtf(text.toString());
            if (about.isPresent()) {
                read++;
                assertThat(About.edtf(about.get().toString()))
                        .as("seed %d, %s", seed, text)
                        .isEqualTo(about);
            }
        }
        assertThat(read).as("seed %d", seed).isGreaterThan(2_000);
    }
}
