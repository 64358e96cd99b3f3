package org.glintery.api.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AboutWordsTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    /** What people can type comes back as it was understood, and the words are understood as the same again. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2024-03-12 | 12 March 2024",
                "2024-10 | October 2024",
                "2021 | 2021",
                "2024-10~ | about October 2024",
                "2021? | perhaps 2021",
                "2021% | perhaps about 2021",
                "2021-XX-XX | some time in 2021",
                "2021-XX | some month in 2021",
                "2021-05-XX | some time in May 2021",
                "199X | some time in the 1990s",
                "XXXX | not known",
                "2023-23 | autumn 2023",
                "2023-23~ | about autumn 2023",
                "2023-24 | winter 2023/24",
                "1999-24 | winter 1999/00",
                "2022-37 | early 2022",
                "2022-39 | late 2022",
                "2022-34 | the second quarter of 2022",
                "2022-41 | the second half of 2022",
                "[2023-03..2023-05] | between March and May 2023",
                "[2019..2021] | between 2019 and 2021",
                "[2019~..2021~] | roughly between 2019 and 2021",
                "[2023-05-12..2023-05-20] | between 12 and 20 May 2023",
                "[2023-05-12..2023-06-02] | between 12 May and 2 June 2023",
                "[2023-11..2024-02] | between November 2023 and February 2024",
                "[2023-22..2023-23] | between summer 2023 and autumn 2023",
                "[2024-05-21~..2024-05-31~] | late May 2024",
                "[2024-05-21~..2024-06-20~] | between late May and mid June 2024",
                "[2024-05-01~..2024-05-20~] | between early and mid May 2024",
                "[2023-12-21~..2024-01-10~] | between late December 2023 and early January 2024",
                "[..2019] | before 2020",
                "[..2019~] | before about 2020",
                "[..2024-02] | before March 2024",
                "[..2024-02-29] | before 1 March 2024",
                "[2021..] | after 2020",
                "[..2023-23] | in or before autumn 2023",
                "[2019,2021] | 2019 or 2021",
                "2004-06/2006-08 | from June 2004 to August 2006",
                "2020/.. | since 2020",
                "../2020 | until 2020",
            })
    void saysAndUnderstandsItsOwnWords(String edtf, String words) {
        assertThat(About.edtf(edtf).orElseThrow().words()).isEqualTo(words);
        assertThat(About.said(words, TODAY)).as(words).contains(About.edtf(edtf).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "19XX | some time between 1900 and 1999",
                "XXXX-12-25 | 25 December, year not known",
                "XXXX-12-XX | December, year not known",
                "1560-XX-25 | some time between 25 January 1560 and 25 December 1560 (1560-XX-25)",
                "2004-06-?11 | 11 June 2004, day uncertain",
                "2004?-%06 | June 2004, year uncertain, month uncertain and approximate",
                "2011?-23 | autumn 2011, year uncertain",
                "1950S2 | some time between 1900 and 1999, estimated at 1950",
                "Y170000002 | the year 170000002",
                "-0043-03-15 | 15 March 44 BC",
                "0000 | 1 BC",
                "1985-04-12T23:20:30Z | 12 April 1985 at 23:20",
                "1985/ | from 1985 to a time not known",
                "/1985 | from a time not known to 1985",
                "../.. | always",
                "[1667,1668,1670..1672] | 1667, 1668 or between 1670 and 1672",
                "{1667,1670..1672} | 1667 and every date from 1670 to 1672",
                "{1960,1961-12} | 1960 and December 1961",
                "2001-29 | southern spring 2001",
            })
    void saysPlainly_whatPeopleRarelyType(String edtf, String words) {
        assertThat(About.edtf(edtf).orElseThrow().words()).isEqualTo(words);
    }

    @Test
    void readsNoDays_fromARoughRange() {
        assertThat(About.roughlyBetween(LocalDate.of(2024, 5, 23), LocalDate.of(2024, 6, 12))
                        .words())
                .isEqualTo("between late May and mid June 2024");
    }
}
