package org.glintery.workbench.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Question;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** What happened to a piece, from its documents, oldest first. Pure. */
final class Timeline {
    private Timeline() {}

    /** @param when empty sorts last */
    record Event(Optional<About> when, String what) {}

    @Messages({
        "Timeline.ordered=The kit was ordered",
        "Timeline.arrived=The kit arrived",
        "Timeline.began=Begun",
        "Timeline.finished=Finished",
        "# {0} - how many",
        "# {1} - how many in words",
        "# {2} - last day",
        "Timeline.sittings={0,choice,1#One sitting|1<{1} sittings}, the last {2}",
        "Timeline.firstSitting=First sitting",
        "# {0} - the question",
        "Timeline.asked=Asked: {0}",
        "# {0} - why",
        "Timeline.changed=Changed, because {0}",
        "# {0} - why",
        "Timeline.left=Left as it is, because {0}"
    })
    static List<Event> of(View view, UUID id) {
        List<Event> events = new ArrayList<>();
        Optional<Piece> piece = view.find(Piece.TYPE, id).map(Stored::value);
        piece.flatMap(Piece::kit)
                .flatMap(k -> view.find(Kit.TYPE, k))
                .map(Stored::value)
                .ifPresent(kit -> {
                    dated(events, kit.orderedOn(), Bundle.Timeline_ordered());
                    dated(events, kit.arrivedOn(), Bundle.Timeline_arrived());
                });
        sittings(view, id, events);
        questions(view, id, events);
        Optional<Finish> finish = view.find(Finish.TYPE, id).map(Stored::value);
        finish.ifPresent(f -> {
            dated(events, f.startedOn(), Bundle.Timeline_began());
            dated(events, f.finishedOn(), Bundle.Timeline_finished());
        });
        view.find(FramePlan.TYPE, id)
                .map(Stored::value)
                .ifPresent(plan -> dated(events, plan.decidedOn(), PieceWords.frame(plan.decision())));
        if (finish.isEmpty()) {
            piece.ifPresent(p -> dated(events, p.standingSince(), PieceWords.standing(p.standing())));
        }
        events.sort(Comparator.comparing(e -> e.when().orElseThrow()));
        return List.copyOf(events);
    }

    private static void sittings(View view, UUID id, List<Event> events) {
        List<About> days = view.all(Sitting.TYPE).stream()
                .map(Stored::value)
                .filter(s -> s.piece().equals(id))
                .map(Sitting::day)
                .sorted()
                .toList();
        if (!days.isEmpty()) {
            events.add(new Event(Optional.of(days.get(0)), Bundle.Timeline_firstSitting()));
            About last = days.get(days.size() - 1);
            events.add(new Event(
                    Optional.of(last),
                    Bundle.Timeline_sittings(days.size(), Balance.grouped(days.size()), last.words())));
        }
    }

    private static void questions(View view, UUID id, List<Event> events) {
        for (Stored<Question> stored : view.all(Question.TYPE)) {
            Question question = stored.value();
            if (question.piece().equals(id)) {
                events.add(new Event(Optional.of(question.askedOn()), Bundle.Timeline_asked(question.text())));
                question.answer()
                        .ifPresent(a -> events.add(new Event(
                                Optional.of(a.on()),
                                a.changed()
                                        ? Bundle.Timeline_changed(a.because())
                                        : Bundle.Timeline_left(a.because()))));
            }
        }
    }

    private static void dated(List<Event> events, Optional<About> when, String what) {
        when.ifPresent(w -> events.add(new Event(Optional.of(w), what)));
    }
}
