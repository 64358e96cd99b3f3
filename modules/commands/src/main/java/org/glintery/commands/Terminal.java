package org.glintery.commands;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.glintery.api.PlainText;

/**
 * Where answers go, and everything else. UTF-8 whatever the locale: other programs read it. Of control characters only line
 * breaks and tabs are sent, any other is written out as JSON does: it could move the cursor or worse. Verb thread only.
 */
final class Terminal {

    private final PrintStream out;
    private final PrintStream err;

    Terminal(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** Prints one of several answers at once, in one write. @throws ReaderGone when nobody reads any more */
    void answer(String text) {
        part(text + "\n");
    }

    /** Prints part of an answer. @throws ReaderGone when nobody reads any more */
    void part(String text) {
        write(out, text);
        if (out.checkError()) {
            throw new ReaderGone();
        }
    }

    /** Prints the last answer of a call: whether anybody still reads it changes nothing any more. */
    void lastAnswer(String text) {
        write(out, text + "\n");
    }

    /** Says something beside the answers. */
    void aside(String text) {
        write(err, text + "\n");
    }

    private static void write(PrintStream to, String text) {
        byte[] bytes = shown(text).getBytes(StandardCharsets.UTF_8);
        to.write(bytes, 0, bytes.length);
        to.flush();
    }

    private static String shown(String text) {
        if (text.chars().noneMatch(Terminal::isUnsent)) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length() + 16);
        text.chars().forEach(c -> {
            if (isUnsent(c)) {
                shown.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                shown.append((char) c);
            }
        });
        return shown.toString();
    }

    private static boolean isUnsent(int c) {
        return PlainText.isControl(c) && c != '\n' && c != '\t';
    }

    /** Whoever read the answers has stopped, such as {@code head}: no fault of ours. */
    static final class ReaderGone extends RuntimeException {
        private static final long serialVersionUID = 1L;

        ReaderGone() {
            super("nobody reads the answers", null, false, false);
        }
    }
}
