package org.glintery.commands.workshop;

import java.nio.file.Path;
import java.util.List;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;

/** What the verbs about the workshop as a whole have in common. */
abstract class WorkshopVerb implements Verb {

    /** Where a workshop is to be made. */
    static final Param NEW_FOLDER =
            Param.optionalPositional("folder", "DIR", "a new or empty folder; else the one --workshop names");

    private final String name;
    private final String summary;
    private final Class<? extends Record> answers;
    private final List<Param> params;

    WorkshopVerb(String name, String summary, Class<? extends Record> answers, Param... params) {
        this.name = name;
        this.summary = summary;
        this.answers = answers;
        this.params = List.of(params);
    }

    /** The folder that {@link #NEW_FOLDER} names, else the one of the call. */
    static Path newFolder(VerbCall call) {
        return call.value(NEW_FOLDER.name()).map(call::path).orElseGet(call::workshopFolder);
    }

    @Override
    public final String name() {
        return "workshop " + name;
    }

    @Override
    public final String summary() {
        return summary;
    }

    @Override
    public final String feature() {
        return "workshop";
    }

    @Override
    public final List<Param> params() {
        return params;
    }

    @Override
    public final Class<? extends Record> answers() {
        return answers;
    }
}
