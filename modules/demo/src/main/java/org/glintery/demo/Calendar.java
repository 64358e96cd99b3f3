package org.glintery.demo;

import java.time.LocalDate;

/** When things happened in the demo, counted back from its one fixed day. */
final class Calendar {
    /** The day on which the demo stands still. */
    static final LocalDate TODAY = LocalDate.of(2026, 11, 14);

    /** The first day of the seven months of sittings. */
    static final LocalDate FIRST_SITTING = LocalDate.of(2026, 4, 18);

    private static final int OLD_ONES = 3;
    private static final int LAST_MADE = 13;
    private static final int DAYS_BETWEEN_FINISHES = 62;
    private static final int DAYS_A_PIECE = 58;

    private Calendar() {}

    /** When the made piece of that place was finished: the first three years ago, the last this week. */
    static LocalDate finishedOn(int made) {
        return made < OLD_ONES
                ? LocalDate.of(2021 + made, 6, 15)
                : TODAY.minusDays(6 + (long) (LAST_MADE - made) * DAYS_BETWEEN_FINISHES);
    }

    static LocalDate startedOn(int made) {
        return finishedOn(made).minusDays(DAYS_A_PIECE);
    }

    /** Whether all sittings of the made piece fall into the seven months. */
    static boolean told(int made) {
        return made >= OLD_ONES && !startedOn(made).isBefore(FIRST_SITTING);
    }

    /** When the kit came. The bench's came before the first sitting, the made ones' before they were begun. */
    static LocalDate arrivedOn(PieceInMaking piece, Seeded seeded) {
        return switch (piece.told().standing()) {
            case MADE -> startedOn(piece.made()).minusDays(22);
            case ON_THE_BENCH, RESTING -> FIRST_SITTING.minusDays(20);
            default -> TODAY.minusDays(seeded.between(20, 300));
        };
    }
}
