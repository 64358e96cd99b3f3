package org.glintery.activework.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.MAY;
import static org.glintery.activework.BenchShop.T1;
import static org.glintery.activework.BenchShop.TODAY;
import static org.glintery.activework.BenchShop.line;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.UUID;
import org.glintery.activework.BenchShop;
import org.glintery.activework.ui.SittingDraft.Measure;
import org.glintery.api.activework.Laid;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SittingsPageTest {

    private BenchShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private SittingsPage page(UUID piece) {
        return SittingsPage.of(shop.view(), shop.bench(), piece, TODAY);
    }

    @Test
    void theNewestSittingComesFirst() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        shop.sit(piece, About.edtf("2025-04-01").orElseThrow(), Laid.drills(1));
        shop.sit(piece, MAY, Laid.drills(2));

        assertThat(page(piece).sittings())
                .extracting(s -> s.value().laid().drills().orElseThrow())
                .containsExactly(2L, 1L);
    }

    @Test
    void formsBeginInTheMeasureThatWasUsedLast() {
        UUID divided = shop.inSections("Ferry", 9);
        assertThat(page(divided).measure()).isEqualTo(Measure.SECTIONS);
        shop.sit(divided, MAY, Laid.percent(5));
        shop.sit(divided, MAY, Laid.NOT_SAID);

        assertThat(page(divided).measure()).isEqualTo(Measure.PERCENT);
        assertThat(page(shop.piece("Rope-walk", Standing.SHELVED)).measure()).isEqualTo(Measure.DRILLS);
    }

    @Test
    void tellsOfTheSittingThatGoesOn_andOfSymbols() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 10, 20));
        assertThat(page(piece).running()).isEmpty();
        shop.apply(shop.bench().begin(shop.view(), piece, ZonedDateTime.of(2025, 5, 2, 20, 0, 0, 0, ZoneOffset.UTC)));

        assertThat(page(piece).running()).isPresent();
        assertThat(page(piece).standing()).isEqualTo(Standing.ON_THE_BENCH);
        assertThat(page(piece).hasSymbols()).isTrue();
    }
}
