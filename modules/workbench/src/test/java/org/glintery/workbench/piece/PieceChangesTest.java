package org.glintery.workbench.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.View;
import org.glintery.workbench.TestView;
import org.glintery.workbench.parts.PictureDrop;
import org.junit.jupiter.api.Test;

class PieceChangesTest {
    private static final UUID PIECE = new UUID(1, 1);
    private static final Blob BLOB = Blob.of("image/png", new byte[] {1, 2, 3});
    private static final Picture NEW = new Picture(BLOB.hash(), "image/png", "new");
    private static final Picture ONE = new Picture("a".repeat(64), "image/png", "one");
    private static final Picture TWO = new Picture("b".repeat(64), "image/png", "two");
    private final PieceChanges changes = new PieceChanges(PIECE);

    private static TestView view(Picture... pictures) {
        return new TestView(1)
                .with(
                        Piece.TYPE,
                        PIECE,
                        Piece.titled("Rope-walk", Standing.SHELVED).withPictures(List.of(pictures)));
    }

    private static Piece after(View view, Function<View, Result<ChangeSet>> change) {
        return (Piece) change.apply(view).orThrow().operations().stream()
                .filter(Operation.Put.class::isInstance)
                .map(operation -> ((Operation.Put<?>) operation).value())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPictureComesLast_withItsBytesInTheSameChange() {
        Function<View, Result<ChangeSet>> adding = changes.addPicture(new PictureDrop.Taken(NEW, BLOB));

        assertThat(after(view(ONE), adding).pictures()).containsExactly(ONE, NEW);
        assertThat(adding.apply(view(ONE)).orThrow().operations()).contains(new Operation.AddBlob(BLOB));
        assertThat(after(view(NEW, ONE), adding).pictures()).containsExactly(NEW, ONE);
    }

    @Test
    void aPictureIsPutFirst_andTakenAway() {
        assertThat(after(view(ONE, TWO), changes.putFirst(TWO)).pictures()).containsExactly(TWO, ONE);
        assertThat(after(view(ONE, TWO), changes.removePicture(ONE)).pictures()).containsExactly(TWO);
    }

    @Test
    void everyChangeIsRefused_whenThePieceIsGone() {
        assertThat(changes.story("Once").apply(new TestView(2))).isInstanceOf(Result.Refused.class);
        assertThat(changes.putFirst(ONE).apply(new TestView(2))).isInstanceOf(Result.Refused.class);
    }
}
