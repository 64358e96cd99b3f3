package org.glintery.stash.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Stored;
import org.glintery.stash.WorkshopInFolder;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PieceAgainVerbTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        shop = WorkshopInFolder.at(folder);
        Path legend = Files.writeString(
                folder.resolve("legend.csv"), "Symbol;Code;Shape;Needed;Supplied\nA;T1;square;120;200\n");
        new KitAddVerb()
                .run(new FakeCall(shop.workshop())
                        .with("legend", legend.toString())
                        .with("title", "Rope-walk")
                        .with("sections", "9"));
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void isANewMakingOfTheFirst_withItsCanvasAndLegend_butNothingSupplied() {
        Stored<Piece> first = shop.view().all(Piece.TYPE).get(0);
        String bags = shop.view().spots().toString();
        VerbResult result = new PieceAgainVerb().run(new FakeCall(shop.workshop()).with("piece", "Rope-walk"));

        var told = (PieceAgainVerb.Again) ((VerbResult.Said) result).answer();
        Piece again = shop.view().find(Piece.TYPE, told.id()).orElseThrow().value();
        assertThat(again.title()).isEqualTo("Rope-walk, again").isEqualTo(told.title());
        assertThat(again.madeAgainFrom()).contains(first.id());
        assertThat(again.standing()).isEqualTo(Standing.HOPED_FOR);
        assertThat(again.sections()).contains(9);
        assertThat(again.kit()).isEmpty();
        assertThat(Legend.of(shop.view(), told.id()).lines()).singleElement().satisfies(line -> {
            assertThat(line.symbol()).isEqualTo("A");
            assertThat(line.needed()).isEqualTo(Optional.of(120L));
            assertThat(line.supplied()).isEqualTo(Amount.unknown());
        });
        assertThat(shop.view().spots()).hasToString(bags);
        assertThat(shop.view().find(Piece.TYPE, first.id())).contains(first);
    }
}
