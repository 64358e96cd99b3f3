package org.glintery.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;

/** Seven months of sittings: in drills, in percent, or in sections; with rest days, pauses and a few vague dates. */
final class Evenings {
    private static final int FIRST_WITH_SITTINGS = 10;
    private static final int USUAL_DRILLS = 1150;
    private static final List<String> WHERE = List.of("kitchen table", "by the window", "club room", "ferry saloon");
    private static final List<String> NOTES = List.of(
            "", "", "", "Rain all evening.", "New multi-placer, much quicker.", "Lifted a row that ran crooked.", "With tea.",
            "", "Colour blocks only, the confetti can wait.", "Spilled a tray, found nearly all.", "");

    private final Seeded seeded;
    private final ChangeSet.Builder change;

    Evenings(Seeded seeded, ChangeSet.Builder change) {
        this.seeded = seeded;
        this.change = change;
    }

    void sit(PieceInMaking piece, Course course) {
        Told told = piece.told();
        boolean made = told.standing() == Standing.MADE && piece.made() >= FIRST_WITH_SITTINGS;
        if (told.laid() == 0 && !made || piece.legend().isEmpty()) {
            return;
        }
        if (told.sections() > 0) {
            inSections(piece, course);
        } else if (told.title().equals(Told.WINDOWS)) {
            inPercent(piece, course);
        } else {
            inDrills(piece, course, made ? piece.needed() : Math.round(piece.needed() * told.laid()));
        }
    }

    /** Evenings that sum to the total, as uneven as evenings are. */
    private void inDrills(PieceInMaking piece, Course course, long total) {
        int evenings = (int) Math.max(3, total / USUAL_DRILLS);
        List<LocalDate> days = days(course, evenings);
        long left = total;
        for (int i = 0; i < evenings; i++) {
            long even = left / (evenings - i);
            long laid = i == evenings - 1 ? left : even * seeded.between(55, 140) / 100;
            int aMinute = seeded.between(9, 14);
            sitting(piece, days.get(i), Laid.drills(laid), (int) Math.max(12, laid / aMinute), "");
            left -= laid;
        }
    }

    private void inPercent(PieceInMaking piece, Course course) {
        double[] shares = {3, 2.5, 4, 2, 3.5, 3};
        List<LocalDate> days = days(course, shares.length);
        for (int i = 0; i < shares.length; i++) {
            sitting(piece, days.get(i), Laid.percent(shares[i]), seeded.between(40, 130), "");
        }
    }

    /** Section by section; unequal, so some take five evenings and some two. The rested one has none. */
    private void inSections(PieceInMaking piece, Course course) {
        int evenings = Relay.EVENINGS.stream().mapToInt(i -> i).sum();
        List<LocalDate> days = days(course, evenings);
        int next = 0;
        for (int section = 0; section < Relay.EVENINGS.size(); section++) {
            int many = Relay.EVENINGS.get(section);
            for (int i = 0; i < many; i++) {
                boolean last = i == many - 1;
                sitting(
                        piece,
                        days.get(next++),
                        last && Relay.done(section) ? Laid.sections(1) : Laid.NOT_SAID,
                        seeded.between(45, 150),
                        last && Relay.done(section) ? "Section " + (section + 1) + " is laid." : "");
            }
        }
    }

    /** So many days from the first to the last, in order, never two on one day while there is room. */
    private List<LocalDate> days(Course course, int many) {
        long span = ChronoUnit.DAYS.between(course.started(), course.last());
        List<LocalDate> days = new ArrayList<>();
        LocalDate latest = course.started().minusDays(1);
        for (int i = 0; i < many; i++) {
            long wanted = many == 1 ? span : span * i / (many - 1);
            boolean end = i == 0 || i == many - 1;
            LocalDate day = course.started().plusDays(wanted + (end ? 0 : seeded.between(-1, 1)));
            latest = day.isAfter(latest) ? day : latest.plusDays(1);
            days.add(latest.isAfter(course.last()) ? course.last() : latest);
        }
        return days;
    }

    private void sitting(PieceInMaking piece, LocalDate day, Laid laid, int minutes, String note) {
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
                        note.isEmpty() ? NOTES.get(seeded.between(0, NOTES.size() - 1)) : note));
    }
}
