package org.glintery.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;

/** Seven months of sittings: in drills, in percent, or in sections; with rest days, pauses and a few vague dates. */
final class Evenings {
    private static final List<String> WHERE = List.of("kitchen table", "by the window", "club room", "ferry saloon");
    private static final List<String> NOTES =
            List.of("", "", "", "Rain all evening.", "New multi-placer, much quicker.", "Lifted a row that ran crooked.", "With tea.");

    private final Seeded seeded;
    private final ChangeSet.Builder change;

    Evenings(Seeded seeded, ChangeSet.Builder change) {
        this.seeded = seeded;
        this.change = change;
    }

    void sit(PieceInMaking piece, LocalDate finishedOn) {
        Told told = piece.told();
        boolean made = told.standing() == Standing.MADE && piece.made() >= 9;
        if (told.laid() == 0 && !made || piece.legend().isEmpty()) {
            return;
        }
        LocalDate last = made
                ? finishedOn
                : told.standing() == Standing.RESTING ? DemoFilling.TODAY.minusDays(48) : DemoFilling.TODAY.minusDays(1);
        if (told.sections() > 0) {
            inSections(piece, last);
        } else if (told.title().equals(Told.WINDOWS)) {
            inPercent(piece, last);
        } else {
            inDrills(piece, last, made ? piece.needed() : Math.round(piece.needed() * told.laid()));
        }
    }

    /** Backwards from the last evening until all is told; whole evenings off in between. */
    private void inDrills(PieceInMaking piece, LocalDate last, long total) {
        long left = total;
        LocalDate day = last;
        LocalDate first = DemoFilling.TODAY.minusMonths(7);
        while (left > 0) {
            long laid = Math.min(left, seeded.between(380, 1600));
            if (day.isBefore(first.plusDays(6))) {
                laid = left;
            }
            sitting(piece, day, Laid.drills(laid), (int) Math.max(12, laid / seeded.between(14, 20)));
            left -= laid;
            day = day.minusDays(seeded.oneIn(5) ? seeded.between(5, 12) : seeded.between(1, 3));
        }
    }

    private void inPercent(PieceInMaking piece, LocalDate last) {
        double[] shares = {3, 2.5, 4, 2, 3.5, 3};
        LocalDate day = last;
        for (double share : shares) {
            sitting(piece, day, Laid.percent(share), seeded.between(40, 130));
            day = day.minusDays(seeded.between(2, 8));
        }
    }

    /** Section by section since April; the sixth was rested. */
    private void inSections(PieceInMaking piece, LocalDate last) {
        LocalDate day = LocalDate.of(2026, 4, 18);
        for (int section = 1; section <= 6; section++) {
            int evenings = seeded.between(3, 6);
            for (int i = 0; i < evenings; i++) {
                Laid laid = i == evenings - 1 ? Laid.sections(1) : Laid.NOT_SAID;
                sitting(piece, day, laid, seeded.between(45, 150));
                day = day.plusDays(seeded.between(3, 8));
            }
            if (section == 5) {
                day = day.plusDays(24);
            }
            if (day.isAfter(last)) {
                return;
            }
        }
    }

    private void sitting(PieceInMaking piece, LocalDate day, Laid laid, int minutes) {
        boolean vague = seeded.oneIn(14);
        boolean weekend = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
        LocalTime start = LocalTime.of(weekend ? 14 : 19, 5 * seeded.between(0, 11));
        About when = vague
                ? About.edtf(day.toString().substring(0, 7) + "~").orElseThrow()
                : About.on(day);
        change.create(
                Sitting.TYPE,
                seeded.id(),
                new Sitting(
                        piece.id(),
                        when,
                        vague ? Optional.empty() : Optional.of(day.atTime(start)),
                        vague ? Optional.empty() : Optional.of("Europe/Oslo"),
                        Optional.of(minutes),
                        seeded.oneIn(3) ? 5 * seeded.between(1, 4) : 0,
                        laid,
                        Optional.of(WHERE.get(seeded.between(0, WHERE.size() - 1))),
                        NOTES.get(seeded.between(0, NOTES.size() - 1))));
    }
}
