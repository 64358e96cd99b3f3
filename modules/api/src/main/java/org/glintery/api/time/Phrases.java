package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what people type about a time, in English. Tries the format itself, then ranges, then single dates. */
final class Phrases {
    private static final Set<String> NOT_KNOWN = Set.of("not known", "unknown", "no idea", "don't know", "?");
    private static final Pattern APPROXIMATE =
            Pattern.compile("(?:about|around|circa|ca?\\.?|roughly|approximately|approx\\.?) (.+)");
    private static final Pattern UNCERTAIN = Pattern.compile("(?:perhaps|maybe|probably|possibly) (.+)|(.+?) ?\\?");

    private final LocalDate today;

    Phrases(LocalDate today) {
        this.today = today;
    }

    Optional<Edtf> read(String words) {
        String said = words.strip();
        Optional<Edtf> exact = EdtfParser.parse(said);
        if (exact.isPresent()) {
            return exact;
        }
        String text = said.toLowerCase(Locale.ENGLISH).replaceAll("\\s+", " ").replaceAll("[.,;]+$", "");
        return NOT_KNOWN.contains(text) ? EdtfParser.parse("XXXX") : any(text);
    }

    private Optional<Edtf> any(String text) {
        Matcher approximate = APPROXIMATE.matcher(text);
        if (approximate.matches()) {
            return any(approximate.group(1)).map(date -> date.doubted(Doubt.APPROXIMATE));
        }
        Matcher uncertain = UNCERTAIN.matcher(text);
        if (uncertain.matches()) {
            String rest = uncertain.group(1) != null ? uncertain.group(1) : uncertain.group(2);
            return any(rest).map(date -> date.doubted(Doubt.UNCERTAIN));
        }
        return plain(text).or(() -> new RangePhrases(today).read(text));
    }

    /** One date, with or without "about". */
    Optional<Edtf> plain(String text) {
        Matcher approximate = APPROXIMATE.matcher(text);
        if (approximate.matches()) {
            return plain(approximate.group(1)).map(date -> date.doubted(Doubt.APPROXIMATE));
        }
        return new SinglePhrases(today).read(text).or(() -> EdtfParser.parse(text.toUpperCase(Locale.ROOT)));
    }
}
