package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a date as people say it in English; what has no year is the latest time that has begun by the given day. */
final class Phrases {

    private static final int LONGEST = 200;
    private static final Set<String> NOT_KNOWN = Set.of(
            DateWords.NOT_KNOWN, "unknown", "date not known", "date unknown", "no idea", "don't know", "not sure", "?");
    private static final Pattern ABOUT =
            Pattern.compile("(?:(?:about|around|circa|roughly|approximately|approx\\.?|ca?\\.?) |~|c\\.) ?(.+)");
    private static final Pattern OR_SO = Pattern.compile("(.+?),? or so");
    private static final Pattern PERHAPS = Pattern.compile("(?:perhaps|maybe|possibly|probably|i think) (.+)");
    private static final Pattern QUESTION = Pattern.compile("(.+?) ?\\?");
    private static final Pattern SHORT_YEAR = Pattern.compile("'(\\d\\d)(?!\\d|s)");

    private final LocalDate today;
    private final boolean ranges;

    Phrases(LocalDate today) {
        this(today, true);
    }

    private Phrases(LocalDate today, boolean ranges) {
        this.today = today;
        this.ranges = ranges;
    }

    /** Reads what can stand at the end of a range. Nobody nests ranges, and reading nests takes ever longer. */
    static Phrases withoutRanges(LocalDate today) {
        return new Phrases(today, false);
    }

    Optional<Edtf> read(String words) {
        String typed = words.strip();
        return typed.length() > LONGEST
                ? EdtfParser.parse(typed)
                : EdtfParser.parse(typed).or(() -> plain(plainly(typed)));
    }

    /** Reads what is already in lower case with single spaces. */
    Optional<Edtf> plain(String text) {
        if (NOT_KNOWN.contains(text)) {
            return Optional.of(EdtfDate.known("XXXX"));
        }
        return doubted(ABOUT, text, Doubt.APPROXIMATE)
                .or(() -> doubted(OR_SO, text, Doubt.APPROXIMATE))
                .or(() -> doubted(PERHAPS, text, Doubt.UNCERTAIN))
                .or(() -> doubted(QUESTION, text, Doubt.UNCERTAIN))
                .or(() -> ranges ? new RangePhrases(today).read(text) : Optional.empty())
                .or(() -> new SinglePhrases(today).read(text))
                .or(() -> EdtfParser.parse(text.toUpperCase(Locale.ROOT)));
    }

    private Optional<Edtf> doubted(Pattern pattern, String text, Doubt doubt) {
        Matcher match = pattern.matcher(text);
        return match.matches() ? plain(match.group(1)).map(edtf -> edtf.doubted(doubt)) : Optional.empty();
    }

    /** Lower case, single spaces, one kind of apostrophe and dash, '22 as a whole year. */
    private String plainly(String typed) {
        String text = typed.toLowerCase(Locale.ROOT)
                .replace('\u2019', '\'')
                .replace('\u2013', '-')
                .replaceAll("\\s+", " ")
                .replaceAll(" ?[.,!;]+$", "");
        return SHORT_YEAR
                .matcher(text)
                .replaceAll(m -> Integer.toString(Years.fromTwoDigits(Integer.parseInt(m.group(1)), today)));
    }
}
