package org.glintery.workbench.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StartChoiceTest {
    private static final Path HOME = Path.of("home");
    private static final Path NAMED = Path.of("named");
    private static final Path LAST = Path.of("last");

    @Test
    void opensTheNamedFolder_whateverWasOpenLast() {
        assertThat(StartChoice.choose(Optional.of(NAMED), true, Optional.of(LAST), HOME, f -> true))
                .isEqualTo(new StartChoice.OpenFolder(NAMED, true));
    }

    @Test
    void opensTheLastFolder_whileItIsAWorkshop() {
        assertThat(StartChoice.choose(Optional.empty(), true, Optional.of(LAST), HOME, LAST::equals))
                .isEqualTo(new StartChoice.OpenFolder(LAST, false));
    }

    @Test
    void asks_whenThereIsNoWorkshopYetOrAnyMore() {
        StartChoice asks = new StartChoice.AskFirst(HOME.resolve("Glintery"));
        assertThat(StartChoice.choose(Optional.empty(), false, Optional.empty(), HOME, f -> true))
                .isEqualTo(asks);
        assertThat(StartChoice.choose(Optional.empty(), false, Optional.of(LAST), HOME, f -> false))
                .isEqualTo(asks);
    }
}
