package org.glintery.commands.workshop;

import java.nio.file.Path;
import java.util.List;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.openide.util.NbBundle.Messages;

/** What the verbs about the workshop as a whole have in common. */
abstract class WorkshopVerb implements Verb {

    private static final String NEW_FOLDER = "folder";

    private final String name;
    private final Class<? extends Record> answers;

    WorkshopVerb(String name, Class<? extends Record> answers) {
        this.name = name;
        this.answers = answers;
    }

    /** Where a workshop is to be made. */
    @Messages("WorkshopVerb.newFolder=a new or empty folder; else the one --workshop names")
    static Param newFolder() {
        return Param.optionalPositional(NEW_FOLDER, "DIR", Bundle.WorkshopVerb_newFolder());
    }

    /** The folder that {@link #newFolder()} names, else the one of the call. */
    static Path newFolder(VerbCall call) {
        return call.value(NEW_FOLDER).map(call::path).orElseGet(call::workshopFolder);
    }

    @Override
    public final String name() {
        return "workshop " + name;
    }

    @Override
    public final String feature() {
        return "workshop";
    }

    @Override
    public List<Param> params() {
        return List.of();
    }

    @Override
    public final Class<? extends Record> answers() {
        return answers;
    }
}
