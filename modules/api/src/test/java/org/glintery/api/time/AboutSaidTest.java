package org.glintery.api.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AboutSaidTest {

    private static final long SEED = 20261125;

    /** A Wednesday. */
    private static final LocalDate TODAY = LocalDate.of(2024, 5, 15);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // days
                "12 March 2024 | 2024-03-12",
                "12th of March, 2024 | 2024-03-12",
                "the 3rd of May 2022 | 2022-05-03",
                "3/25/2024 | 2024-03-25",
                "about 2021-xx | 2021-XX~",
                "March 12, 2024 | 2024-03-12",
                "Tuesday, 12 March 2024 | 2024-03-12",
                "12 mar | 2024-03-12",
                "12 June | 2023-06-12",
                "29 February | 2024-02-29",
                "12/3/2024 | 2024-03-12",
                "12.03.24 | 2024-03-12",
                "12/25/2023 | 2023-12-25",
                "12/3 | 2024-03-12",
                "12/3/98 | 1998-03-12",
                "2024/3/12 | 2024-03-12",
                "2024-03-12 | 2024-03-12",
                "Today | 2024-05-15",
                "yesterday | 2024-05-14",
                "the day before yesterday | 2024-05-13",
                "three days ago | 2024-05-12",
                "on Monday | 2024-05-13",
                "Wednesday | 2024-05-15",
                "last Wednesday | 2024-05-08",
                "about 3 weeks ago | 2024-04-24~",
                "Easter | 2024-03-31~",
                "around Easter 2025 | 2025-04-20~",
                "Christmas | 2023-12-25~",
                // months
                "March 2024 | 2024-03",
                "in Sept. 2023 | 2023-09",
                "3/2024 | 2024-03",
                "about October | 2023-10~",
                "October | 2023-10",
                "May | 2024-05",
                "last May | 2023-05",
                "last month | 2024-04",
                "two months ago | 2024-03~",
                "late April | [2024-04-21~..2024-04-30~]",
                "the beginning of June 2023 | [2023-06-01~..2023-06-10~]",
                // seasons
                "autumn 2023 | 2023-23",
                "Fall of 2023 | 2023-23",
                "spring | 2024-21",
                "last spring | 2023-21",
                "last winter | 2023-24",
                "summer '22 | 2022-22",
                "winter 2023-24 | 2023-24",
                "late summer 2023 | 2023-08~",
                // years and more
                "2021 | 2021",
                "2021? | 2021?",
                "circa 2021 | 2021~",
                "2021 or so | 2021~",
                "maybe 2021 | 2021?",
                "Some time in 2021 | 2021-XX-XX",
                "sometime in May 2021 | 2021-05-XX",
                "early 2022 | 2022-37",
                "early last year | 2023-37",
                "last year | 2023",
                "the nineties | 199X",
                "1990s | 199X",
                "the '90s | 199X",
                "the early 1990s | [1990..1993]",
                // ranges
                "last week | [2024-05-06..2024-05-12]",
                "between March and May 2023 | [2023-03..2023-05]",
                "between November and February | [2023-11..2024-02]",
                "between November 2022 and February | [2022-11..2023-02]",
                "between 12 and 20 May 2023 | [2023-05-12..2023-05-20]",
                "between mid and late May 2023 | [2023-05-11~..2023-05-31~]",
                "between 3 days ago and yesterday | [2024-05-12..2024-05-14]",
                "perhaps between 2019 and 2021 | [2019?..2021?]",
                "from March to May 2023 | 2023-03/2023-05",
                "2019 to 2021 | 2019/2021",
                "before 2020 | [..2019]",
                "by the end of March 2023 | [..2023-03-31~]",
                "after March 2023 | [2023-04..]",
                "before autumn 2023 | [..2023-08-31]",
                "since last year | 2023/..",
                "either 2019 or 2020 | [2019,2020]",
                "don\u2019t know | XXXX",
                "not known | XXXX",
            })
    void understands_whatPeopleType(String typed, String edtf) {
        assertThat(About.said(typed, TODAY).map(About::toString)).as(typed).contains(edtf);
    }

    // US Naval Observatory, Dates of Easter: 16 April 2006, 23 March 2008, 24 April 2011, 21 April 2019, 4 April 2021,
    // 25 April 2038 (the latest possible).
    @ParameterizedTest
    @CsvSource({"2006-04-16", "2008-03-23", "2011-04-24", "2019-04-21", "2021-04-04", "2038-04-25"})
    void findsEaster_inAnyYear(LocalDate easter) {
        assertThat(About.said("Easter " + easter.getYear(), TODAY).map(About::toString))
                .contains(easter + "~");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "soon",
                "31 June 2024",
                "31 February 2024",
                "45/13/2024",
                "between May and",
                "last",
                "in a while",
                "30/2/2024",
                "next spring",
                "13/13/2024",
                "12 Marchember 2024",
                "between May 2023 and March 2023",
                "early on Monday",
                "about",
                "before",
                "99999 days ago",
                "before not known",
            })
    void understandsNothing_whenItIsNoDate(String typed) {
        assertThat(About.said(typed, TODAY)).as(typed).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"after 9999", "after December 9999", "after 31 December 9999", "in or after 9999 or 9998"})
    void neverFails_whereTheCalendarEnds(String words) {
        assertThat(About.said(words, TODAY).map(About::earliest))
                .satisfiesAnyOf(
                        said -> assertThat(said).isEmpty(),
                        said -> assertThat(said.get()).isPresent());
    }

    /** Reading used to take twice as long for each "or". */
    @Test
    @Timeout(10)
    void readsNestsOfRangesAsNothing_atOnce() {
        for (String nest : List.of("May 2020" + " or June".repeat(24), "between ".repeat(12) + "May and June 2020")) {
            assertThat(About.said(nest, TODAY)).as(nest).isEmpty();
        }
    }

    /** Whatever is strung together from words that mean something: an answer, and no more. */
    @Test
    @Timeout(60)
    void neverFails_onWordsInAnyOrder() {
        List<String> words = List.of(
                "about",
                "between",
                "and",
                "or",
                "either",
                "from",
                "to",
                "before",
                "after",
                "since",
                "in",
                "early",
                "late",
                "May",
                "spring",
                "winter",
                "2020",
                "12",
                "9999",
                "last",
                "ago",
                "week",
                "the",
                "1990s",
                "perhaps",
                "?",
                "~",
                "/",
                "-",
                "%",
                "XXXX",
                "Easter",
                "yesterday");
        SplittableRandom random = new SplittableRandom(SEED);
        int understood = 0;
        for (int round = 0; round < 20_000; round++) {
            String said = IntStream.range(0, 1 + random.nextInt(9))
                    .mapToObj(i -> words.get(random.nextInt(words.size())))
                    .collect(Collectors.joining(" "));
            Optional<About> about = About.said(said, TODAY);
            if (about.isPresent()) {
                understood++;
                assertThat(About.said(about.get().words(), TODAY))
                        .as("seed %d: %s is told as %s", SEED, said, about.get().words())
                        .isPresent();
            }
        }
        assertThat(understood).isGreaterThan(500);
    }

    @Test
    void tellsTheOtherReading_ofADateInNumbers() {
        LocalDate today = LocalDate.of(2026, 5, 2);

        assertThat(About.otherwise("3/4/2025", today).map(About::words)).contains("4 March 2025");
        assertThat(About.otherwise("about 3-4-2025", today).map(About::words)).contains("about 4 March 2025");
        for (String certain : new String[] {
            "4/4/2025",
            "13/4/2025",
            "4/13/2025",
            "3.4.2025",
            "2025-03-04",
            "2025/3/4",
            "3/2025",
            "2024/2025",
            "tide",
            ""
        }) {
            assertThat(About.otherwise(certain, today)).as(certain).isEmpty();
        }
    }
}
