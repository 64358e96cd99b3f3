package org.glintery.api.verb;

import java.util.List;
import org.glintery.api.ExtensionPoint;
import org.glintery.api.Stable;

/** Extension point: one verb of {@code glintery-do}. Called on the verb thread, never the event thread. */
@Stable
@ExtensionPoint
public interface Verb {

    /** Its words, such as {@code kit add}. */
    String name();

    /** One line for the list of verbs. */
    String summary();

    /** The feature it belongs to, for grouping in the list of verbs, such as {@code stash}. */
    String feature();

    List<Param> params();

    /** The record that {@code --json} prints; a schema is generated from it. */
    Class<? extends Record> answers();

    /** Does the work. A refusal is returned; what is thrown ends the process with exit code 3. */
    VerbResult run(VerbCall call) throws Exception;
}
