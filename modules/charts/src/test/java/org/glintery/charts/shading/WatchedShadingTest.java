package org.glintery.charts.shading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.glintery.api.charts.Shading;
import org.glintery.api.charts.Watch;
import org.glintery.charts.References;
import org.glintery.charts.TestPictures;
import org.glintery.charts.picture.LightGrid;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WatchedShadingTest {

    private static final LightGrid WANTED = TestPictures.averaged(TestPictures.resource("coffee.png"), 120, 160);
    private static final DrillColours COLOURS = new DrillColours(References.palette(24));

    /** Cancels once it was told of so many steps. */
    private static final class Counting implements Watch {
        private final List<Double> shares = Collections.synchronizedList(new ArrayList<>());
        private final int most;

        Counting(int most) {
            this.most = most;
        }

        @Override
        public void reached(double share) {
            shares.add(share);
        }

        @Override
        public boolean isCancelled() {
            return shares.size() >= most;
        }
    }

    @ParameterizedTest
    @EnumSource
    void tellsHowFarItIs(Shading shading) {
        Counting watch = new Counting(Integer.MAX_VALUE);
        int[] drills = Shaders.of(shading, 0.3).shaded(WANTED, COLOURS, watch);
        assertThat(drills).isEqualTo(Shaders.of(shading, 0.3).shaded(WANTED, COLOURS));
        assertThat(watch.shares.size()).isGreaterThan(10);
        assertThat(watch.shares).isSorted().allMatch(share -> share >= 0 && share <= 1);
    }

    /** In the middle of the work, not only before and after it: soon after it is asked to. */
    @ParameterizedTest
    @EnumSource
    void endsInTheMiddle_whenCancelled(Shading shading) {
        Counting all = new Counting(Integer.MAX_VALUE);
        Shaders.of(shading, 0).shaded(WANTED, COLOURS, all);
        int half = all.shares.size() / 2;
        Counting watch = new Counting(half);
        assertThatThrownBy(() -> Shaders.of(shading, 0).shaded(WANTED, COLOURS, watch))
                .isInstanceOf(CancellationException.class);
        assertThat(watch.shares.size()).isBetween(half, half + 64);
    }
}
