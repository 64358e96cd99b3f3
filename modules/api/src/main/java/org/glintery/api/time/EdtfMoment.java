package org.glintery.api.time;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A day with a time. Its day is the one written, in whatever zone it was written.
 *
 * @param time such as {@code 23:20:30-04:00}
 */
record EdtfMoment(EdtfDate day, String time) implements Edtf {

    private static final Pattern FORM = Pattern.compile("(-?\\d{4})-(\\d\\d)-(\\d\\d)T"
            + "((?:[01]\\d|2[0-3]):[0-5]\\d:[0-5]\\d(?:Z|[+-](?:[01]\\d|2[0-3])(?::[0-5]\\d)?)?)");

    static Optional<EdtfMoment> parse(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        List<Part> parts = List.of(
                new Part(form.group(1), Doubt.NONE),
                new Part(form.group(2), Doubt.NONE),
                new Part(form.group(3), Doubt.NONE));
        return EdtfDate.of(parts).map(day -> new EdtfMoment(day, form.group(4)));
    }

    @Override
    public Span span() {
        LocalDate only = day.firstDay();
        return Span.of(only, only);
    }

    @Override
    public String text() {
        return day.text() + "T" + time;
    }

    @Override
    public String words() {
        return day.words() + " at " + time.substring(0, 5);
    }
}
