package org.glintery.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.storage.WorkshopInFolder.drill;
import static org.glintery.storage.WorkshopInFolder.refusal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Holder;
import org.glintery.api.workshop.Stored;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HolderCareTest {

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
    void refusesANameThatIsTaken_inAnyCase() {
        shop.holder("Case A", 2, Optional.empty());
        Holder again = Holder.grid("case a ", 1, 2, Optional.empty());

        assertThat(refusal(shop.storage().addHolder(shop.view(), UUID.randomUUID(), again))
                        .code())
                .isEqualTo("name-taken");
    }

    @Test
    void saysHowManyPocketsThereCanBe_whenThereAreTooMany() {
        Holder wall = Holder.grid("Wall", 11, 100, Optional.empty());

        assertThat(refusal(shop.storage().addHolder(shop.view(), UUID.randomUUID(), wall))
                        .text())
                .isEqualTo("A holder has from 1 to 1\u2009000 pockets. Nothing was changed.");
    }

    @Test
    void refusesToTakeAwayAPocketWithDrillsInIt() {
        UUID id = shop.holder("Case A", 2, Optional.empty());
        shop.move(drill(1), Spot.SUPPLIER, shop.pocket(id, 1), 5);
        Holder old = shop.view().find(Holder.TYPE, id).orElseThrow().value();
        Holder smaller =
                new Holder(old.name(), 1, 1, old.pockets().subList(0, 1), Optional.empty(), Optional.empty(), "");

        assertThat(refusal(shop.storage().editHolder(shop.view(), id, smaller)).text())
                .isEqualTo("Drills are still in A2. Empty it first. Nothing was changed.");
    }

    @Test
    void renamesAHolder_andKeepsItsPockets() {
        UUID id = shop.holder("Case A", 2, Optional.empty());
        Holder old = shop.view().find(Holder.TYPE, id).orElseThrow().value();
        Holder renamed =
                new Holder("Tin box", old.rows(), old.columns(), old.pockets(), Optional.empty(), Optional.empty(), "");
        shop.apply(shop.storage().editHolder(shop.view(), id, renamed));

        assertThat(shop.view().find(Holder.TYPE, id).orElseThrow().value()).isEqualTo(renamed);
    }

    @Test
    void removesOnlyAnEmptyHolder() {
        UUID id = shop.holder("Case A", 2, Optional.empty());
        shop.move(drill(1), Spot.SUPPLIER, shop.pocket(id, 0), 5);
        assertThat(refusal(shop.storage().removeHolder(shop.view(), id)).code()).isEqualTo("in-use");

        shop.move(drill(1), shop.pocket(id, 0), Spot.LOST, 5);
        shop.apply(shop.storage().removeHolder(shop.view(), id));
        assertThat(shop.view().find(Holder.TYPE, id)).isEmpty();
    }

    @Test
    void callsAHolderFree_whileNothingLiesAndNoPieceSitsInIt() {
        UUID used = shop.holder("Case A", 2, Optional.empty());
        UUID free = shop.holder("Case B", 2, Optional.empty());
        shop.kitUp(shop.piece("Crane", 0), used);
        UUID lent = shop.holder("Case C", 2, Optional.empty());
        Holder old = shop.view().find(Holder.TYPE, lent).orElseThrow().value();
        shop.apply(shop.storage()
                .editHolder(
                        shop.view(),
                        lent,
                        new Holder(
                                old.name(),
                                old.rows(),
                                old.columns(),
                                old.pockets(),
                                old.keptAt(),
                                Optional.of("the club"),
                                "")));

        assertThat(shop.storage().freeHolders(shop.view()))
                .extracting(Stored::id)
                .isEqualTo(List.of(free));
    }

    @Test
    void refusesToDropAPocketInWhichAPieceSits() {
        UUID id = shop.holder("Case A", 2, Optional.empty());
        UUID piece = shop.piece("Rope-walk", 100);
        shop.kitUp(piece, id);
        shop.move(drill(1), shop.pocket(id, 0), Spot.LOST, 100);
        Holder old = shop.view().find(Holder.TYPE, id).orElseThrow().value();
        Holder less =
                new Holder(old.name(), 1, 1, List.of(old.pockets().get(1)), old.keptAt(), old.lentTo(), old.notes());

        assertThat(refusal(shop.storage().editHolder(shop.view(), id, less)).text())
                .isEqualTo("A piece is kitted up in A1. Kit it down first. Nothing was changed.");
    }
}
