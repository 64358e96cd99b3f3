package org.glintery.commands;

import java.util.List;
import org.glintery.api.verb.Param;
import org.openide.util.NbBundle.Messages;

/** What every verb takes besides its own. */
final class CommonParams {

    static final String WORKSHOP = "workshop";
    static final String JSON = "json";
    static final String HELP = "help";

    private CommonParams() {}

    @Messages({
        "CommonParams.workshop=the folder of the workshop",
        "CommonParams.json=answer as JSON",
        "CommonParams.help=only tell about the verb"
    })
    static List<Param> all() {
        return List.of(
                Param.option(WORKSHOP, "DIR", Bundle.CommonParams_workshop()),
                Param.flag(JSON, Bundle.CommonParams_json()),
                Param.flag(HELP, Bundle.CommonParams_help()));
    }
}
