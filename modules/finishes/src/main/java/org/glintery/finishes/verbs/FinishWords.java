package org.glintery.finishes.verbs;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.time.About;

/** How the verbs write what a finish holds. */
final class FinishWords {

    private FinishWords() {}

    static String date(Optional<About> date) {
        return date.map(About::words).orElse("");
    }

    static String score(Optional<Integer> score) {
        return score.map(s -> s + " of 5").orElse("");
    }

    static String sealing(Sealing sealing) {
        return switch (sealing) {
            case NOT_SAID -> "";
            case SEALED -> "sealed";
            case NOT_SEALED -> "not sealed";
        };
    }

    static String fields(Collection<Field> fields) {
        return fields.stream().map(FinishWords::field).collect(Collectors.joining(", "));
    }

    private static String field(Field field) {
        return switch (field) {
            case FINISHED_ON -> "when it was finished";
            case SCORE -> "score";
            case MAKING -> "how it was to make";
            case ALTERED -> "what was altered";
            case TOOLS -> "tools";
            case WHERE -> "where";
            case SEALING -> "sealed or not";
            case PICTURE -> "picture";
            case COMMENTS -> "comments";
        };
    }

    /** As an option's value: lower case with hyphens. */
    static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
