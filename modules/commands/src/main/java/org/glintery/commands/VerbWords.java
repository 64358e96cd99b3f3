package org.glintery.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.verb.Verb;

/**
 * A call split into its verb and the rest. Common options may stand before the verb: they are moved behind it.
 *
 * @param said the words taken for a verb, for messages
 * @param rest the arguments; when there is no such verb, all words but the common options before them
 */
record VerbWords(Optional<Verb> verb, String said, List<String> rest, boolean wantsJson, boolean wantsHelp) {

    static VerbWords split(List<String> words, VerbCatalogue verbs) {
        List<String> before = new ArrayList<>();
        int at = 0;
        while (at < words.size() && isCommon(words.get(at))) {
            before.add(words.get(at));
            at++;
            if (before.get(before.size() - 1).equals("--" + CommonParams.WORKSHOP) && at < words.size()) {
                before.add(words.get(at));
                at++;
            }
        }
        List<String> after = words.subList(at, words.size());
        boolean json = wants(CommonParams.JSON, before) || wants(CommonParams.JSON, after);
        boolean help = wants(CommonParams.HELP, before);
        Optional<Verb> verb = verbs.startOf(after);
        if (verb.isEmpty()) {
            return new VerbWords(
                    verb, String.join(" ", after.subList(0, Math.min(2, after.size()))), after, json, help);
        }
        List<String> rest = new ArrayList<>(before);
        rest.addAll(after.subList(verb.get().name().split(" ").length, after.size()));
        return new VerbWords(verb, verb.get().name(), rest, json, help);
    }

    /** Known before the arguments are read, so that wrong ones are answered as JSON too. */
    private static boolean wants(String flag, List<String> words) {
        int end = words.indexOf(ArgumentReading.END_OF_OPTIONS);
        return words.subList(0, end < 0 ? words.size() : end).contains("--" + flag);
    }

    private static boolean isCommon(String word) {
        return CommonParams.all().stream().anyMatch(param -> word.equals("--" + param.name()))
                || word.startsWith("--" + CommonParams.WORKSHOP + "=");
    }
}
