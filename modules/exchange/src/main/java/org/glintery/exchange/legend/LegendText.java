package org.glintery.exchange.legend;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;

/** The characters of a legend with a look ahead at the first of them. Not safe for use by several threads. */
final class LegendText {
    private static final int SAMPLE = 32_768;

    private final BufferedReader reader;
    private final String sample;
    private final Separator separator;
    private final int linesSkipped;

    /** Reads the sample. */
    LegendText(Reader text) throws IOException {
        reader = new BufferedReader(text, SAMPLE);
        String start = lookAhead();
        String firstLine = start.lines().findFirst().orElse("");
        var said = Separator.saidBy(firstLine);
        if (said.isPresent()) {
            reader.readLine();
        }
        linesSkipped = said.isPresent() ? 1 : 0;
        sample = said.isPresent() ? lookAhead() : start;
        separator = said.orElseGet(() -> Separator.of(sample));
    }

    private String lookAhead() throws IOException {
        char[] some = new char[SAMPLE];
        reader.mark(SAMPLE);
        int length = 0;
        int read = 0;
        while (length < SAMPLE && read >= 0) {
            length += read;
            read = reader.read(some, length, SAMPLE - length);
        }
        reader.reset();
        return new String(some, 0, length);
    }

    /** What is left to read, from the beginning of the table. */
    Reader reader() {
        return reader;
    }

    Separator separator() {
        return separator;
    }

    /** Lines before the table. */
    int linesSkipped() {
        return linesSkipped;
    }

    /** Whether the beginning holds signs that no text has. */
    boolean isBinary() {
        boolean cut = !sample.isEmpty() && Character.isHighSurrogate(sample.charAt(sample.length() - 1));
        return Signs.areUnprintable(cut ? sample.substring(0, sample.length() - 1) : sample);
    }
}
