package org.glintery.api.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the Extended Date/Time Format, levels 0 to 2. Times stand alone, not in intervals; no spaces anywhere; a year
 * with Y or S stands alone too.
 */
final class EdtfParser {

    private static final String MARK = "([?~%]?)";
    private static final Pattern DATE = Pattern.compile(MARK + "(-?[0-9X]{4})" + MARK + "(?:-" + MARK + "([0-9X]{2})"
            + MARK + "(?:-" + MARK + "([0-9X]{2})" + MARK + ")?)?");
    /** Longer text is no date; the limit keeps hostile input cheap. */
    private static final int LONGEST = 2_000;

    private EdtfParser() {}

    static Optional<Edtf> parse(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        if (text.startsWith("[") && text.endsWith("]") || text.startsWith("{") && text.endsWith("}")) {
            return set(text.startsWith("{"), text.substring(1, text.length() - 1));
        }
        if (text.indexOf('/') >= 0) {
            return interval(text.split("/", -1));
        }
        return date(text)
                .or(() -> EdtfYear.parse(text).map(Edtf.class::cast))
                .or(() -> EdtfMoment.parse(text).map(Edtf.class::cast));
    }

    private static Optional<Edtf> interval(String[] ends) {
        if (ends.length != 2) {
            return Optional.empty();
        }
        return end(ends[0]).flatMap(start -> end(ends[1]).flatMap(end -> EdtfInterval.of(start, end)));
    }

    private static Optional<Edtf> end(String text) {
        return switch (text) {
            case "" -> Optional.of(OpenEnd.UNKNOWN);
            case ".." -> Optional.of(OpenEnd.OPEN);
            default -> date(text);
        };
    }

    private static Optional<Edtf> set(boolean all, String inside) {
        String[] texts = inside.split(",", -1);
        List<Edtf> members = new ArrayList<>();
        for (int i = 0; i < texts.length; i++) {
            Optional<Edtf> member = member(texts[i], i == 0, i == texts.length - 1);
            if (member.isEmpty()) {
                return Optional.empty();
            }
            members.add(member.get());
        }
        return Optional.of(new EdtfSet(all, members));
    }

    /** Only the first member can be open at its start, only the last at its end. */
    private static Optional<Edtf> member(String text, boolean first, boolean last) {
        int dots = text.indexOf("..");
        if (dots < 0) {
            return date(text);
        }
        String before = text.substring(0, dots);
        String after = text.substring(dots + 2);
        if (before.isEmpty() && !first || after.isEmpty() && !last) {
            return Optional.empty();
        }
        Optional<Edtf> from = before.isEmpty() ? Optional.of(OpenEnd.OPEN) : date(before);
        Optional<Edtf> to = after.isEmpty() ? Optional.of(OpenEnd.OPEN) : date(after);
        return from.flatMap(start -> to.flatMap(end -> EdtfRange.of(start, end)));
    }

    private static Optional<Edtf> date(String text) {
        Matcher form = DATE.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        List<Part> parts = new ArrayList<>();
        for (int group = 1; group < 9 && form.group(group + 1) != null; group += 3) {
            Doubt after = Doubt.of(form.group(group + 2));
            parts.replaceAll(part -> part.doubted(after));
            parts.add(
                    new Part(form.group(group + 1), Doubt.of(form.group(group)).and(after)));
        }
        return EdtfSeason.of(parts).map(Edtf.class::cast).or(() -> EdtfDate.of(parts));
    }
}
