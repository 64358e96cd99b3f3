package org.glintery.finishes;

import java.util.EnumSet;
import java.util.Set;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;

/** Which fields of a record are filled. Pure; any thread. */
public final class FinishFields {

    private FinishFields() {}

    public static boolean isFilled(Finish finish, Field field) {
        return switch (field) {
            case FINISHED_ON -> finish.finishedOn().isPresent();
            case SCORE -> finish.score().isPresent();
            case MAKING -> !finish.making().isBlank();
            case ALTERED -> !finish.altered().isBlank();
            case TOOLS -> !finish.tools().isEmpty();
            case WHERE -> finish.where().filter(where -> !where.isBlank()).isPresent();
            case SEALING -> finish.sealing() != Sealing.NOT_SAID;
            case PICTURE -> !finish.photos().isEmpty() || !finish.sketches().isEmpty();
            case COMMENTS -> !finish.comments().isBlank();
        };
    }

    /** The fields with nothing in them. */
    public static Set<Field> empty(Finish finish) {
        Set<Field> fields = EnumSet.allOf(Field.class);
        fields.removeIf(field -> isFilled(finish, field));
        return fields;
    }

    /** The record with these fields left for later, as far as they are not filled. */
    public static Finish leaving(Finish finish, Set<Field> later) {
        Set<Field> left = EnumSet.noneOf(Field.class);
        left.addAll(later);
        left.retainAll(empty(finish));
        return finish.withLater(left);
    }
}
