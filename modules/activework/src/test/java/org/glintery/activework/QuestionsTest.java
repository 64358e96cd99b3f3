package org.glintery.activework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.MAY;
import static org.glintery.activework.BenchShop.refusal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Question;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuestionsTest {

    private BenchShop shop;
    private UUID piece;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
        piece = shop.piece("Rope-walk", Standing.ON_THE_BENCH);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Question question(String text, About on, Optional<Question.Pin> pin) {
        return new Question(piece, text, pin, on, true, Optional.empty());
    }

    private UUID ask(String text, About on) {
        UUID id = UUID.randomUUID();
        shop.apply(shop.bench().ask(shop.view(), id, question(text, on, Optional.empty())));
        return id;
    }

    @Test
    void openQuestionsComeOldestFirst_andGoWhenAnswered() {
        UUID newer = ask("Is that patch wrong?", MAY);
        UUID older = ask("Would metallic show there?", About.edtf("2025-03").orElseThrow());
        assertThat(shop.bench().openQuestions(shop.view()))
                .extracting(q -> q.id())
                .containsExactly(older, newer);

        shop.apply(shop.bench().answer(shop.view(), older, new Question.Answer(true, "", MAY)));
        shop.apply(shop.bench()
                .answer(shop.view(), newer, new Question.Answer(false, "nobody sees it from the door", MAY)));
        assertThat(shop.bench().openQuestions(shop.view())).isEmpty();
        assertThat(shop.view().find(Question.TYPE, newer).orElseThrow().value().answer())
                .hasValueSatisfying(answer -> assertThat(answer.because()).isEqualTo("nobody sees it from the door"));
    }

    @Test
    void leavingItAsItIsNeedsAReason() {
        UUID id = ask("Is that patch wrong?", MAY);

        assertThat(refusal(shop.bench().answer(shop.view(), id, new Question.Answer(false, " ", MAY)))
                        .code())
                .isEqualTo("no-reason");
    }

    @Test
    void refusesWhatCanNotBeAskedOrAnswered() {
        UUID id = ask("Is that patch wrong?", MAY);
        Question.Answer changed = new Question.Answer(true, "", MAY);
        shop.apply(shop.bench().answer(shop.view(), id, changed));
        Optional<Question.Pin> outside = Optional.of(new Question.Pin("hash", 1.2, 0.5));

        assertThat(refusal(shop.bench().answer(shop.view(), id, changed)).code())
                .isEqualTo("answered");
        assertThat(refusal(shop.bench().answer(shop.view(), UUID.randomUUID(), changed))
                        .code())
                .isEqualTo("no-question");
        assertThat(refusal(shop.bench().ask(shop.view(), UUID.randomUUID(), question(" ", MAY, Optional.empty())))
                        .code())
                .isEqualTo("no-text");
        assertThat(refusal(shop.bench().ask(shop.view(), UUID.randomUUID(), question("Here?", MAY, outside)))
                        .code())
                .isEqualTo("bad-pin");
    }
}
