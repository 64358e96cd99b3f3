package org.glintery.workbench.start;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Settings.Depth;
import org.junit.jupiter.api.Test;

class WorkshopOpenerTest {

    @Test
    void namesWhatWasChosenFirst_asAMakerWouldSayIt() {
        assertThat(WorkshopOpener.chosen(new Settings(Depth.ONLY_THE_BOOK, "EUR", false))
                        .sentence())
                .isEqualTo("Begin the workshop with only the book");
        assertThat(WorkshopOpener.chosen(Settings.USUAL).sentence())
                .isEqualTo("Begin the workshop with the drills as well");
    }
}
