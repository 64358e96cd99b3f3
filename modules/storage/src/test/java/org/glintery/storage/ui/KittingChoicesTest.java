package org.glintery.storage.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
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
}
