package org.glintery.activework.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.MAY;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.activework.BenchShop;
import org.glintery.api.Result;
import org.glintery.api.activework.Question;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuestionsPageTest {

    private BenchShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private QuestionsPage page(UUID piece) {
        return QuestionsPage.of(shop.view(), piece);
    }

    private UUID ask(UUID piece, String text, String day) {
        return ask(piece, text, day, Optional.empty());
    }

    private UUID ask(UUID piece, String text, String day, Optional<Question.Pin> pin) {
        UUID id = UUID.randomUUID();
        About on = About.edtf(day).orElseThrow();
        Question question = new Question(piece, text, pin, on, false, Optional.empty());
        shop.apply(shop.bench().ask(shop.view(), id, question));
        return id;
    }

    @Test
    void openQuestionsComeBeforeAnsweredOnes() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        UUID answered = ask(piece, "answered", "2025-05-01");
        ask(piece, "older", "2025-03");
        ask(piece, "newer", "2025-04");
        ask(shop.piece("Net loft", Standing.SHELVED), "elsewhere", "2025-04");
        shop.apply(shop.bench().answer(shop.view(), answered, new Question.Answer(true, "", MAY)));

        assertThat(page(piece).lines())
                .extracting(line -> line.question().value().text())
                .containsExactly("newer", "older", "answered");
        // numbers follow the order in which they were asked, so that answering one renumbers none
        assertThat(page(piece).lines()).extracting(QuestionsPage.Line::number).containsExactly(2, 1, 3);
    }

    @Test
    void aPinBelongsToItsPictureOnly() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        Picture canvas = new Picture("a".repeat(64), "image/png", "Canvas");
        Picture other = new Picture("b".repeat(64), "image/png", "");
        Stored<Piece> stored = shop.view().find(Piece.TYPE, piece).orElseThrow();
        shop.apply(Result.ok(ChangeSet.named("Pictures")
                .replace(Piece.TYPE, stored, stored.value().withPictures(List.of(canvas, other)))
                .build()));
        ask(piece, "pinned", "2025-05-01", Optional.of(new Question.Pin(canvas.hash(), 0.25, 0.5)));

        QuestionsPage page = page(piece);
        QuestionsPage.Line line = page.lines().get(0);
        assertThat(page.pictures()).containsExactly(canvas, other);
        assertThat(line.pinOn(canvas)).contains(new Question.Pin(canvas.hash(), 0.25, 0.5));
        assertThat(line.pinOn(other)).isEmpty();
    }
}
