package org.glintery.commands;

import java.util.List;
import org.glintery.api.verb.Param;

/** What every verb takes besides its own. */
final class CommonParams {

    static final String WORKSHOP = "workshop";
    static final String JSON = "json";
    static final String HELP = "help";

    static final List<Param> ALL = List.of(
            Param.option(WORKSHOP, "DIR", "the folder of the workshop"),
            Param.flag(JSON, "answer as JSON"),
            Param.flag(HELP, "only tell about the verb"));

    private CommonParams() {}
}
