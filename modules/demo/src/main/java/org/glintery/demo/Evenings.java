package org.glintery.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
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
    private static final List<String> WHERE =
            List.of("kitchen table", "kitchen table", "by the window", "club room", "ferry saloon");
    private static final List<String> NOTES = List.of(
            "",
            "",
            "",
            "",
            "",
            "Rain all evening.",
            "With the wide multi-placer, much quicker.",
            "Lifted a row that ran crooked.",
            "A fresh pen tip.",
            "Stopped early, tired eyes.");
    private static final int DRILLS_AN_EVENING = 640;
    private static final int DRILLS_A_MINUTE = 13;

    private final Seeded seeded;
    private final ChangeSet.Builder change;

    Evenings(Seeded seeded, ChangeSet.Builder change) {
        this.seeded = seeded;
        this.change = change;
    }

    static LocalDate firstOf(Told told) {
        return switch (told.title()) {
            case Plot.RELAY -> Calendar.FIRST_SITTING;
            case Plot.WATERLINE -> Calendar.TODAY.minusDays(170);
            case Plot.BOARD -> Calendar.TODAY.minusDays(66);
            case Plot.WINDOWS -> Calendar.TODAY.minusDays(88);
            default -> Calendar.TODAY.minusDays(120);
        };
    }

    static LocalDate lastOf(Told told) {
        return told.standing() == Standing.RESTING ? firstOf(told).plusDays(75) : Calendar.TODAY.minusDays(1);
    }

    void sit(PieceInMaking piece) {
        Told told = piece.told();
        if (told.made() && Calendar.told(piece.made())) {
            LocalDate from = Calendar.startedOn(piece.made());
            inDrills(piece, from, Calendar.finishedOn(piece.made()), piece.needed());
        } else if (told.sections() > 0) {
            inSections(piece);
        } else if (told.title().equals(Plot.WINDOWS)) {
            inPercent(piece);
        } else if (told.laying().isPresent()) {
            inDrills(piece, firstOf(told), lastOf(told), piece.laid());
        }
    }

    /** The last evening tells what is left of the sum. */
    private void inDrills(PieceInMaking piece, LocalDate from, LocalDate to, long total) {
        List<LocalDate> days = days(from, to, (int) Math.max(3, total / DRILLS_AN_EVENING));
        long left = total;
        for (int i = 0; i < days.size(); i++) {
            long fair = left / (days.size() - i);
            long laid = i == days.size() - 1 ? left : fair * seeded.between(55, 145) / 100 / 5 * 5;
            int minutes = (int) Math.max(10, laid * seeded.between(85, 120) / 100 / DRILLS_A_MINUTE);
            sitting(piece, days.get(i), i > 0 && i < days.size() - 1, Laid.drills(laid), minutes, someNote());
            left -= laid;
        }
    }

    private void inPercent(PieceInMaking piece) {
        List<LocalDate> days = days(firstOf(piece.told()), lastOf(piece.told()), 14);
        long left = Math.round(1000.0 * piece.laid() / piece.needed());
        for (int i = 0; i < days.size(); i++) {
            long fair = left / (days.size() - i);
            long tenths = i == days.size() - 1 ? left : fair * seeded.between(60, 140) / 100;
            sitting(piece, days.get(i), i > 0, Laid.percent(tenths / 10.0), seeded.between(45, 150), someNote());
            left -= tenths;
        }
    }

    /** Three to five evenings a section; the month in which the sixth was let rest had none; the eighth is begun. */
    private void inSections(PieceInMaking piece) {
        List<LocalDate> before = days(Calendar.FIRST_SITTING, LocalDate.of(2026, 8, 22), 21);
        List<LocalDate> after = days(LocalDate.of(2026, 9, 24), Calendar.TODAY.minusDays(2), 8);
        List<Integer> ends = List.of(3, 7, 11, 16, 20);
        for (int i = 0; i < before.size(); i++) {
            inSection(piece, before.get(i), ends.indexOf(i) + 1);
        }
        for (int i = 0; i < after.size(); i++) {
            inSection(piece, after.get(i), i == 4 ? 7 : 0);
        }
    }

    /** @param done the section that this evening ended, 0 for none */
    private void inSection(PieceInMaking piece, LocalDate day, int done) {
        Laid laid = done > 0 ? Laid.sections(1) : Laid.NOT_SAID;
        String note = done > 0 ? "Section " + done + " is laid." : someNote();
        sitting(piece, day, false, laid, seeded.between(50, 150), note);
    }

    /** So many different days in order; the first and the last are among them. */
    private List<LocalDate> days(LocalDate from, LocalDate to, int wanted) {
        int span = (int) (to.toEpochDay() - from.toEpochDay());
        int count = Math.min(wanted, span + 1);
        List<Integer> between = new ArrayList<>();
        for (int day = 1; day < span; day++) {
            between.add(day);
        }
        while (between.size() > count - 2) {
            between.remove(seeded.between(0, between.size() - 1));
        }
        List<LocalDate> days = new ArrayList<>();
        days.add(from);
        between.forEach(day -> days.add(from.plusDays(day)));
        days.add(to);
        return days;
    }

    private void sitting(PieceInMaking piece, LocalDate day, boolean mayBeVague, Laid laid, int minutes, String note) {
        boolean vague = mayBeVague && seeded.oneIn(12);
        boolean weekend = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
        LocalTime start = LocalTime.of(weekend ? 14 : 19, 5 * seeded.between(0, 11));
        About when = vague ? About.edtf(day + "~").orElseThrow() : About.on(day);
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
                        note));
    }

    private String someNote() {
        return NOTES.get(seeded.between(0, NOTES.size() - 1));
    }
}
