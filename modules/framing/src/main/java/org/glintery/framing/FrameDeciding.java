package org.glintery.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Records what was decided for one piece, and what should be thought of first. Any thread. */
final class FrameDeciding {

    private final View view;
    private final UUID id;

    FrameDeciding(View view, UUID id) {
        this.view = view;
        this.id = id;
    }

    Result<ChangeSet> decide(FramePlan plan) {
        Optional<Stored<Piece>> piece = view.find(Piece.TYPE, id);
        if (piece.isEmpty()) {
            return Result.refused("no-piece", Bundle.Artwork_noPiece());
        }
        String title = piece.get().value().title();
        ChangeSet.Builder change = ChangeSet.named(sentence(plan.decision(), title));
        view.find(FramePlan.TYPE, id)
                .ifPresentOrElse(
                        old -> change.replace(FramePlan.TYPE, old, plan),
                        () -> change.create(FramePlan.TYPE, id, plan));
        return Result.ok(change.build(), warnings(plan.decision(), piece.get().value()));
    }

    @Messages({
        "# {0} - title",
        "FrameDeciding.decide=Decide how {0} will hang",
        "# {0} - title",
        "FrameDeciding.notFramed=Leave {0} unframed",
        "# {0} - title",
        "FrameDeciding.open=Leave open how {0} will hang"
    })
    private static String sentence(Decision decision, String title) {
        return switch (decision) {
            case NOT_FRAMED -> Bundle.FrameDeciding_notFramed(title);
            case NOT_DECIDED -> Bundle.FrameDeciding_open(title);
            default -> Bundle.FrameDeciding_decide(title);
        };
    }

    @Messages({
        "# {0} - title",
        "FrameDeciding.unmade={0} is not made yet. Measure it again when it is, before anything is cut.",
        "# {0} - question",
        "FrameDeciding.settle=Settle this first, for trimming and gluing can not be taken back: {0}"
    })
    private List<String> warnings(Decision decision, Piece piece) {
        List<String> warnings = new ArrayList<>();
        if (OneWayQuestions.isOneWay(decision)) {
            if (piece.standing() != Standing.MADE) {
                warnings.add(Bundle.FrameDeciding_unmade(piece.title()));
            }
            OneWayQuestions.of(view, id).forEach(text -> warnings.add(Bundle.FrameDeciding_settle(text)));
        }
        return warnings;
    }
}
