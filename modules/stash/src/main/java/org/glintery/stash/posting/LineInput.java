package org.glintery.stash.posting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.openide.util.NbBundle.Messages;

/** Lines of UTF-8, handed over as they come; what is too long or not text is passed over. One thread. */
final class LineInput {

    /** Longer lines are refused: 16 MiB. */
    static final int MOST_BYTES = 16 << 20;

    private final InputStream in;
    private final byte[] read = new byte[1 << 16];
    private int next;
    private int end;
    private long line;

    /**
     * A line.
     *
     * @param number from 1
     * @param text empty when the line can't be taken
     * @param fault why not, as a plain sentence; empty when it can
     */
    record Line(long number, String text, String fault) {
        boolean isBlank() {
            return text.isBlank() && fault.isEmpty();
        }
    }

    LineInput(InputStream in) {
        this.in = in;
    }

    /** The next line; empty at the end. */
    @Messages("LineInput.tooLong=A line may have at most 16 MiB.")
    Optional<Line> next() throws IOException {
        if (!hasMore()) {
            return Optional.empty();
        }
        line++;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
        boolean tooLong = false;
        boolean ended = false;
        while (!ended && hasMore()) {
            int stop = endOfLine();
            tooLong |= bytes.size() + stop - next > MOST_BYTES;
            if (!tooLong) {
                bytes.write(read, next, stop - next);
            }
            ended = stop < end;
            next = ended ? stop + 1 : stop;
        }
        return Optional.of(tooLong ? faulty(Bundle.LineInput_tooLong()) : decoded(bytes.toByteArray()));
    }

    /** Whether a byte is there; waits for one. */
    private boolean hasMore() throws IOException {
        if (next == end) {
            next = 0;
            end = Math.max(0, in.read(read));
        }
        return next < end;
    }

    /** The next line break that was read, or the end of what was read. */
    private int endOfLine() {
        int at = next;
        while (at < end && read[at] != '\n') {
            at++;
        }
        return at;
    }

    @Messages("LineInput.noText=The line is not text in UTF-8.")
    private Line decoded(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new Line(line, text, "");
        } catch (CharacterCodingException e) {
            return faulty(Bundle.LineInput_noText());
        }
    }

    private Line faulty(String fault) {
        return new Line(line, "", fault);
    }
}
