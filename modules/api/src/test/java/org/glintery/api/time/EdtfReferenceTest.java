package org.glintery.api.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class EdtfReferenceTest {

    private static final Pattern OFFSET = Pattern.compile("T.*([+-])(\\d\\d):(\\d\\d)$");
    private static final long MS_A_DAY = 86_400_000L;

    // Library of Congress EDTF specification, 2019-02-04 / ISO 8601-2:2019. The file gives bounds as instants. They are
    // compared as whole days: the instant is moved by the offset written in the string, if any, and cut to its day.
    // An instant of plus or minus infinity (open) and none at all (not known) are both an empty bound here.
    @Test
    void givesTypesAndBounds_asTheSpecificationsExamples() throws IOException {
        List<String> others = new ArrayList<>();
        for (String[] row : rows("loc-spec.tsv")) {
            Edtf parsed = EdtfParser.parse(row[0]).orElseThrow(() -> new AssertionError(row[0]));
            About about = About.edtf(row[0]).orElseThrow();
            assertThat(type(parsed)).as(row[0]).isEqualTo(row[1]);
            boolean same = about.earliest().equals(day(row[0], row[3]))
                    && about.latest().equals(day(row[0], row[4]));
            if (!same) {
                others.add(row[0] + " " + about.earliest().orElseThrow() + " "
                        + about.latest().orElseThrow());
            }
        }
        // The specification gives seasons no months. The program behind the file takes spring for the first quarter;
        // here a spring is March to May, as those who say "spring" mean it.
        assertThat(others).containsExactly("2001-21 2001-03-01 2001-05-31");
    }

    // unt-libraries/edtf-validate lists, run through npm edtf 4.11.1: both agree on each verdict.
    @Test
    void givesTheSameVerdict_asTwoIndependentValidators() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<String[]> rows = rows("consensus230.tsv");
        for (String[] row : rows) {
            if (About.edtf(row[2]).isPresent() != row[1].equals("valid")) {
                wrong.add(row[1] + " " + row[2]);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(rows).hasSize(230);
    }

    // Where the two validators disagree there is no truth to pin; what is chosen here, and why:
    // - An interval may end within what it starts with when it still can be in order: 2000/2000-XX-XX, 0000/0000,
    //   1919-07-30/1919-07-3X. People do write so, and refusing loses what they know.
    // - Seasons may end an interval and may be doubted: "from spring 2003 to summer 2003" is what people remember.
    // - 0000-01/0000 and 1111-01-01/1111 start together with their ends, so they are in order.
    // - Times do not stand in intervals and spaces stand nowhere: the specification's grammar has neither.
    @Test
    void acceptsWhatCanBeInOrder_whenValidatorsDisagree() throws IOException {
        List<String[]> rows = rows("disputed29.tsv");
        for (String[] row : rows) {
            boolean timeOrSpace = row[2].contains("T") || row[2].contains(" ");
            assertThat(About.edtf(row[2]).isPresent()).as(row[2]).isEqualTo(!timeOrSpace);
        }
        assertThat(rows).hasSize(29);
    }

    @Test
    void readsItsOwnTextBackToAnEqualValue_forAllReferenceStrings() throws IOException {
        List<String> texts = new ArrayList<>();
        rows("loc-spec.tsv").forEach(row -> texts.add(row[0]));
        rows("consensus230.tsv").forEach(row -> texts.add(row[2]));
        rows("disputed29.tsv").forEach(row -> texts.add(row[2]));
        int seen = 0;
        for (String text : texts) {
            Optional<About> about = About.edtf(text);
            if (about.isPresent()) {
                seen++;
                String canonical = about.get().toString();
                About again = About.edtf(canonical).orElseThrow(() -> new AssertionError(text + " -> " + canonical));
                assertThat(again).isEqualTo(about.get()).hasSameHashCodeAs(about.get());
                assertThat(again.earliest()).as(text).isEqualTo(about.get().earliest());
                assertThat(again.latest()).as(text).isEqualTo(about.get().latest());
                assertThat(again.compareTo(about.get())).isZero();
                assertThat(again.words()).isNotBlank();
            }
        }
        assertThat(seen).isEqualTo(33 + 181 + 24);
    }

    private static String type(Edtf edtf) {
        if (edtf instanceof EdtfSet set) {
            return set.all() ? "List" : "Set";
        }
        if (edtf instanceof EdtfMoment) {
            return "Date";
        }
        return edtf.getClass().getSimpleName().replace("Edtf", "");
    }

    private static Optional<LocalDate> day(String text, String ms) {
        if (ms.isEmpty() || ms.endsWith("Infinity")) {
            return Optional.empty();
        }
        Matcher offset = OFFSET.matcher(text);
        long shiftMs = 0;
        if (offset.find()) {
            long minutes = Integer.parseInt(offset.group(2)) * 60L + Integer.parseInt(offset.group(3));
            shiftMs = (offset.group(1).equals("-") ? -minutes : minutes) * 60_000;
        }
        return Optional.of(LocalDate.ofEpochDay(Math.floorDiv(Long.parseLong(ms) + shiftMs, MS_A_DAY)));
    }

    private static List<String[]> rows(String file) throws IOException {
        try (InputStream in = EdtfReferenceTest.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split("\t", -1))
                    .toList();
        }
    }
}
