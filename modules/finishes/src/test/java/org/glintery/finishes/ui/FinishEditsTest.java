package org.glintery.finishes.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.activework.Question;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.View;
import org.glintery.finishes.FinishShop;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FinishEditsTest {

    private FinishShop shop;
    private UUID piece;
    private FinishEdits edits;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = FinishShop.at(folder);
        piece = shop.piece("Rope-walk", Standing.MADE);
        edits = new FinishEdits(shop.finishes(), piece);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private void apply(Function<View, Result<ChangeSet>> edit) {
        shop.apply(edit.apply(shop.view()));
    }

    @Test
    void beginsWithThePiecesTitle() {
        assertThat(FinishPage.of(shop.view(), piece).finish()).isEmpty();
        apply(edits.begin());

        assertThat(shop.finish(piece).title()).isEqualTo("Rope-walk");
    }

    @Test
    void anEditSetsItsField_andLeavesWhatAnotherSetMeanwhile() {
        Function<View, Result<ChangeSet>> later = edits.set(copy -> copy.making = "calm");
        apply(edits.set(copy -> copy.score = Optional.of(4)));
        apply(later);

        assertThat(shop.finish(piece).score()).contains(4);
        assertThat(shop.finish(piece).making()).isEqualTo("calm");
    }

    @Test
    void aFieldIsLeftForLater_untilItIsFilledOrTakenBack() {
        apply(edits.leave(Field.SCORE, true));
        apply(edits.leave(Field.TOOLS, true));
        assertThat(shop.finish(piece).later()).isEqualTo(EnumSet.of(Field.SCORE, Field.TOOLS));

        apply(edits.leave(Field.SCORE, false));
        apply(edits.set(copy -> copy.tools = FinishEdits.tools("tray, wide placer;  , pen")));
        assertThat(shop.finish(piece).later()).isEmpty();
        assertThat(shop.finish(piece).tools()).containsExactly("tray", "wide placer", "pen");
    }

    @Test
    void picturesComeOnce_andGo() {
        Blob blob = Blob.of("image/png", TestPictures.png(2, 2));
        Picture picture = new Picture(blob.hash(), "image/png", "wall");
        apply(edits.addPicture(picture, blob, copy -> copy.sketches));
        apply(edits.addPicture(picture, blob, copy -> copy.sketches));
        assertThat(shop.finish(piece).sketches()).containsExactly(picture);
        assertThat(shop.finish(piece).photos()).isEmpty();

        apply(edits.removePicture(picture, copy -> copy.sketches));
        assertThat(shop.finish(piece).sketches()).isEmpty();
    }

    @Test
    void thePageNamesWhatToSettleBeforeSealing() {
        Question open =
                new Question(piece, "Is that patch wrong?", Optional.empty(), FinishShop.MAY, true, Optional.empty());
        shop.apply(Result.ok(ChangeSet.named("Ask")
                .create(Question.TYPE, UUID.randomUUID(), open)
                .build()));

        assertThat(FinishPage.of(shop.view(), piece).settleFirst()).isEqualTo(List.of("Is that patch wrong?"));
    }
}
