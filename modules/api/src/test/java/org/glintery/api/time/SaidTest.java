package org.glintery.api.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SaidTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 14);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 March 2024 | 2024-03-12 | 12 March 2024",
                "March 12, 2024 | 2024-03-12 | 12 March 2024",
                "the 3rd of May 2022 | 2022-05-03 | 3 May 2022",
                "12/3/2024 | 2024-03-12 | 12 March 2024",
                "3/25/2024 | 2024-03-25 | 25 March 2024",
                "2024-03-12 | 2024-03-12 | 12 March 2024",
                "March 2024 | 2024-03 | March 2024",
                "about October | 2026-10~ | about October 2026",
                "about December | 2025-12~ | about December 2025",
                "autumn 2023 | 2023-23 | autumn 2023",
                "last spring | 2026-21 | spring 2026",
                "last winter | 2025-24 | winter 2025/26",
                "some time in 2021 | 2021-XX-XX | some time in 2021",
                "2021? | 2021? | perhaps 2021",
                "early 2022 | 2022-37 | early 2022",
                "the nineties | 199X | some time in the 1990s",
                "yesterday | 2026-11-13 | 13 November 2026",
                "between March and May 2023 | [2023-03..2023-05] | between March and May 2023",
                "before 2020 | [..2019] | before 2020",
                "not known | XXXX | not known",
                "late May 2024 | [2024-05-21~..2024-05-31~] | late May 2024",
            })
    void understands_whatPeopleType(String said, String edtf, String words) {
        assertThat(About.said(said, TODAY)).hasValueSatisfying(about -> {
            assertThat(about).hasToString(edtf);
            assertThat(about.words()).isEqualTo(words);
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2024-03-12", "2024-03", "2024", "2024~", "2024-03?", "2023-23", "2023-24", "2021-XX-XX", "2021-03-XX",
                "199X", "[2023-03..2023-05]", "[..2019]", "[2021..]", "XXXX", "2022-37"
            })
    void understandsItsOwnWords_forWhatPeopleSay(String edtf) {
        About about = About.edtf(edtf).orElseThrow();
        assertThat(About.said(about.words(), TODAY)).as(about.words()).contains(about);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "soon", "31 February 2024", "between May and", "last", "45/13/2024", "about", "in a while"})
    void isEmpty_whenNotUnderstood(String said) {
        assertThat(About.said(said, TODAY)).isEmpty();
    }

    @Test
    void sortsByTheFirstDayItCanHaveBeen() {
        About year = About.edtf("2024").orElseThrow();
        About march = About.edtf("2024-03").orElseThrow();
        assertThat(year).isLessThan(march);
        assertThat(march.overlaps(LocalDate.of(2024, 3, 31), LocalDate.of(2024, 4, 2))).isTrue();
        assertThat(march.overlaps(LocalDate.of(2024, 4, 1), LocalDate.of(2024, 4, 2))).isFalse();
    }
}
