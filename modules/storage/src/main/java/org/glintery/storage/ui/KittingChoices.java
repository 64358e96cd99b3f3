package org.glintery.storage.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Which pieces can be kitted up or down, and into which holders: the likeliest first. Pure. */
final class KittingChoices {

    private static final Set<Standing> WORKED_ON = Set.of(Standing.SHELVED, Standing.ON_THE_BENCH, Standing.RESTING);

    /** Something to choose by its name. */
    record Choice(UUID id, String name) {
        @Override
        public String toString() {
            return name;
        }
    }

    private KittingChoices() {}

    /** Pieces with a legend that sit in no holder; those on the bench first. */
    static List<Choice> piecesToKitUp(View view) {
        return view.all(Piece.TYPE).stream()
                .filter(piece -> WORKED_ON.contains(piece.value().standing())
                        && KitUp.of(view, piece.id()).isEmpty()
                        && !Legend.of(view, piece.id()).lines().isEmpty())
                .sorted(Comparator.comparing(
                                (Stored<Piece> piece) -> piece.value().standing() != Standing.ON_THE_BENCH)
                        .thenComparing(piece -> piece.value().title(), String.CASE_INSENSITIVE_ORDER))
                .map(piece -> new Choice(piece.id(), piece.value().title()))
                .toList();
    }

    /** Free ones first, then those with most empty pockets; full ones and those that are lent come last. */
    static List<Choice> holders(View view, Storage storage) {
        Set<UUID> free = storage.freeHolders(view).stream().map(Stored::id).collect(Collectors.toSet());
        Set<Spot> seated = DrillPlaces.pocketsSeated(view).keySet();
        return view.all(Holder.TYPE).stream()
                .map(holder -> new Room(holder, free.contains(holder.id()), emptyPockets(view, holder, seated)))
                .sorted(Comparator.comparing(Room::isLent)
                        .thenComparing(room -> !room.free())
                        .thenComparing(Room::empty, Comparator.reverseOrder())
                        .thenComparing(room -> room.holder().value().name(), String.CASE_INSENSITIVE_ORDER))
                .map(room -> new Choice(room.holder().id(), room.words()))
                .toList();
    }

    private static int emptyPockets(View view, Stored<Holder> holder, Set<Spot> seated) {
        return (int) holder.value().pockets().stream()
                .map(pocket -> new Spot.InPocket(holder.id(), pocket.id()))
                .filter(spot -> !seated.contains(spot) && DrillPlaces.isEmpty(view, spot))
                .count();
    }

    /**
     * A holder and how much could be put into it.
     *
     * @param free whether nothing is in it at all
     * @param empty pockets
     */
    private record Room(Stored<Holder> holder, boolean free, int empty) {
        boolean isLent() {
            return holder.value().lentTo().isPresent();
        }

        @Messages({
            "# {0} - holder",
            "# {1} - pockets",
            "# {2} - pockets in words",
            "KittingChoices.free={0}: free, {1,choice,1#one pocket|1<{2} pockets}",
            "# {0} - holder",
            "# {1} - empty pockets in words",
            "# {2} - pockets",
            "# {3} - pockets in words",
            "KittingChoices.room={0}: {1} of {3} {2,choice,1#pocket|1<pockets} empty",
            "# {0} - holder",
            "KittingChoices.full={0}: full",
            "# {0} - holder and its room",
            "# {1} - who has it",
            "KittingChoices.lent={0}, lent to {1}"
        })
        String words() {
            Holder its = holder.value();
            int pockets = its.pockets().size();
            String room = empty == 0
                    ? Bundle.KittingChoices_full(its.name())
                    : free
                            ? Bundle.KittingChoices_free(its.name(), pockets, Balance.grouped(pockets))
                            : Bundle.KittingChoices_room(
                                    its.name(), Balance.grouped(empty), pockets, Balance.grouped(pockets));
            return its.lentTo()
                    .map(who -> Bundle.KittingChoices_lent(room, who))
                    .orElse(room);
        }
    }

    /** Pieces that sit in a holder, those that are made first; then those whose leftovers lie in the bags of their kit. */
    static List<Choice> piecesToKitDown(View view, Storage storage) {
        List<Choice> choices = new ArrayList<>();
        view.all(KitUp.TYPE).stream()
                .sorted(Comparator.comparing(
                        (Stored<KitUp> kitUp) -> !kitUp.value().toClear()))
                .flatMap(kitUp -> view.find(Piece.TYPE, kitUp.id()).stream())
                .forEach(piece -> choices.add(choice(piece)));
        view.all(Piece.TYPE).stream()
                .filter(piece -> storage.planLeftovers(view, piece.id(), 0, Optional.empty()) instanceof Result.Ok<?>)
                .sorted(Comparator.comparing(piece -> piece.value().title(), String.CASE_INSENSITIVE_ORDER))
                .forEach(piece -> choices.add(choice(piece)));
        return List.copyOf(choices);
    }

    private static Choice choice(Stored<Piece> piece) {
        return new Choice(piece.id(), piece.value().title());
    }
}
