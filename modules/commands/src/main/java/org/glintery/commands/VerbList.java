package org.glintery.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.glintery.api.verb.Verb;
import org.openide.util.NbBundle.Messages;

/** All verbs, by feature. */
record VerbList(List<Feature> features) implements HelpPage {

    /** @param name such as {@code stash} */
    record Feature(String name, List<Line> verbs) {}

    /** One verb. */
    record Line(String name, String summary) {}

    static VerbList of(VerbCatalogue verbs) {
        List<Feature> features = new ArrayList<>();
        for (Map.Entry<String, List<Verb>> feature : verbs.byFeature().entrySet()) {
            features.add(new Feature(
                    feature.getKey(),
                    feature.getValue().stream()
                            .map(verb -> new Line(verb.name(), verb.summary()))
                            .toList()));
        }
        return new VerbList(features);
    }

    @Override
    @Messages({
        "VerbList.usage=Usage: glintery-do VERB [arguments] [--workshop DIR] [--json] [--help]",
        "VerbList.more='glintery-do VERB --help' tells all about one verb. The workshop is the folder that --workshop names, else\n"
                + "the environment variable GLINTERY_WORKSHOP, else 'Glintery' in your home folder.\n"
                + "Exit codes: 0 done, 1 refused and nothing changed, 2 called wrongly, 3 a fault of ours."
    })
    public String text() {
        int width = features.stream()
                .flatMap(feature -> feature.verbs().stream())
                .mapToInt(line -> line.name().length())
                .max()
                .orElse(0);
        StringBuilder text = new StringBuilder(Bundle.VerbList_usage()).append('\n');
        for (Feature feature : features) {
            text.append('\n').append(feature.name()).append('\n');
            for (Line line : feature.verbs()) {
                text.append("  ")
                        .append(line.name())
                        .append(" ".repeat(width - line.name().length() + 2))
                        .append(line.summary())
                        .append('\n');
            }
        }
        return text.append('\n').append(Bundle.VerbList_more()).toString();
    }
}
