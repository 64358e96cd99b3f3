package org.glintery.storage.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.storage.WorkshopInFolder.drill;
import static org.glintery.storage.WorkshopInFolder.refusal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.KitUp;
import org.glintery.storage.WorkshopInFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PocketMovesTest {

    private WorkshopInFolder shop;
    private PocketMoves moves;
    private UUID holder;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
        moves = new PocketMoves(shop.workshop().find(Stash.class).orElseThrow());
        holder = shop.holder("Case A", 3, Optional.empty());
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private List<String> move(Spot from, Spot to) {
        return shop.apply(moves.move(shop.view(), from, to));
    }

    @Test
    void movesEverything_andLeavesAnEmptyPocket() {
        UUID piece = shop.piece("Rope-walk", Amount.rough(200, 10));
        shop.kitUp(piece, holder);
        move(shop.pocket(holder, 0), shop.pocket(holder, 2));

        assertThat(shop.view().contents(shop.pocket(holder, 0))).isEmpty();
        assertThat(shop.view().balance(shop.pocket(holder, 2), drill(1))).isEqualTo(new Balance(200, 100, 0));
    }

    @Test
    void takesTheSymbolAlong() {
        UUID piece = shop.piece("Rope-walk", 200);
        shop.kitUp(piece, holder);
        move(shop.pocket(holder, 0), shop.pocket(holder, 1));

        assertThat(KitUp.of(shop.view(), piece).orElseThrow().seats())
                .containsExactly(new KitUp.Seat("A", drill(1), shop.pocket(holder, 1)));
    }

    @Test
    void warns_whenKindsMix() {
        UUID piece = shop.piece("Rope-walk", 200, 100);
        shop.kitUp(piece, holder);

        assertThat(move(shop.pocket(holder, 0), shop.pocket(holder, 1)))
                .containsExactly("Case A, A2 holds T2 too and is not marked mixed.");
    }

    @Test
    void isTakenBackInOneStep() {
        UUID piece = shop.piece("Rope-walk", Amount.rough(200, 10));
        shop.kitUp(piece, holder);
        String before = shop.view().contentDigest();
        move(shop.pocket(holder, 0), shop.pocket(holder, 2));
        shop.workshop().undo().orThrow();

        assertThat(shop.view().contentDigest()).isEqualTo(before);
    }

    @Test
    void refusesAnEmptyPocket() {
        assertThat(refusal(moves.move(shop.view(), shop.pocket(holder, 0), shop.pocket(holder, 1)))
                        .code())
                .isEqualTo("nothing-there");
    }
}
