package org.glintery.api.verb;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.glintery.api.JsonCodec;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;

/** One call of a verb: its arguments, the workshop, and where answers go. Verb thread only. */
@Stable
public interface VerbCall {

    /** The value of a positional or an option, the first of several; empty when it was not given. */
    Optional<String> value(String name);

    /**
     * The value of a required parameter: a call without it never gets as far as the verb.
     *
     * @throws java.util.NoSuchElementException for a parameter that was not declared as required
     */
    String need(String name);

    /** All values of a repeated option, or words of the last positional, in their order. */
    List<String> values(String name);

    /** Whether a flag was given. */
    boolean flag(String name);

    /** Whether answers are printed as JSON: whoever prints by {@link #line} need not ask. */
    boolean json();

    /** A path as the caller meant it: relative to the folder the command was given in. */
    Path path(String text);

    /** Opens the workshop on first use. A refusal to open ends the verb with exit code 1. */
    Workshop workshop();

    /** For verbs about workshops that are not open: making, restoring. */
    Workshops workshops();

    /** The folder that {@code --workshop} or the default names; nothing is opened. */
    Path workshopFolder();

    /** What turns records into JSON and back. */
    JsonCodec codec();

    /** The time and zone to work with; tests set it. */
    Clock clock();

    /** Standard input. Reading it blocks until there is some; not closed by the verb. */
    InputStream in();

    /**
     * Prints the answer to one of several deeds at once: the record under {@code --json}, else the text. Flushes. When nobody
     * reads any more the verb is broken off here, says how far it came and ends with exit code 1; a verb that only tells
     * uses {@link #list} and ends quietly.
     */
    void line(Object answer, String text);

    /**
     * Prints an answer that may be too long for the memory, item by item as they come: under {@code --json} one object with
     * this list as its only field, one item a line; else a line of text for each.
     *
     * @param items hands over each item with its text
     */
    default void list(String field, Consumer<BiConsumer<Object, String>> items) {
        items.accept(this::line);
    }

    /** Says something on standard error. */
    void say(String text);
}
