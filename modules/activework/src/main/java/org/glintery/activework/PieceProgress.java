package org.glintery.activework;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** How far a piece is, from what its sittings tell. Any thread. */
final class PieceProgress {

    private final Optional<Piece> piece;
    private final Whole whole;
    private final List<Sitting> sittings;
    private final List<Laid> told;

    PieceProgress(View view, UUID id) {
        piece = view.find(Piece.TYPE, id).map(Stored::value);
        whole = piece.map(value -> Whole.of(view, id, value)).orElse(new Whole(Optional.empty(), Optional.empty()));
        sittings = PieceSittings.of(view, id).stream().map(Stored::value).toList();
        told = sittings.stream()
                .map(Sitting::laid)
                .filter(Whole::saysSomething)
                .filter(laid -> !whole.isOfUnknownSections(laid))
                .toList();
    }

    Progress progress() {
        boolean made = piece.filter(p -> p.standing() == Standing.MADE).isPresent();
        Optional<Double> drills = sum(whole::drillsOf);
        Optional<Double> share = sum(whole::shareOf);
        boolean allTold = sittings.stream()
                .map(Sitting::laid)
                .filter(Whole::saysSomething)
                .allMatch(laid -> Whole.toldInDrills(laid).isPresent());
        boolean toldInFull = share.filter(s -> s >= 1).isPresent();
        return new Progress(
                whole.drills(),
                made ? whole.drills().or(() -> drills.map(Math::round)) : drills.map(this::capped),
                made ? Optional.of(1.0) : share.map(s -> Math.min(1, s)),
                made ? !toldInFull : !allTold,
                sittings.size(),
                sittings.stream().mapToInt(s -> s.minutes().orElse(0)).sum());
    }

    /**
     * Empty when a single sitting that tells something can't be put in this measure: a sum without it would mislead. Sections
     * of a piece that has none do not count: they may not take what the others tell away.
     */
    private Optional<Double> sum(Function<Laid, Optional<Double>> measure) {
        if (told.isEmpty() && !sittings.isEmpty()) {
            return Optional.empty();
        }
        double sum = 0;
        for (Laid laid : told) {
            Optional<Double> one = measure.apply(laid);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            sum += one.get();
        }
        return Optional.of(sum);
    }

    private long capped(double drills) {
        return Math.min(Math.round(drills), whole.drills().orElse(Long.MAX_VALUE));
    }
}
