package org.glintery.planning.clearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The checker finds faults that are planted. */
class PlanCheckTest {

    private static final Round ROUND = InventedRounds.sparse().round(3);
    private static final Clearing CLEARING = RoundClearing.clear(ROUND, Patience.SHORT);

    @Test
    void findsNothing_whenNothingIsPlanted() {
        assertThat(PlanCheck.complaints(ROUND, CLEARING)).isEmpty();
    }

    @Test
    void findsPlantedFaults() {
        assertThat(complaints(first -> new Transfer(first.to(), first.to(), first.kind(), 1, false)))
                .anyMatch(text -> text.contains("themselves"));
        assertThat(complaints(first -> first.with(first.packets() + 50)))
                .anyMatch(text -> text.contains("more than offered"))
                .anyMatch(text -> text.contains("gives too much"))
                .anyMatch(text -> text.contains("packets for"));
        assertThat(complaints(first -> first.with(0))).anyMatch(text -> text.contains("nothing in it"));
        assertThat(complaints(first -> new Transfer(first.from(), first.to(), first.kind(), first.packets(), true)))
                .anyMatch(text -> text.contains("organiser"));
        assertThat(complaints(first -> new Transfer(first.from(), first.to(), 100_000, first.packets(), false)))
                .anyMatch(text -> text.contains("gets"));
    }

    @Test
    void findsWhoGivesForNothing_andFiguresThatDoNotAddUp() {
        Round round = new Round(
                List.of(Trader.within(1), Trader.within(1)),
                List.of(new Offer(0, 10, 1)),
                List.of(new Want(1, List.of(10), 1, 1)),
                Postage.flat(250));
        Clearing wrong = new Clearing(
                List.of(new Transfer(0, 1, 10, 1, false)),
                List.of(new Clearing.Met(1, 1, 1)),
                0,
                200,
                250,
                2,
                1,
                1,
                0,
                0,
                0);
        assertThat(PlanCheck.complaints(round, wrong))
                .anyMatch(text -> text.contains("worse off"))
                .anyMatch(text -> text.contains("postage 250, not 200"))
                .anyMatch(text -> text.contains("1 parcels, not 2"))
                .anyMatch(text -> text.contains("unfairness 2, not 0"))
                .anyMatch(text -> text.contains("beyond a bound"));
    }

    private static List<String> complaints(UnaryOperator<Transfer> fault) {
        List<Transfer> transfers = new ArrayList<>(CLEARING.transfers());
        transfers.set(0, fault.apply(transfers.get(0)));
        return PlanCheck.complaints(
                ROUND,
                new Clearing(
                        transfers,
                        CLEARING.met(),
                        CLEARING.wantsBound(),
                        CLEARING.postage(),
                        CLEARING.postageBound(),
                        CLEARING.parcels(),
                        CLEARING.parcelsBound(),
                        CLEARING.plainParcels(),
                        CLEARING.unfairness(),
                        CLEARING.unfairnessBound(),
                        CLEARING.kept()));
    }
}
