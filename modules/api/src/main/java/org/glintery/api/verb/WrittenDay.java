package org.glintery.api.verb;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.util.Optional;
import java.util.ResourceBundle;
import org.glintery.api.Preview;
import org.glintery.api.time.About;

/** Dates as a caller writes them. Verb thread only. */
@Preview(since = "1.0")
public final class WrittenDay {

    private WrittenDay() {}

    /**
     * Reads what {@link About#said} reads, by the call's clock. Where day and month could both be meant, as in "3/4/2025", it
     * says on standard error how it was read. Empty when it is not understood.
     */
    public static Optional<About> of(VerbCall call, String written) {
        LocalDate today = LocalDate.now(call.clock());
        Optional<About> said = About.said(written, today);
        Optional<About> other = About.otherwise(written, today);
        said.ifPresent(read -> other.ifPresent(o -> call.say(doubt(written, read, o))));
        return said;
    }

    private static String doubt(String written, About read, About other) {
        ResourceBundle texts = ResourceBundle.getBundle(WrittenDay.class.getPackageName() + ".Bundle");
        return MessageFormat.format(
                texts.getString("WrittenDay.either"), written.strip(), read.words(), other.words(), other.toString());
    }
}
