package org.glintery.api.disk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a copy in the second folder is called: after the workshop and the day. A backup that somebody made by hand has no
 * such name.
 *
 * @param number 1, or more when there were several on one day
 */
record CopyName(String workshop, LocalDate day, int number) {
    static final Comparator<CopyName> OLDEST_FIRST =
            Comparator.comparing(CopyName::day).thenComparing(CopyName::number);
    private static final Pattern WRITTEN =
            Pattern.compile("(.+)-copy-(\\d{4}-\\d{2}-\\d{2})(?:-([1-9]\\d{0,3}))?\\.zip");

    static CopyName first(Path workshop, LocalDate day) {
        Path name = workshop.getFileName();
        return new CopyName(name == null ? "workshop" : name.toString(), day, 1);
    }

    static Optional<CopyName> read(String fileName) {
        Matcher written = WRITTEN.matcher(fileName);
        if (!written.matches()) {
            return Optional.empty();
        }
        try {
            int number = written.group(3) == null ? 1 : Integer.parseInt(written.group(3));
            return Optional.of(new CopyName(written.group(1), LocalDate.parse(written.group(2)), number));
        } catch (DateTimeException e) {
            return Optional.empty(); // a 31st of February
        }
    }

    String fileName() {
        return workshop + "-copy-" + day + (number == 1 ? "" : "-" + number) + ".zip";
    }

    /** The first of this day that no file has yet. Disk. */
    CopyName freeIn(Path folder) {
        CopyName free = this;
        while (Files.exists(folder.resolve(free.fileName()))) {
            free = new CopyName(workshop, day, free.number + 1);
        }
        return free;
    }
}
