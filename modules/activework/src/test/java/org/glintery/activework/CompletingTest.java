package org.glintery.activework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.MAY;
import static org.glintery.activework.BenchShop.T1;
import static org.glintery.activework.BenchShop.line;
import static org.glintery.activework.BenchShop.refusal;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.activework.Laid;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.time.About;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompletingTest {

    private BenchShop shop;
    private UUID piece;

    @BeforeEach
    void kitUp(@TempDir Path folder) {
        shop = BenchShop.at(folder);
        piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 100, 200));
        UUID holder = UUID.randomUUID();
        Storage storage = shop.workshop().find(Storage.class).orElseThrow();
        shop.apply(storage.addHolder(shop.view(), holder, Holder.grid("Case A", 1, 1, Optional.empty())));
        shop.apply(
                storage.planKitUp(shop.view(), piece, holder, Optional.empty()).then(plan -> Result.ok(plan.change())));
        shop.sit(piece, About.edtf("2025-04-12").orElseThrow(), Laid.drills(60));
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Completion completion(Optional<Integer> score) {
        return new Completion(piece, MAY, score, "at last");
    }

    @Test
    void finishesStorageAndStashChangeTogether_andAreUndoneTogether() {
        String before = shop.view().contentDigest();
        shop.apply(shop.bench().complete(shop.view(), completion(Optional.of(4))));

        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.MADE);
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(100);
        assertThat(shop.view().reserved(T1)).isZero();
        assertThat(KitUp.of(shop.view(), piece).orElseThrow().toClear()).isTrue();
        Finish finish = shop.view().find(Finish.TYPE, piece).orElseThrow().value();
        assertThat(finish.score()).contains(4);
        assertThat(finish.startedOn()).contains(About.edtf("2025-04-12").orElseThrow());
        assertThat(shop.workshop().undoable()).contains("Complete Rope-walk");

        shop.workshop().undo().orThrow();
        assertThat(shop.view().contentDigest()).isEqualTo(before);
    }

    @Test
    void aFeatureThatIsSwitchedOffContributesNothing() {
        shop.apply(shop.benchWithout(Finishes.class, Storage.class).complete(shop.view(), sayingNothing(piece)));

        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.MADE);
        assertThat(shop.view().find(Finish.TYPE, piece)).isEmpty();
        assertThat(KitUp.of(shop.view(), piece).orElseThrow().toClear()).isFalse();
    }

    @Test
    void aPieceWhoseDrillsAreNotKeptIsMade_alsoWhenTheStashIsSwitchedOff() {
        UUID plain = shop.piece("Net loft", Standing.ON_THE_BENCH);
        shop.apply(shop.benchWithout(Stash.class).complete(shop.view(), sayingNothing(plain)));

        assertThat(shop.pieceOf(plain).standing()).isEqualTo(Standing.MADE);
        assertThat(shop.pieceOf(plain).standingSince()).contains(MAY);
        assertThat(shop.view().find(Finish.TYPE, plain)).isPresent();
    }

    @Test
    void refusesAPieceWhoseDrillsNobodyWouldBook_whileTheStashIsSwitchedOff() {
        Result<?> asked = shop.benchWithout(Stash.class).complete(shop.view(), sayingNothing(piece));

        assertThat(refusal(asked).code()).isEqualTo("needs-stash");
    }

    @Test
    void refusesAScoreOrWordsThatNobodyWouldKeep_whileFinishesAreSwitchedOff() {
        var bench = shop.benchWithout(Finishes.class);
        Completion scored = new Completion(piece, MAY, Optional.of(5), "");

        assertThat(refusal(bench.complete(shop.view(), scored)).code()).isEqualTo("needs-finishes");
        assertThat(refusal(bench.complete(shop.view(), completion(Optional.empty())))
                        .code())
                .isEqualTo("needs-finishes");
    }

    private static Completion sayingNothing(UUID piece) {
        return new Completion(piece, MAY, Optional.empty(), "");
    }

    @Test
    void refusesAndChangesNothing() {
        assertThat(refusal(shop.bench().complete(shop.view(), completion(Optional.of(0))))
                        .code())
                .isEqualTo("bad-score");
        shop.apply(shop.bench().begin(shop.view(), piece, ZonedDateTime.of(2025, 5, 2, 20, 0, 0, 0, ZoneOffset.UTC)));
        assertThat(refusal(shop.bench().complete(shop.view(), completion(Optional.empty())))
                        .code())
                .isEqualTo("goes-on");
        shop.workshop().undo().orThrow();
        shop.apply(shop.bench().complete(shop.view(), completion(Optional.empty())));
        assertThat(refusal(shop.bench().complete(shop.view(), completion(Optional.empty())))
                        .code())
                .isEqualTo("already-made");
    }
}
