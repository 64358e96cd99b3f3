package org.glintery.storage.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.storage.Holder;
import org.glintery.storage.WorkshopInFolder;
import org.glintery.storage.ui.KittingChoices.Choice;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KittingChoicesTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void offersMadePiecesWhoseLeftoversLieInTheBagsOfTheirKit_untilTheyAreSorted() {
        UUID inHolder = shop.piece("Boatyard crane", 100);
        shop.kitUp(inHolder, shop.holder("Case A", 3, Optional.empty()));
        shop.piece("Net loft", 100);
        UUID made = shop.piece("Rope-walk", 200);
        shop.make(made);

        assertThat(KittingChoices.piecesToKitDown(shop.view(), shop.storage()))
                .extracting(Choice::name)
                .containsExactly("Boatyard crane", "Rope-walk");

        shop.apply(shop.storage()
                .planLeftovers(shop.view(), made, 10, Optional.empty())
                .then(plan -> Result.ok(plan.change())));
        assertThat(KittingChoices.piecesToKitDown(shop.view(), shop.storage()))
                .extracting(Choice::id)
                .containsExactly(inHolder);
    }

    @Test
    void offersHoldersWithRoomFirst_andSaysHowMuchEachHas() {
        UUID full = shop.holder("Case A", 1, Optional.empty());
        UUID half = shop.holder("Case B", 3, Optional.empty());
        shop.holder("Case C", 4, Optional.empty());
        shop.kitUp(shop.piece("Net loft", 100), full);
        shop.kitUp(shop.piece("Boatyard crane", 100), half);

        assertThat(KittingChoices.holders(shop.view(), shop.storage()))
                .extracting(Choice::name)
                .containsExactly("Case C: free, 4 pockets", "Case B: 2 of 3 pockets empty", "Case A: full");
    }

    @Test
    void offersALentHolderLast() {
        UUID lent = shop.holder("Case A", 2, Optional.empty());
        shop.kitUp(shop.piece("Net loft", 100), shop.holder("Case B", 1, Optional.empty()));
        shop.apply(shop.storage().editHolder(shop.view(), lent, lentTo(lent, "Ines")));

        assertThat(KittingChoices.holders(shop.view(), shop.storage()))
                .extracting(Choice::name)
                .containsExactly("Case B: full", "Case A: 2 of 2 pockets empty, lent to Ines");
    }

    private Holder lentTo(UUID id, String who) {
        Holder old = shop.view().find(Holder.TYPE, id).orElseThrow().value();
        return new Holder(
                old.name(), old.rows(), old.columns(), old.pockets(), old.keptAt(), Optional.of(who), old.notes());
    }
}
