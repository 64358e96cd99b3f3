package org.glintery.stash;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.MoveRequest;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Whether drills can be moved as they were asked for. Any thread. */
final class MoveCheck {

    private final View view;
    private final List<Operation> making;

    /** @param making done first, such as making a bag that is named for the first time */
    MoveCheck(View view, List<Operation> making) {
        this.view = view;
        this.making = making;
    }

    @Messages({
        "MoveCheck.noAmount=There is nothing to move: the amount is 0.",
        "# {0} - where",
        "MoveCheck.sameSpot=The drills are there already: {0}. Nothing was moved.",
        "MoveCheck.outside=Nothing would come in or go out, so nothing was moved. Name a bag, a pocket or a canvas."
    })
    Optional<Refusal> refusal(MoveRequest request) {
        if (request.amount().count().filter(count -> count == 0).isPresent()) {
            return refused("no-amount", Bundle.MoveCheck_noAmount());
        }
        if (request.from().equals(request.to())) {
            return refused("same-spot", Bundle.MoveCheck_sameSpot(words(request.to())));
        }
        if (request.from().isBoundary() && request.to().isBoundary()) {
            return refused("outside", Bundle.MoveCheck_outside());
        }
        return SpotCheck.refusal(view, request.from())
                .or(() -> SpotCheck.refusal(view, request.to()))
                .or(() -> notEnough(request))
                .or(() -> SetAsideDrills.refusal(view, request));
    }

    private Optional<Refusal> notEnough(MoveRequest request) {
        if (request.from().isBoundary()) {
            return Optional.empty();
        }
        Balance there = view.balance(request.from(), request.drill());
        Optional<Long> wanted = request.amount().count();
        boolean enough = wanted.map(count -> request.believed() || count <= there.count())
                .orElse(there.uncounted() > 0);
        return enough
                ? Optional.empty()
                : refused("not-enough", tooFew(request.drill().code(), words(request.from()), there, wanted));
    }

    @Messages({
        "# {0} - code",
        "# {1} - where",
        "MoveCheck.nothingUncounted=Nothing uncounted of {0} is in {1}. Say how many to move. Nothing was moved.",
        "# {0} - code",
        "# {1} - where",
        "# {2} - asked for",
        "# {3} - asked for in words",
        "MoveCheck.onlyUncounted=How many of {0} are in {1} is not known, and {2,choice,1#{3} was|1<{3} were} asked for. "
                + "Nothing was moved. Count them first, or move them without a number.",
        "# {0} - there",
        "# {1} - there in words",
        "# {2} - code",
        "# {3} - where",
        "# {4} - asked for",
        "# {5} - asked for in words",
        "MoveCheck.tooFew={0,choice,0#There are|1#There is|1<There are} {1} of {2} in {3}, and {4,choice,1#{5} was|1<{5} were} "
                + "asked for. Nothing was moved."
    })
    private static String tooFew(String code, String where, Balance there, Optional<Long> wanted) {
        if (wanted.isEmpty()) {
            return Bundle.MoveCheck_nothingUncounted(code, where);
        }
        String asked = Balance.grouped(wanted.get());
        return there.count() == 0 && there.uncounted() > 0
                ? Bundle.MoveCheck_onlyUncounted(code, where, wanted.get(), asked)
                : Bundle.MoveCheck_tooFew(there.count(), there.words(), code, where, wanted.get(), asked);
    }

    private String words(Spot spot) {
        return SpotNames.words(view, spot, making);
    }

    private static Optional<Refusal> refused(String code, String text) {
        return Optional.of(new Refusal(code, text));
    }
}
