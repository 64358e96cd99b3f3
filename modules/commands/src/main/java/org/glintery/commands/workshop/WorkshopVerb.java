package org.glintery.commands.workshop;

import java.util.List;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;

/** What the verbs about the workshop as a whole have in common. */
abstract class WorkshopVerb implements Verb {

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
