package org.glintery.workbench.shelves;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.BadRow;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Source;
import org.glintery.workbench.TestView;
import org.junit.jupiter.api.Test;

class ReadLegendTest {
    private static final Optional<String> QUAY = Optional.of("Quay 12");
    private final TestView view = new TestView(1).with(Source.TYPE, Source.idOf("Quay 12"), new Source("Quay 12", 500));

    @Test
    void isReadByTheBagsOfItsSource_whereTheyAreKnown() {
        assertThat(ReadLegend.assumed(view, Optional.empty(), QUAY).drillsPerBag())
                .isEqualTo(500);
        assertThat(ReadLegend.assumed(view, Optional.empty(), Optional.of("Slip"))
                        .drillsPerBag())
                .isEqualTo(Source.USUAL_DRILLS_PER_BAG);
    }

    @Test
    void asksForAnotherReading_whenSourceOrShapeAreToldAfterwards() {
        Assumed before = ReadLegend.assumed(view, Optional.empty(), Optional.empty());
        ReadLegend read = new ReadLegend(Path.of("a.csv"), before, reading(List.of()));

        assertThat(read.holdsFor(ReadLegend.assumed(view, Optional.empty(), Optional.of("Slip"))))
                .isTrue();
        assertThat(read.holdsFor(ReadLegend.assumed(view, Optional.empty(), QUAY)))
                .isFalse();
        assertThat(read.holdsFor(ReadLegend.assumed(view, Optional.of(Shape.SQUARE), Optional.empty())))
                .isFalse();
    }

    @Test
    void isTakenInOnlyWithoutBadRows() {
        Assumed by = ReadLegend.assumed(view, Optional.empty(), QUAY);

        assertThat(new ReadLegend(Path.of("a.csv"), by, reading(List.of())).whole())
                .isPresent();
        assertThat(new ReadLegend(Path.of("a.csv"), by, reading(List.of(new BadRow(3, "no code")))).whole())
                .isEmpty();
    }

    private static Reading reading(List<BadRow> bad) {
        return new Reading(Map.of(), List.of(), Map.of(), bad, List.of(), "UTF-8", "commas");
    }
}
