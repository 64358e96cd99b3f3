package org.glintery.workbench.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.PictureDrop;
import org.openide.util.NbBundle.Messages;

/** The changes that the page of a piece makes by itself, each from the newest view. Made without Swing; any thread. */
final class PieceChanges {
    private final UUID piece;

    PieceChanges(UUID piece) {
        this.piece = piece;
    }

    @Messages({"# {0} - title", "PieceChanges.story=Write the story of {0}"})
    Function<View, Result<ChangeSet>> story(String text) {
        return view -> change(view, Bundle::PieceChanges_story, old -> old.withStory(text));
    }

    /** A picture that is there already is not added again. */
    @Messages({"# {0} - title", "PieceChanges.addPicture=Add a picture to {0}"})
    Function<View, Result<ChangeSet>> addPicture(PictureDrop.Taken taken) {
        ChangeSet bytes = ChangeSet.named("").blob(taken.blob()).build();
        return view -> pictures(view, Bundle::PieceChanges_addPicture, pictures -> {
                    if (pictures.stream()
                            .noneMatch(p -> p.hash().equals(taken.picture().hash()))) {
                        pictures.add(taken.picture());
                    }
                })
                .then(change -> Result.ok(change.join(bytes)));
    }

    @Messages({"# {0} - title", "PieceChanges.removePicture=Take a picture of {0} away"})
    Function<View, Result<ChangeSet>> removePicture(Picture picture) {
        return view -> pictures(view, Bundle::PieceChanges_removePicture, pictures -> pictures.remove(picture));
    }

    /** The first picture is the one on the job card. */
    @Messages({"# {0} - title", "PieceChanges.putFirst=Show another picture of {0} first"})
    Function<View, Result<ChangeSet>> putFirst(Picture picture) {
        return view -> pictures(view, Bundle::PieceChanges_putFirst, pictures -> {
            if (pictures.remove(picture)) {
                pictures.add(0, picture);
            }
        });
    }

    private Result<ChangeSet> pictures(
            View view, Function<String, String> sentence, java.util.function.Consumer<List<Picture>> edit) {
        return change(view, sentence, old -> {
            List<Picture> pictures = new ArrayList<>(old.pictures());
            edit.accept(pictures);
            return old.withPictures(pictures);
        });
    }

    @Messages("PieceChanges.gone=The piece is not there any more. Nothing was changed.")
    private Result<ChangeSet> change(View view, Function<String, String> sentence, UnaryOperator<Piece> edit) {
        return view.find(Piece.TYPE, piece)
                .map(stored ->
                        Result.ok(ChangeSet.named(sentence.apply(stored.value().title()))
                                .replace(Piece.TYPE, stored, edit.apply(stored.value()))
                                .build()))
                .orElseGet(() -> Result.refused("gone", Bundle.PieceChanges_gone()));
    }
}
