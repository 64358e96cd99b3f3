package org.glintery.framing.ui;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Framing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The changes that the Frame tab makes, each from the newest view. Made without Swing; any thread. */
final class PlanEdits {

    private final Framing framing;
    private final UUID piece;
    private final Clock clock;

    PlanEdits(Framing framing, UUID piece, Clock clock) {
        this.framing = framing;
        this.piece = piece;
        this.clock = clock;
    }

    /** The plan as it stands, or one in which nothing is decided. */
    static FramePlan planOf(View view, UUID piece) {
        return view.find(FramePlan.TYPE, piece).map(Stored::value).orElse(FramePlan.decided(Decision.NOT_DECIDED, ""));
    }

    Function<View, Result<ChangeSet>> set(Consumer<PlanCopy> edit) {
        return view -> {
            PlanCopy copy = new PlanCopy(planOf(view, piece));
            edit.accept(copy);
            return copy.plan().then(plan -> framing.decide(view, piece, plan));
        };
    }

    /** A length as it was typed; refused when it is none. */
    Function<View, Result<ChangeSet>> length(String typed, BiConsumer<PlanCopy, Optional<Double>> edit) {
        return view -> Millimetres.read(typed)
                .then(mm -> set(copy -> edit.accept(copy, mm)).apply(view));
    }

    /** A whole plan as it was tried, decided today. */
    Function<View, Result<ChangeSet>> decideOn(FramePlan tried) {
        return view -> {
            PlanCopy copy = new PlanCopy(tried);
            copy.decidedOn = today();
            return copy.plan().then(plan -> framing.decide(view, piece, plan));
        };
    }

    /** Decided today; leaving it open again takes the day away. */
    Function<View, Result<ChangeSet>> decide(Decision decision) {
        return set(copy -> {
            copy.decision = decision;
            copy.decidedOn = decision == Decision.NOT_DECIDED ? Optional.empty() : today();
        });
    }

    private Optional<About> today() {
        return Optional.of(About.on(LocalDate.now(clock)));
    }
}
