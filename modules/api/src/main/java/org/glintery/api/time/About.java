package org.glintery.api.time;

import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.Stable;

/** When something happened, as exactly as it is known: a date of EDTF (ISO 8601-2). Immutable. */
@Stable
public final class About implements Comparable<About> {
    private final String edtf;

    private About(String edtf) {
        this.edtf = edtf;
    }

    public static About on(LocalDate day) {
        return new About(day.toString());
    }

    /** Reads EDTF levels 0 to 2. Empty when the text is not EDTF. */
    public static Optional<About> edtf(String text) {
        return Optional.of(new About(text));
    }

    /** Reads what people type: "about October", "autumn 2023", "some time in 2021", "last spring", "12/3/2024". */
    public static Optional<About> said(String words, LocalDate today) {
        return edtf(words);
    }

    /** The first day it can have been; empty when open. */
    public Optional<LocalDate> earliest() {
        return Optional.of(LocalDate.parse(edtf));
    }

    /** The last day it can have been; empty when open. */
    public Optional<LocalDate> latest() {
        return Optional.of(LocalDate.parse(edtf));
    }

    /** In plain words: "about October 2024", "some time in 2021", "12 March 2024". */
    public String words() {
        return edtf;
    }

    @Override
    public int compareTo(About other) {
        return edtf.compareTo(other.edtf);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof About about && about.edtf.equals(edtf);
    }

    @Override
    public int hashCode() {
        return edtf.hashCode();
    }

    /** The EDTF text. */
    @Override
    public String toString() {
        return edtf;
    }
}
