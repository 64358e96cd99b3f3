package org.glintery.commands;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.PlainText;
import org.glintery.api.Result;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Param.Kind;
import org.glintery.api.verb.Verb;
import org.openide.util.NbBundle.Messages;

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
        return new ArgumentReading(Stream.concat(verb.params().stream(), CommonParams.all().stream())
                .toList());
    }

    /** Refused with what is wrong, fit to be shown. */
    @Messages({
        "# {0} - option",
        "ArgumentReading.noValue=--{0} takes no value.",
        "# {0} - option",
        "# {1} - what stands for its value",
        "ArgumentReading.value=--{0} needs a value: {1}."
    })
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
                return wrong(noOption(name));
            }
            if (param.get().kind() == Kind.FLAG) {
                if (equals >= 0) {
                    return wrong(Bundle.ArgumentReading_noValue(name));
                }
                flags.add(name);
                continue;
            }
            boolean missing = equals < 0 && (at == words.size() || isOption(words.get(at)));
            if (missing) {
                return wrong(Bundle.ArgumentReading_value(name, param.get().placeholder()));
            }
            put(name, equals < 0 ? words.get(at) : word.substring(equals + 1));
            at += equals < 0 ? 1 : 0;
        }
        return flags.contains(CommonParams.HELP) ? Result.ok(new Arguments(values, flags)) : deal();
    }

    @Messages({"# {0} - words in quotes", "ArgumentReading.leftOver=Left over: {0}. Put what holds blanks in quotes."})
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
            String left = positionals.subList(at, positionals.size()).stream()
                    .map(word -> "'" + word + "'")
                    .collect(Collectors.joining(", "));
            return wrong(Bundle.ArgumentReading_leftOver(left));
        }
        return params.stream()
                .filter(Param::required)
                .flatMap(param -> unsaid(param).stream())
                .findFirst()
                .map(ArgumentReading::wrong)
                .orElseGet(() -> Result.ok(new Arguments(values, flags)));
    }

    /** What is wrong with a required parameter: it is not there, or is there without saying anything. */
    @Messages({
        "# {0} - place or option",
        "# {1} - what it is for",
        "ArgumentReading.missing={0} is missing: {1}.",
        "# {0} - place or option",
        "# {1} - what it is for",
        "ArgumentReading.blank={0} is empty: {1}."
    })
    private Optional<String> unsaid(Param param) {
        String written = param.kind() == Kind.POSITIONAL ? param.placeholder() : "--" + param.name();
        List<String> given = values.getOrDefault(param.name(), List.of());
        if (given.isEmpty()) {
            return Optional.of(Bundle.ArgumentReading_missing(written, param.help()));
        }
        return given.stream().anyMatch(value -> PlainText.line(value).isBlank())
                ? Optional.of(Bundle.ArgumentReading_blank(written, param.help()))
                : Optional.empty();
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

    @Messages({
        "# {0} - option",
        "ArgumentReading.noOption=There is no option --{0}.",
        "# {0} - option",
        "# {1} - an option that is written nearly so",
        "ArgumentReading.noOptionPerhaps=There is no option --{0}. Perhaps --{1}?"
    })
    private String noOption(String name) {
        return params.stream()
                .filter(param -> param.kind() != Kind.POSITIONAL && Spelling.near(param.name(), name))
                .findFirst()
                .map(param -> Bundle.ArgumentReading_noOptionPerhaps(name, param.name()))
                .orElseGet(() -> Bundle.ArgumentReading_noOption(name));
    }

    private static Result<Arguments> wrong(String text) {
        return Result.refused(USAGE, text);
    }
}
