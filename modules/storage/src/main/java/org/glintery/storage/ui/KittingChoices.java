package org.glintery.storage.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

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

    /** Free holders first, then those in use. */
    static List<Choice> holders(View view, Storage storage) {
        List<Stored<Holder>> free = storage.freeHolders(view);
        Set<UUID> freeIds = free.stream().map(Stored::id).collect(Collectors.toSet());
        List<Stored<Holder>> all = new ArrayList<>(free);
        view.all(Holder.TYPE).stream()
                .filter(holder -> !freeIds.contains(holder.id()))
                .forEach(all::add);
        return all.stream()
                .map(holder -> new Choice(holder.id(), holder.value().name()))
                .toList();
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
