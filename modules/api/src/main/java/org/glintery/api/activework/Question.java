package org.glintery.api.activework;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;

/**
 * A doubt about a piece.
 *
 * @param pin where on a picture
 * @param settleFirst whether it has to be settled before sealing, trimming or framing
 * @param answer absent while it is open
 */
@Stable
public record Question(
        UUID piece, String text, Optional<Pin> pin, About askedOn, boolean settleFirst, Optional<Answer> answer) {
    public static final DocumentType<Question> TYPE = DocumentType.of("activework", "question", Question.class);

    public Question {
        text = PlainText.lines(text);
    }

    /** A place on a picture; x and y from 0 to 1, from the top left. */
    public record Pin(String picture, double x, double y) {
        public Pin {
            picture = PlainText.line(picture);
        }
    }

    /** @param changed false for "left as it is, because ..." */
    public record Answer(boolean changed, String because, About on) {
        public Answer {
            because = PlainText.lines(because);
        }
    }
}
