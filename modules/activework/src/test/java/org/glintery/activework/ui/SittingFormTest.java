package org.glintery.activework.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.glintery.activework.BenchShop;
import org.glintery.activework.SittingCheck;
import org.glintery.activework.ui.SittingDraft.Measure;
import org.glintery.api.time.About;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SittingFormTest {

    private BenchShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private boolean ready(UUID piece, LocalDate day, Measure measure, String amount) {
        SittingDraft draft = new SittingDraft(About.on(day), measure, amount, "", "", "", "");
        Clock clock = Clock.fixed(day.atStartOfDay().toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        SittingCheck check = new SittingCheck(shop.view());
        return new SittingForm(clock, piece, draft, false, false, sitting -> check.refusal(sitting, Optional.empty()))
                .ready();
    }

    @Test
    void staysOpen_whileWhatIsTypedWouldBeRefused() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        LocalDate today = shop.view().day();

        assertThat(ready(piece, today, Measure.DRILLS, "120")).isTrue();
        assertThat(ready(piece, today, Measure.DRILLS, "")).isTrue();
        assertThat(ready(piece, today, Measure.SECTIONS, "3")).isFalse();
        assertThat(ready(piece, today, Measure.DRILLS, "0")).isFalse();
        assertThat(ready(piece, today.plusDays(1), Measure.DRILLS, "120")).isFalse();
    }
}
