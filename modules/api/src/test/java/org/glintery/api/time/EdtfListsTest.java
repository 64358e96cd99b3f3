package org.glintery.api.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Published lists. {@code loc-spec.tsv}: Library of Congress EDTF specification, 2019-02-04 / ISO 8601-2:2019
 * (BSD-2-Clause copy). {@code consensus230.tsv} and {@code disputed29.tsv}: lists of unt-libraries/edtf-validate
 * (BSD-3-Clause) run through npm edtf 4.11.1: what both agree on, and what they do not.
 */
class EdtfListsTest {

    @Test
    void agrees_onAllThatTwoValidatorsAgreeOn() {
        List<String> wrong = new ArrayList<>();
        int seen = 0;
        for (String[] row : rows("consensus230.tsv")) {
            seen++;
            boolean valid = row[1].equals("valid");
            if (About.edtf(row[2]).isPresent() != valid) {
                wrong.add(row[2] + " should be " + row[1]);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(seen).isEqualTo(230);
    }

    /** The list gives the first and last millisecond in UTC; we keep whole days, so days are compared. */
    @Test
    void hasTheBoundsOfTheSpecification_inWholeDays() {
        List<String> wrong = new ArrayList<>();
        int compared = 0;
        for (String[] row : rows("loc-spec.tsv")) {
            About about = About.edtf(row[0]).orElseThrow(() -> new AssertionError("not read: " + row[0]));
            boolean seasonOrTime = row[1].equals("Season") || row[0].contains("T");
            if (seasonOrTime || !row[3].matches("-?\\d+") || !row[4].matches("-?\\d+")) {
                continue;
            }
            compared++;
            check(row[0], "first", about.earliest(), row[3], wrong);
            check(row[0], "last", about.latest(), row[4], wrong);
        }
        assertThat(wrong).isEmpty();
        assertThat(compared).isGreaterThanOrEqualTo(15);
    }

    private static void check(
            String text, String which, java.util.Optional<LocalDate> ours, String millis, List<String> wrong) {
        LocalDate theirs =
                Instant.ofEpochMilli(Long.parseLong(millis)).atZone(ZoneOffset.UTC).toLocalDate();
        if (!ours.equals(java.util.Optional.of(theirs))) {
            wrong.add(text + ": " + which + " day is " + ours + ", the list says " + theirs);
        }
    }

    @Test
    void writesWhatItReadsBackAsEqual_forEveryTextItReads() {
        int seen = 0;
        for (String list : List.of("consensus230.tsv", "disputed29.tsv", "loc-spec.tsv")) {
            for (String[] row : rows(list)) {
                for (About about : About.edtf(row[list.startsWith("loc") ? 0 : 2]).stream().toList()) {
                    seen++;
                    assertThat(About.edtf(about.toString())).contains(about);
                    assertThat(about.words()).isNotBlank();
                }
            }
        }
        assertThat(seen).isGreaterThan(150);
    }

    /** The validators disagree about these, so neither is pinned: each must be answered, with bounds in order. */
    @Test
    void answersDisputedTexts_withoutFailing() {
        int seen = 0;
        for (String[] row : rows("disputed29.tsv")) {
            seen++;
            About.edtf(row[2]).ifPresent(about -> {
                if (about.earliest().isPresent() && about.latest().isPresent()) {
                    assertThat(about.latest().get()).isAfterOrEqualTo(about.earliest().get());
                }
            });
        }
        assertThat(seen).isEqualTo(29);
    }

    private static List<String[]> rows(String file) {
        try (InputStream in = EdtfListsTest.class.getResourceAsStream(file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().skip(1).map(line -> line.split("\t", -1)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
