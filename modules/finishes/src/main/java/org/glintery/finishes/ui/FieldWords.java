package org.glintery.finishes.ui;

import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.openide.util.NbBundle.Messages;

/** The fields of a finish in words. Pure. */
final class FieldWords {

    private FieldWords() {}

    @Messages({
        "FieldWords.finishedOn=When it was finished",
        "FieldWords.score=Score",
        "FieldWords.making=How it was to make",
        "FieldWords.altered=What was altered",
        "FieldWords.tools=Tools",
        "FieldWords.where=Where it was made",
        "FieldWords.sealing=Sealed or not",
        "FieldWords.picture=A photo or a sketch",
        "FieldWords.comments=Anything else"
    })
    static String of(Field field) {
        return switch (field) {
            case FINISHED_ON -> Bundle.FieldWords_finishedOn();
            case SCORE -> Bundle.FieldWords_score();
            case MAKING -> Bundle.FieldWords_making();
            case ALTERED -> Bundle.FieldWords_altered();
            case TOOLS -> Bundle.FieldWords_tools();
            case WHERE -> Bundle.FieldWords_where();
            case SEALING -> Bundle.FieldWords_sealing();
            case PICTURE -> Bundle.FieldWords_picture();
            case COMMENTS -> Bundle.FieldWords_comments();
        };
    }

    /** "score, tools, a photo or a sketch". */
    static String list(Collection<Field> fields) {
        return fields.stream()
                .map(field -> of(field))
                .map(words -> words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1))
                .collect(Collectors.joining(", "));
    }

    @Messages({"FieldWords.notSaid=Not said", "FieldWords.sealed=Sealed", "FieldWords.notSealed=Not sealed"})
    static String of(Sealing sealing) {
        return switch (sealing) {
            case NOT_SAID -> Bundle.FieldWords_notSaid();
            case SEALED -> Bundle.FieldWords_sealed();
            case NOT_SEALED -> Bundle.FieldWords_notSealed();
        };
    }
}
