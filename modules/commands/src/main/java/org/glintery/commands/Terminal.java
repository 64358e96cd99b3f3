package org.glintery.commands;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Where answers go, and everything else. UTF-8 whatever the locale: other programs read it. Verb thread only. */
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
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        to.write(bytes, 0, bytes.length);
        to.flush();
    }

    /** Whoever read the answers has stopped, such as {@code head}: no fault, the call ends without a word. */
    static final class ReaderGone extends RuntimeException {
        private static final long serialVersionUID = 1L;

        ReaderGone() {
            super("nobody reads the answers", null, false, false);
        }
    }
}
