package org.glintery.api.disk;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** When a copy in the second folder is due, and which copies there are too many. Counts in days of the calendar. */
final class CopyRule {
    static final int NEWEST_KEPT = 10;
    private static final int DAYS_AT_CLOSING = 1;
    private static final int DAYS_AFTER_OPENING = 7;

    private CopyRule() {}

    /** A last day that lies ahead was written by a clock that was wrong, and holds nothing up. */
    static boolean isDue(SecondFolder.Occasion occasion, Optional<LocalDate> last, LocalDate today) {
        int days = occasion == SecondFolder.Occasion.CLOSING ? DAYS_AT_CLOSING : DAYS_AFTER_OPENING;
        return last.map(day -> ChronoUnit.DAYS.between(day, today))
                .map(age -> age >= days || age < 0)
                .orElse(true);
    }

    /** All but the newest ten and the newest of each month; the oldest first. */
    static List<CopyName> tooMany(Collection<CopyName> copies) {
        List<CopyName> newestFirst =
                copies.stream().sorted(CopyName.OLDEST_FIRST.reversed()).toList();
        Set<YearMonth> months = new HashSet<>();
        Set<CopyName> kept = new HashSet<>();
        for (CopyName copy : newestFirst) {
            boolean newestOfItsMonth = months.add(YearMonth.from(copy.day()));
            if (newestOfItsMonth || newestFirst.indexOf(copy) < NEWEST_KEPT) {
                kept.add(copy);
            }
        }
        return copies.stream()
                .filter(copy -> !kept.contains(copy))
                .sorted(CopyName.OLDEST_FIRST)
                .toList();
    }
}
