package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Settings.Depth;
import org.glintery.workbench.TestView;
import org.junit.jupiter.api.Test;

class KeptDepthTest {
    @Test
    void changesTheDepthAlone() {
        TestView view =
                new TestView(1).with(Settings.TYPE, Settings.ID, new Settings(Depth.ONLY_THE_BOOK, "NOK", true));

        assertThat(KeptDepth.other(view)).isEqualTo(Depth.DRILLS_AS_WELL);
        assertThat(settings(KeptDepth.change(Optional.empty(), Depth.DRILLS_AS_WELL)
                        .apply(view)
                        .orThrow()))
                .isEqualTo(new Settings(Depth.DRILLS_AS_WELL, "NOK", true));
    }

    @Test
    void beginsFromWhatIsUsual_whenNothingWasChosenYet() {
        assertThat(settings(KeptDepth.change(Optional.empty(), Depth.ONLY_THE_BOOK)
                        .apply(new TestView(1))
                        .orThrow()))
                .isEqualTo(new Settings(Depth.ONLY_THE_BOOK, Settings.USUAL.currency(), false));
    }

    private static Settings settings(ChangeSet change) {
        return (Settings) ((Operation.Put<?>) change.operations().get(0)).value();
    }
}
