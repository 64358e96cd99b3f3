package org.glintery.stash.posting;

import java.io.BufferedInputStream;
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
        this.in = new BufferedInputStream(in, 1 << 16);
    }

    /** The next line; empty at the end. */
    @Messages("LineInput.tooLong=A line may have at most 16 MiB.")
    Optional<Line> next() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
        boolean tooLong = false;
        int b = in.read();
        if (b < 0) {
            return Optional.empty();
        }
        line++;
        while (b >= 0 && b != '\n') {
            if (bytes.size() < MOST_BYTES) {
                bytes.write(b);
            } else {
                tooLong = true;
            }
            b = in.read();
        }
        return Optional.of(tooLong ? faulty(Bundle.LineInput_tooLong()) : decoded(bytes.toByteArray()));
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
