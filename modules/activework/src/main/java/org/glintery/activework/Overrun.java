package org.glintery.activework;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Tells when the sittings of a piece come to more than the whole of it: one of the numbers is wrong. Any thread. */
final class Overrun {

    /** Percents of many sittings may come to a hair more than all of it. */
    private static final double ROUNDING = 1e-6;

    private static final double PERCENT = 100;

    private final Piece piece;
    private final Whole whole;
    private final List<Laid> told;

    /** @param id of the sitting, which takes the place of the one that had it */
    Overrun(View view, UUID id, Sitting sitting, Piece piece) {
        this.piece = piece;
        this.whole = Whole.of(view, sitting.piece(), piece);
        Stream<Laid> others = PieceSittings.of(view, sitting.piece()).stream()
                .filter(other -> !other.id().equals(id))
                .map(other -> other.value().laid());
        this.told = Stream.concat(others, Stream.of(sitting.laid()))
                .filter(Whole::saysSomething)
                .toList();
    }

    /** In sections or drills where all is told so, else in percent. */
    @Messages({
        "# {0} - title",
        "# {1} - how many sections it has",
        "# {2} - the same in figures",
        "# {3} - how many were told",
        "Overrun.sections={0} has {1,choice,1#1 section|1<{2} sections}, and {3} were said to be laid. The sitting was kept. Correct it if the number is wrong.",
        "# {0} - title",
        "# {1} - how many drills it takes",
        "# {2} - the same in figures",
        "# {3} - how many were told",
        "Overrun.drills={0} takes {1,choice,1#1 drill|1<{2} drills}, and {3} were said to be laid by now. The sitting was kept. Correct it if the number is wrong.",
        "# {0} - title",
        "# {1} - percent in all",
        "Overrun.percent=By now {1} percent of {0} were said to be laid, more than 100. The sitting was kept. Correct it if the number is wrong."
    })
    List<String> warnings() {
        Optional<Double> sections = sum(
                laid -> Whole.toldInDrills(laid).isPresent() || laid.percent().isPresent()
                        ? Optional.empty()
                        : laid.sections().map(Integer::doubleValue));
        if (sections.isPresent() && whole.sections().isPresent()) {
            int all = whole.sections().get();
            return sections.get() > all
                    ? List.of(Bundle.Overrun_sections(
                            piece.title(), all, Balance.grouped(all), Balance.grouped(Math.round(sections.get()))))
                    : List.of();
        }
        Optional<Double> drills = sum(laid -> Whole.toldInDrills(laid).map(Long::doubleValue));
        if (drills.isPresent() && whole.drills().isPresent()) {
            long all = whole.drills().get();
            return drills.get() > all
                    ? List.of(Bundle.Overrun_drills(
                            piece.title(), all, Balance.grouped(all), Balance.grouped(Math.round(drills.get()))))
                    : List.of();
        }
        return sum(whole::shareOf)
                .filter(share -> share > 1 + ROUNDING)
                .map(share -> List.of(Bundle.Overrun_percent(
                        piece.title(), Balance.grouped((long) Math.ceil(share * PERCENT - ROUNDING)))))
                .orElse(List.of());
    }

    private Optional<Double> sum(Function<Laid, Optional<Double>> measure) {
        List<Double> amounts =
                told.stream().flatMap(laid -> measure.apply(laid).stream()).toList();
        return amounts.isEmpty() || amounts.size() < told.size()
                ? Optional.empty()
                : Optional.of(amounts.stream().mapToDouble(Double::doubleValue).sum());
    }
}
