package org.glintery.api.verb;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.glintery.api.JsonCodec;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;

/** One call of a verb: its arguments, the workshop, and where answers go. Verb thread only. */
@Stable
public interface VerbCall {

    /** The value of a positional or an option. */
    Optional<String> value(String name);

    /** The value of a required parameter. */
    String need(String name);

    /** All values of a repeated option. */
    List<String> values(String name);

    boolean flag(String name);

    boolean json();

    /** A path as the caller meant it: relative to the folder the command was given in. */
    Path path(String text);

    /** Opens the workshop on first use. A refusal to open ends the verb with exit code 1. */
    Workshop workshop();

    Workshops workshops();

    /** The folder that {@code --workshop} or the default names; nothing is opened. */
    Path workshopFolder();

    JsonCodec codec();

    Clock clock();

    InputStream in();

    /** Prints one answer line at once: the record under {@code --json}, else the text. Flushes. */
    void line(Object answer, String text);

    /** Says something on standard error. */
    void say(String text);
}
