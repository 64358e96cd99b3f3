package org.glintery.activework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.glintery.activework.BenchShop.MAY;
import static org.glintery.activework.BenchShop.T1;
import static org.glintery.activework.BenchShop.bySymbol;
import static org.glintery.activework.BenchShop.line;
import static org.glintery.activework.BenchShop.uncounted;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Completion;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Standing;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PieceProgressTest {

    private BenchShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Progress progress(UUID piece) {
        return shop.bench().progress(shop.view(), piece);
    }

    @Test
    void theLegendTellsTheWhole_andDrillsAreTold() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 1000, 2000));
        shop.sit(piece, MAY, Laid.drills(200));
        shop.sit(piece, MAY, bySymbol(Map.of("A", 50L)));

        assertThat(progress(piece))
                .isEqualTo(new Progress(Optional.of(1000L), Optional.of(250L), Optional.of(0.25), false, 2, 0));
    }

    @Test
    void cellsTellTheWhole_whenTheCanvasIsCoveredInFull() {
        UUID piece = shop.canvas("Rope-walk", 140, 180, Optional.empty());

        assertThat(progress(piece).totalDrills()).contains(25_200L);
    }

    @Test
    void aLegendWithASilentLineTellsNoWhole() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 1000, 2000), uncounted("B", BenchShop.T2));
        shop.sit(piece, MAY, Laid.drills(200));

        assertThat(progress(piece).totalDrills()).isEmpty();
        assertThat(progress(piece).laidDrills()).contains(200L);
        assertThat(progress(piece).share()).isEmpty();
    }

    @Test
    void kindsOfTellingMix_whereTheWholeIsKnown() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.of(8));
        shop.sit(piece, MAY, Laid.drills(500));
        shop.sit(piece, MAY, Laid.percent(12.5));
        shop.sit(piece, MAY, Laid.sections(2));

        assertThat(progress(piece).laidDrills()).contains(500L + 1250 + 2500);
        assertThat(progress(piece).share())
                .hasValueSatisfying(s -> assertThat(s).isCloseTo(0.425, within(1e-9)));
        assertThat(progress(piece).estimated()).isTrue();
    }

    @Test
    void sectionsTellAShare_alsoWhereTheWholeIsNotKnown() {
        UUID piece = shop.inSections("Rope-walk", 9);
        shop.sit(piece, MAY, Laid.sections(3));

        assertThat(progress(piece).laidDrills()).isEmpty();
        assertThat(progress(piece).share())
                .hasValueSatisfying(s -> assertThat(s).isCloseTo(1.0 / 3, within(1e-9)));
    }

    @Test
    void noShareIsTold_whenOneSittingCanNotBePutInThatMeasure() {
        UUID piece = shop.inSections("Rope-walk", 9);
        shop.sit(piece, MAY, Laid.sections(3));
        shop.sit(piece, MAY, Laid.drills(500));

        assertThat(progress(piece).share()).isEmpty();
        assertThat(progress(piece).laidDrills()).isEmpty();
    }

    @Test
    void sectionsOfAPieceWithoutAny_leaveTheProgressOfTheOthers() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        shop.sit(piece, MAY, Laid.drills(500));
        shop.keptSitting(piece, MAY, Laid.sections(3));

        assertThat(progress(piece))
                .isEqualTo(new Progress(Optional.of(10_000L), Optional.of(500L), Optional.of(0.05), true, 2, 0));
    }

    @Test
    void nothingIsTold_whenSittingsSayNothing() {
        UUID piece = shop.canvas("Rope-walk", 100, 100, Optional.empty());
        assertThat(progress(piece).share()).contains(0.0);
        shop.sit(piece, MAY, Laid.NOT_SAID);

        assertThat(progress(piece).share()).isEmpty();
        assertThat(progress(piece).sittings()).isEqualTo(1);
    }

    @Test
    void isNeverMoreThanTheWhole() {
        UUID piece = shop.canvas("Rope-walk", 10, 10, Optional.empty());
        shop.sit(piece, MAY, Laid.drills(150));

        assertThat(progress(piece).laidDrills()).contains(100L);
        assertThat(progress(piece).share()).contains(1.0);
    }

    @Test
    void aMadePieceIsWhole_andSaysSoIfItsSittingsDoNot() {
        UUID piece = shop.canvas("Rope-walk", 10, 10, Optional.empty());
        shop.sit(piece, MAY, Laid.drills(40));
        shop.apply(shop.bench().complete(shop.view(), new Completion(piece, MAY, Optional.empty(), "")));

        assertThat(progress(piece))
                .isEqualTo(new Progress(Optional.of(100L), Optional.of(100L), Optional.of(1.0), true, 1, 0));
    }

    @Test
    void addsUpTheMinutesThatWereTold() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        for (Optional<Integer> minutes : List.of(Optional.of(95), Optional.<Integer>empty(), Optional.of(30))) {
            Sitting sitting = new Sitting(
                    piece, MAY, Optional.empty(), Optional.empty(), minutes, 0, Laid.NOT_SAID, Optional.empty(), "");
            shop.apply(shop.bench().sit(shop.view(), UUID.randomUUID(), sitting));
        }

        assertThat(progress(piece).minutes()).isEqualTo(125);
    }
}
