package org.glintery.activework;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Question;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Doubts about pieces, and what came of them. Any thread. */
final class Questions {
    private static final Derived<List<Stored<Question>>> OPEN = Questions::open;

    private static final Comparator<Stored<Question>> OLDEST_FIRST =
            Comparator.comparing(question -> question.value().askedOn());

    private final View view;

    Questions(View view) {
        this.view = view;
    }

    @Messages({
        "# {0} - title",
        "Questions.ask=Ask about {0}",
        "Questions.noText=A question needs a few words. Nothing was changed.",
        "Questions.pin=A question is pinned within its picture. Nothing was changed."
    })
    Result<ChangeSet> ask(UUID id, Question question) {
        Optional<Stored<Piece>> piece = view.find(Piece.TYPE, question.piece());
        if (piece.isEmpty()) {
            return Bench.noPiece();
        }
        if (question.text().isBlank()) {
            return Result.refused("no-text", Bundle.Questions_noText());
        }
        if (question.pin().filter(pin -> !within(pin)).isPresent()) {
            return Result.refused("bad-pin", Bundle.Questions_pin());
        }
        return Result.ok(
                ChangeSet.named(Bundle.Questions_ask(piece.get().value().title()))
                        .create(Question.TYPE, id, question)
                        .build());
    }

    @Messages({
        "Questions.answer=Answer a question",
        "Questions.gone=That question is no longer in the workshop. Nothing was changed.",
        "Questions.answered=That question is answered already. Nothing was changed.",
        "Questions.because=Say why it is left as it is: a few words are enough. Nothing was changed."
    })
    Result<ChangeSet> answer(UUID id, Question.Answer answer) {
        Optional<Stored<Question>> stored = view.find(Question.TYPE, id);
        if (stored.isEmpty()) {
            return Result.refused("no-question", Bundle.Questions_gone());
        }
        if (stored.get().value().answer().isPresent()) {
            return Result.refused("answered", Bundle.Questions_answered());
        }
        if (!answer.changed() && answer.because().isBlank()) {
            return Result.refused("no-reason", Bundle.Questions_because());
        }
        Question open = stored.get().value();
        Question answered = new Question(
                open.piece(), open.text(), open.pin(), open.askedOn(), open.settleFirst(), Optional.of(answer));
        return Result.ok(ChangeSet.named(Bundle.Questions_answer())
                .replace(Question.TYPE, stored.get(), answered)
                .build());
    }

    List<Stored<Question>> open() {
        return view.derived(OPEN);
    }

    private static List<Stored<Question>> open(View view) {
        return view.all(Question.TYPE).stream()
                .filter(question -> question.value().answer().isEmpty())
                .sorted(OLDEST_FIRST)
                .toList();
    }

    private static boolean within(Question.Pin pin) {
        return pin.x() >= 0 && pin.x() <= 1 && pin.y() >= 0 && pin.y() <= 1;
    }
}
