package org.glintery.api.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.glintery.api.disk.SecondFolder.Occasion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CopyRuleTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

    @ParameterizedTest
    @CsvSource({
        "CLOSING, 0, false",
        "CLOSING, 1, true",
        "CLOSING, 40, true",
        "OPENED, 0, false",
        "OPENED, 1, false",
        "OPENED, 6, false",
        "OPENED, 7, true",
        "OPENED, 40, true"
    })
    void isDue_aDayAfterTheLastAtClosing_andAWeekAfterItWhenOpened(Occasion occasion, int daysAgo, boolean due) {
        assertThat(CopyRule.isDue(occasion, Optional.of(TODAY.minusDays(daysAgo)), TODAY))
                .isEqualTo(due);
    }

    @ParameterizedTest
    @ValueSource(strings = {"CLOSING", "OPENED"})
    void isDue_whenThereIsNone_andWhenTheLastLiesAhead(Occasion occasion) {
        assertThat(CopyRule.isDue(occasion, Optional.empty(), TODAY)).isTrue();
        assertThat(CopyRule.isDue(occasion, Optional.of(TODAY.plusYears(3)), TODAY))
                .isTrue();
    }

    @Test
    void keepsTenAndOneAMonth_ofACopyADayForThreeMonths() {
        List<CopyName> daily = IntStream.range(0, 90)
                .mapToObj(days -> copy(TODAY.minusDays(days), 1))
                .toList();
        List<CopyName> kept = new ArrayList<>(daily);
        kept.removeAll(CopyRule.tooMany(daily));
        assertThat(kept.stream().map(CopyName::day))
                .startsWith(TODAY, TODAY.minusDays(1))
                .endsWith(LocalDate.of(2026, 2, 28), LocalDate.of(2026, 1, 31), LocalDate.of(2025, 12, 31))
                .hasSize(13);
    }

    @Test
    void keepsAll_whileThereAreTen() {
        List<CopyName> ten = IntStream.rangeClosed(1, 10)
                .mapToObj(number -> copy(TODAY, number))
                .toList();
        assertThat(CopyRule.tooMany(ten)).isEmpty();
    }

    @Test
    void removesTheFirstOfADay_whenThereAreMoreThanTen() {
        List<CopyName> twelve = IntStream.rangeClosed(1, 12)
                .mapToObj(number -> copy(TODAY, number))
                .toList();
        assertThat(CopyRule.tooMany(twelve)).containsExactly(copy(TODAY, 1), copy(TODAY, 2));
    }

    /** Day by day, as it is used: against what the rule says in words, on copies made at random days. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void keepsTheNewestTenAndOneOfEveryMonthEver(long seed) {
        Random random = new Random(seed);
        List<CopyName> there = new ArrayList<>();
        Set<YearMonth> monthsCopied = new HashSet<>();
        LocalDate day = TODAY;
        for (int copies = 0; copies < 300; copies++) {
            day = day.plusDays(random.nextInt(12));
            CopyName made = copy(day, 1);
            if (there.contains(made)) {
                continue;
            }
            there.add(made);
            monthsCopied.add(YearMonth.from(day));
            List<CopyName> newestTen = there.subList(Math.max(0, there.size() - 10), there.size());
            List<CopyName> mixed = new ArrayList<>(there);
            Collections.shuffle(mixed, random);
            List<CopyName> removed = CopyRule.tooMany(mixed);
            assertThat(removed).as("seed %d", seed).doesNotContainAnyElementsOf(newestTen);
            there.removeAll(removed);
            assertThat(there.stream().map(copy -> YearMonth.from(copy.day()))).containsAll(monthsCopied);
            assertThat(there).hasSizeLessThanOrEqualTo(10 + monthsCopied.size());
        }
    }

    @Test
    void namesACopyAfterTheWorkshopAndTheDay() {
        assertThat(CopyName.first(Path.of("home", "Ferry-town"), TODAY).fileName())
                .isEqualTo("Ferry-town-copy-2026-03-14.zip");
        for (CopyName name : List.of(copy(TODAY, 1), copy(TODAY, 2), copy(TODAY, 310))) {
            assertThat(CopyName.read(name.fileName())).contains(name);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ferry-town-2026-03-14-1422.zip",
                "Ferry-town-copy-2026-02-31.zip",
                "Ferry-town-copy-2026-03-14.zip.part",
                "Ferry-town-copy-2026-03-14 (1).zip",
                "-copy-2026-03-14.zip",
                "holiday.zip",
                ""
            })
    void readsNoOtherName(String name) {
        assertThat(CopyName.read(name)).isEmpty();
    }

    private static CopyName copy(LocalDate day, int number) {
        return new CopyName("Ferry-town", day, number);
    }
}
