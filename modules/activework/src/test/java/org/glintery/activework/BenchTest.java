package org.glintery.activework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.MAY;
import static org.glintery.activework.BenchShop.T1;
import static org.glintery.activework.BenchShop.line;
import static org.glintery.activework.BenchShop.refusal;

import java.nio.file.Path;
import java.util.UUID;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchTest {

    private BenchShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void startAndRestSetTheStandingAndItsDay() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        About autumn = About.edtf("2024-23").orElseThrow();
        shop.apply(shop.bench().start(shop.view(), piece, autumn));
        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.ON_THE_BENCH);
        assertThat(shop.pieceOf(piece).standingSince()).contains(autumn);

        shop.apply(shop.bench().rest(shop.view(), piece, MAY));
        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.RESTING);
        assertThat(shop.pieceOf(piece).standingSince()).contains(MAY);
    }

    @Test
    void aPieceThatWasOrderedBringsItsDrills() {
        UUID piece = shop.piece("Rope-walk", Standing.ORDERED, line("A", T1, 100, 200));
        shop.apply(shop.bench().start(shop.view(), piece, MAY));

        assertThat(shop.count(shop.bagOf(piece), T1)).isEqualTo(200);
    }

    @Test
    void setsTheStandingItself_whenTheStashIsSwitchedOff() {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        shop.apply(shop.benchWithout(Stash.class).start(shop.view(), piece, MAY));
        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.ON_THE_BENCH);

        shop.apply(shop.benchWithout(Stash.class).rest(shop.view(), piece, MAY));
        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.RESTING);
    }

    @Test
    void refusesWhatDoesNotFollow() {
        UUID shelved = shop.piece("Rope-walk", Standing.SHELVED);
        UUID made = shop.piece("Net loft", Standing.MADE);

        assertThat(refusal(shop.bench().rest(shop.view(), shelved, MAY)).code()).isEqualTo("not-on-the-bench");
        assertThat(refusal(shop.bench().start(shop.view(), made, MAY)).code()).isEqualTo("already-made");
        shop.apply(shop.bench().start(shop.view(), shelved, MAY));
        assertThat(refusal(shop.bench().start(shop.view(), shelved, MAY)).code())
                .isEqualTo("on-the-bench");
        assertThat(refusal(shop.bench().start(shop.view(), UUID.randomUUID(), MAY))
                        .code())
                .isEqualTo("no-piece");
    }
}
