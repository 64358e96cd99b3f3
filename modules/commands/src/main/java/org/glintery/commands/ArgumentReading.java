package org.glintery.commands;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Param.Kind;
import org.glintery.api.verb.Verb;

/**
 * Reads the words behind a verb: {@code --name VALUE}, {@code --name=VALUE}, {@code --flag}, positionals. A word of one
 * dash, such as {@code -} or {@code -5}, is a positional; {@code --} ends the options. Not safe for use by several threads.
 */
final class ArgumentReading {

    static final String END_OF_OPTIONS = "--";
    private static final String SEVERAL = "...";
    private static final String USAGE = "wrong-usage";

    private final List<Param> params;
    private final Map<String, List<String>> values = new LinkedHashMap<>();
    private final Set<String> flags = new HashSet<>();
    private final List<String> positionals = new ArrayList<>();

    private ArgumentReading(List<Param> params) {
        this.params = params;
    }

    static ArgumentReading of(Verb verb) {
        return new ArgumentReading(
                Stream.concat(verb.params().stream(), CommonParams.ALL.stream()).toList());
    }

    /** Refused with what is wrong, fit to be shown. */
    Result<Arguments> read(List<String> words) {
        int at = 0;
        while (at < words.size()) {
            String word = words.get(at);
            at++;
            if (word.equals(END_OF_OPTIONS)) {
                positionals.addAll(words.subList(at, words.size()));
                break;
            }
            if (!word.startsWith("--")) {
                positionals.add(word);
                continue;
            }
            int equals = word.indexOf('=');
            String name = word.substring(2, equals < 0 ? word.length() : equals);
            Optional<Param> param = named(name);
            if (param.isEmpty()) {
                return wrong("There is no option --" + name + "." + nearest(name));
            }
            if (param.get().kind() == Kind.FLAG) {
                if (equals >= 0) {
                    return wrong("--" + name + " takes no value.");
                }
                flags.add(name);
                continue;
            }
            boolean missing = equals < 0 && (at == words.size() || isOption(words.get(at)));
            if (missing) {
                return wrong("--" + name + " needs a value: " + param.get().placeholder() + ".");
            }
            put(name, equals < 0 ? words.get(at) : word.substring(equals + 1));
            at += equals < 0 ? 1 : 0;
        }
        return flags.contains(CommonParams.HELP) ? Result.ok(new Arguments(values, flags)) : deal();
    }

    private Result<Arguments> deal() {
        List<Param> places =
                params.stream().filter(p -> p.kind() == Kind.POSITIONAL).toList();
        int at = 0;
        for (Param place : places) {
            boolean several = place.placeholder().endsWith(SEVERAL);
            while (at < positionals.size() && (several || !values.containsKey(place.name()))) {
                put(place.name(), positionals.get(at));
                at++;
            }
        }
        if (at < positionals.size()) {
            String left = String.join("', '", positionals.subList(at, positionals.size()));
            return wrong("Left over: '" + left + "'. Put what holds blanks in quotes.");
        }
        for (Param param : params) {
            if (param.required() && !values.containsKey(param.name())) {
                String written = param.kind() == Kind.POSITIONAL ? param.placeholder() : "--" + param.name();
                return wrong(written + " is missing: " + param.help() + ".");
            }
        }
        return Result.ok(new Arguments(values, flags));
    }

    private void put(String name, String value) {
        values.computeIfAbsent(name, n -> new ArrayList<>()).add(value);
    }

    /** An option's value may begin with two dashes, but not be an option of this verb: that is a forgotten value. */
    private boolean isOption(String word) {
        return word.startsWith("--") && named(word.substring(2)).isPresent();
    }

    private Optional<Param> named(String name) {
        return params.stream()
                .filter(param -> param.kind() != Kind.POSITIONAL && param.name().equals(name))
                .findFirst();
    }

    private String nearest(String name) {
        return params.stream()
                .filter(param -> param.kind() != Kind.POSITIONAL && Spelling.near(param.name(), name))
                .findFirst()
                .map(param -> " Perhaps --" + param.name() + "?")
                .orElse("");
    }

    private static Result<Arguments> wrong(String text) {
        return Result.refused(USAGE, text);
    }
}
