package org.glintery.finishes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.finishes.FinishShop.MAY;
import static org.glintery.finishes.FinishShop.about;
import static org.glintery.finishes.FinishShop.refusal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FinishBeginningTest {

    private FinishShop shop;
    private UUID piece;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = FinishShop.at(folder);
        piece = shop.piece("Rope-walk", Standing.ON_THE_BENCH);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Result<ChangeSet> completing(Optional<Integer> score, String comments) {
        return shop.finishes().completing(shop.view(), new Completion(piece, MAY, score, comments));
    }

    private void sitting(UUID of, About day) {
        Sitting sitting = new Sitting(
                of, day, Optional.empty(), Optional.empty(), Optional.empty(), 0, Laid.NOT_SAID, Optional.empty(), "");
        shop.apply(Result.ok(ChangeSet.named("Sit")
                .create(Sitting.TYPE, UUID.randomUUID(), sitting)
                .build()));
    }

    @Test
    void beginsTheFinish_withWhatIsKnown_andLeavesTheRestForLater() {
        sitting(piece, about("12 April 2025"));
        sitting(piece, about("March 2025"));
        sitting(shop.piece("Net loft", Standing.ON_THE_BENCH), about("2020"));
        shop.apply(completing(Optional.of(4), "at last"));

        Finish finish = shop.finish(piece);
        assertThat(finish.title()).isEqualTo("Rope-walk");
        assertThat(finish.startedOn()).contains(about("March 2025"));
        assertThat(finish.finishedOn()).contains(MAY);
        assertThat(finish.score()).contains(4);
        assertThat(finish.comments()).isEqualTo("at last");
        assertThat(finish.later())
                .containsExactlyInAnyOrder(
                        Field.MAKING, Field.ALTERED, Field.TOOLS, Field.WHERE, Field.SEALING, Field.PICTURE);
    }

    @Test
    void leavesScoreAndCommentsForLater_whenTheyAreNotGiven() {
        shop.apply(completing(Optional.empty(), ""));

        assertThat(shop.finish(piece).later())
                .contains(Field.SCORE, Field.COMMENTS)
                .doesNotContain(Field.FINISHED_ON);
        assertThat(shop.finish(piece).startedOn()).isEmpty();
    }

    @Test
    void keepsWhatWasWrittenBefore() {
        shop.apply(shop.finishes().write(shop.view(), piece, FinishShop.scored("My rope-walk", 3), List.of()));
        shop.apply(completing(Optional.empty(), "done"));

        assertThat(shop.finish(piece).title()).isEqualTo("My rope-walk");
        assertThat(shop.finish(piece).score()).contains(3);
        assertThat(shop.finish(piece).finishedOn()).contains(MAY);
        assertThat(shop.finish(piece).later()).isEmpty();
    }

    @Test
    void refusesAScoreOutside1To5_andAPieceThatIsGone() {
        assertThat(refusal(completing(Optional.of(6), "")).code()).isEqualTo("bad-score");
        Completion ofNothing = new Completion(UUID.randomUUID(), MAY, Optional.empty(), "");
        assertThat(refusal(shop.finishes().completing(shop.view(), ofNothing)).code())
                .isEqualTo("no-piece");
    }
}
