package org.glintery.commands;

import java.util.List;
import java.util.Optional;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;

/** A verb for tests that does what it is told. */
final class SpokenVerb implements Verb {

    /** What the verb does. */
    interface Work {
        VerbResult run(VerbCall call) throws Exception;
    }

    record Echo(Optional<String> said, List<String> times, boolean loud) {}

    private final String name;
    private final Work work;

    SpokenVerb(String name, Work work) {
        this.name = name;
        this.work = work;
    }

    static SpokenVerb echo(String name) {
        return new SpokenVerb(name, call -> {
            Echo echo = new Echo(call.value("words"), call.values("times"), call.flag("loud"));
            return VerbResult.said(echo, "heard " + echo.said().orElse("nothing"));
        });
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String summary() {
        return "Say something";
    }

    @Override
    public String feature() {
        return "speech";
    }

    @Override
    public List<Param> params() {
        return List.of(
                Param.positional("words", "WORDS", "what to say"),
                Param.option("times", "N", "how often"),
                Param.flag("loud", "not to be missed"));
    }

    @Override
    public Class<? extends Record> answers() {
        return Echo.class;
    }

    @Override
    public VerbResult run(VerbCall call) throws Exception {
        return work.run(call);
    }
}
