package org.glintery.planning.flow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ResidualTest {

    private static final long SEED = 9;

    @Test
    void findsHowLittleAndHowMuchAnArcCanCarry_asCheapestFlowsDo() {
        Random random = new Random(SEED);
        int narrower = 0;
        for (int i = 0; i < 150; i++) {
            FlowNetwork network = RandomNetworks.next(random, 7, 22);
            NetworkSimplex simplex = new NetworkSimplex(network, Work.unlimited());
            if (!simplex.minimise(new long[network.arcs])) {
                continue;
            }
            int arc = random.nextInt(network.arcs);
            Residual residual =
                    new Residual(network, network.bounds(), simplex.flows(), (changed, by) -> {}, Work.unlimited());
            while (residual.raise(arc, step -> Residual.Toll.FREE)) {
                assertThat(RandomNetworks.isFlow(network, residual.flows())).isTrue();
            }
            int most = residual.flow(arc);
            residual.lowerTo(arc, 0, step -> Residual.Toll.FREE);
            int least = residual.flow(arc);

            String which = "seed " + SEED + " network " + i;
            assertThat(RandomNetworks.isFlow(network, residual.flows()))
                    .as(which)
                    .isTrue();
            long[] cost = new long[network.arcs];
            cost[arc] = 1;
            simplex.minimise(cost);
            assertThat(least).as(which).isEqualTo(simplex.flow(arc));
            cost[arc] = -1;
            simplex.minimise(cost);
            assertThat(most).as(which).isEqualTo(simplex.flow(arc));
            narrower += most - least < network.high[arc] - network.low[arc] ? 1 : 0;
        }
        assertThat(narrower).as("arcs that can't carry all they may").isPositive();
    }

    @Test
    void takesBackWhatItChanged_andSaysSo() {
        FlowNetwork network = square();
        int[] start = {2, 2, 0, 0, 2};
        int[] heard = start.clone();
        Residual residual =
                new Residual(network, network.bounds(), start, (arc, by) -> heard[arc] += by, Work.unlimited());
        int mark = residual.mark();
        assertThat(residual.divert(0, step -> Residual.Toll.FREE, 0)).isTrue();
        assertThat(residual.flows()).containsExactly(0, 0, 2, 2, 2);
        assertThat(heard).isEqualTo(residual.flows());

        residual.back(mark);
        assertThat(residual.flows()).isEqualTo(start);
        assertThat(heard).isEqualTo(start);
    }

    @Test
    void goesNoWayThatIsBarredOrDearerThanAllowed() {
        FlowNetwork network = square();
        int[] start = {2, 2, 0, 0, 2};
        Residual residual = new Residual(network, network.bounds(), start, (arc, by) -> {}, Work.unlimited());
        assertThat(residual.divert(0, step -> step == 3 ? Residual.Toll.BARRED : Residual.Toll.FREE, 9))
                .isFalse();
        assertThat(residual.divert(0, step -> Residual.Toll.PAID, 1)).isFalse();
        assertThat(residual.flows()).isEqualTo(start);
        assertThat(residual.divert(0, step -> Residual.Toll.PAID, 2)).isTrue();
    }

    /** From 0 over 1 or over 2 to 3, and back. */
    private static FlowNetwork square() {
        FlowNetwork.Builder builder = new FlowNetwork.Builder();
        builder.nodes(4);
        builder.arc(0, 1, 0, 3);
        builder.arc(1, 3, 0, 3);
        builder.arc(0, 2, 0, 3);
        builder.arc(2, 3, 0, 3);
        builder.arc(3, 0, 2, 3);
        return builder.build();
    }
}
