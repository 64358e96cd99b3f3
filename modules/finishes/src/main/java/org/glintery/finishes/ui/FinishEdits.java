package org.glintery.finishes.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.View;

/** The changes that the Finish tab makes, each from the newest view. Made without Swing; any thread. */
final class FinishEdits {

    private final Finishes finishes;
    private final UUID piece;

    FinishEdits(Finishes finishes, UUID piece) {
        this.finishes = finishes;
        this.piece = piece;
    }

    /** Begins the record with what is known of the piece. */
    Function<View, Result<ChangeSet>> begin() {
        return set(copy -> {});
    }

    Function<View, Result<ChangeSet>> set(Consumer<FinishCopy> edit) {
        return write(List.of(), edit);
    }

    Function<View, Result<ChangeSet>> leave(Field field, boolean later) {
        return set(copy -> {
            if (later) {
                copy.later.add(field);
            } else {
                copy.later.remove(field);
            }
        });
    }

    /** @param into which of the copy's lists takes it */
    Function<View, Result<ChangeSet>> addPicture(Picture picture, Blob blob, Function<FinishCopy, List<Picture>> into) {
        return write(List.of(blob), copy -> {
            List<Picture> pictures = into.apply(copy);
            if (pictures.stream().noneMatch(kept -> kept.hash().equals(picture.hash()))) {
                pictures.add(picture);
            }
        });
    }

    Function<View, Result<ChangeSet>> removePicture(Picture picture, Function<FinishCopy, List<Picture>> from) {
        return set(copy -> from.apply(copy).remove(picture));
    }

    /** Names of tools as they are typed, between commas. */
    static List<String> tools(String typed) {
        return Arrays.stream(typed.split("[,;\\n]"))
                .map(String::strip)
                .filter(tool -> !tool.isEmpty())
                .toList();
    }

    static Optional<String> where(String typed) {
        return Optional.of(typed.strip()).filter(where -> !where.isEmpty());
    }

    private Function<View, Result<ChangeSet>> write(List<Blob> pictures, Consumer<FinishCopy> edit) {
        return view -> {
            Finish before = FinishPage.of(view, piece).orNew();
            FinishCopy copy = new FinishCopy(before);
            edit.accept(copy);
            return finishes.write(view, piece, copy.finish(), pictures);
        };
    }
}
