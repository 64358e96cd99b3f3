package org.glintery.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.openide.util.NbBundle.Messages;

/** All about one verb. */
record VerbHelp(String name, String summary, String feature, String usage, List<Param> params) implements HelpPage {

    static VerbHelp of(Verb verb) {
        List<Param> params = new ArrayList<>(verb.params());
        params.addAll(CommonParams.all());
        String usage = "glintery-do " + verb.name()
                + params.stream().map(VerbHelp::inUsage).collect(Collectors.joining());
        return new VerbHelp(verb.name(), verb.summary(), verb.feature(), usage, params);
    }

    @Override
    @Messages({"# {0} - how the verb is written", "VerbHelp.usage=Usage: {0}"})
    public String text() {
        StringBuilder text = new StringBuilder(summary)
                .append("\n\n")
                .append(Bundle.VerbHelp_usage(usage))
                .append("\n");
        int width =
                params.stream().mapToInt(param -> written(param).length()).max().orElse(0);
        for (Param param : params) {
            String written = written(param);
            text.append("\n  ")
                    .append(written)
                    .append(" ".repeat(width - written.length() + 2))
                    .append(param.help());
        }
        return text.toString();
    }

    private static String inUsage(Param param) {
        String written = written(param);
        return param.required() ? " " + written : " [" + written + "]";
    }

    private static String written(Param param) {
        return switch (param.kind()) {
            case POSITIONAL -> param.placeholder();
            case OPTION -> "--" + param.name() + " " + param.placeholder();
            case FLAG -> "--" + param.name();
        };
    }
}
