package org.glintery.finishes.verbs;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.time.About;
import org.openide.util.NbBundle.Messages;

/** How the verbs write what a finish holds. */
final class FinishWords {

    private FinishWords() {}

    static String date(Optional<About> date) {
        return date.map(About::words).orElse("");
    }

    @Messages({"# {0} - score", "FinishWords.ofFive={0} of 5"})
    static String score(Optional<Integer> score) {
        return score.map(String::valueOf).map(Bundle::FinishWords_ofFive).orElse("");
    }

    @Messages({"FinishWords.sealed=sealed", "FinishWords.notSealed=not sealed"})
    static String sealing(Sealing sealing) {
        return switch (sealing) {
            case NOT_SAID -> "";
            case SEALED -> Bundle.FinishWords_sealed();
            case NOT_SEALED -> Bundle.FinishWords_notSealed();
        };
    }

    static String fields(Collection<Field> fields) {
        return fields.stream().map(FinishWords::field).collect(Collectors.joining(", "));
    }

    @Messages({
        "FinishWords.finishedOn=when it was finished",
        "FinishWords.score=score",
        "FinishWords.making=how it was to make",
        "FinishWords.altered=what was altered",
        "FinishWords.tools=tools",
        "FinishWords.where=where",
        "FinishWords.sealing=sealed or not",
        "FinishWords.picture=picture",
        "FinishWords.comments=comments"
    })
    private static String field(Field field) {
        return switch (field) {
            case FINISHED_ON -> Bundle.FinishWords_finishedOn();
            case SCORE -> Bundle.FinishWords_score();
            case MAKING -> Bundle.FinishWords_making();
            case ALTERED -> Bundle.FinishWords_altered();
            case TOOLS -> Bundle.FinishWords_tools();
            case WHERE -> Bundle.FinishWords_where();
            case SEALING -> Bundle.FinishWords_sealing();
            case PICTURE -> Bundle.FinishWords_picture();
            case COMMENTS -> Bundle.FinishWords_comments();
        };
    }

    /** As an option's value: lower case with hyphens. */
    static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
