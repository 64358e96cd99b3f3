package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.workshop.ByName;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spots as scripts write them, on a workshop that holds some. */
class SpotNamesTest {
    private static final UUID PIECE = new UUID(5, 1);
    private static final UUID HOLDER = new UUID(5, 2);

    @TempDir
    Path temp;

    private Workshop workshop;
    private Holder holder;

    @BeforeEach
    void open() {
        workshop = new H2Workshops().create(temp.resolve("w")).orThrow();
        holder = Holder.grid("Case A/1", 2, 2, Optional.empty());
        workshop.apply(ChangeSet.named("Furnish")
                        .create(Piece.TYPE, PIECE, Piece.titled("Ferry: 21:40, 5 % off", Standing.SHELVED))
                        .create(Holder.TYPE, HOLDER, holder)
                        .create(Bag.TYPE, new UUID(6, 10), Bag.named("b10"))
                        .create(Bag.TYPE, new UUID(6, 11), Bag.named("b11"))
                        .build())
                .orThrow();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private View view() {
        return workshop.view();
    }

    @Test
    void makesABagOfItsOwn_whenOthersOnlyBeginWithItsName() {
        for (String name : List.of("b1", "b", "B1 ")) {
            SpotNames.Resolved bag = SpotNames.resolve(view(), "bag:" + name).orThrow();
            assertThat(bag.toMake()).as(name).hasSize(1);
            assertThat(bag.spot()).isNotIn(new Spot.InBag(new UUID(6, 10)), new Spot.InBag(new UUID(6, 11)));
        }
    }

    @Test
    void findsTheBagItself_byNameInAnyCaseAndById() {
        for (String name : List.of("b10", " B10", new UUID(6, 10).toString())) {
            SpotNames.Resolved bag = SpotNames.resolve(view(), "bag:" + name).orThrow();
            assertThat(bag.toMake()).as(name).isEmpty();
            assertThat(bag.spot()).isEqualTo(new Spot.InBag(new UUID(6, 10)));
        }
    }

    @Test
    void readsWhatItWrites_withSlashColonAndPercentInNames() {
        for (Spot spot : List.of(
                new Spot.OnCanvas(PIECE),
                new Spot.InPocket(HOLDER, holder.pockets().get(3).id()),
                new Spot.InBag(new UUID(6, 11)),
                Spot.SUPPLIER,
                Spot.LOST)) {
            String written = SpotNames.written(view(), spot);
            assertThat(SpotNames.resolve(view(), written).orThrow().spot())
                    .as(written)
                    .isEqualTo(spot);
        }
    }

    @Test
    void refusesAPartOfATitle_andAnEmptyName() {
        for (String written : List.of("canvas:Ferry", "canvas:", "pocket:Case/A1", "bag:", "shelf:x", "")) {
            assertThat(SpotNames.resolve(view(), written)).as(written).isInstanceOf(Result.Refused.class);
        }
        for (String name : List.of("", " ", "Ferry", "F")) {
            assertThat(ByName.find(view(), Piece.TYPE, Piece::title, name))
                    .as(name)
                    .isInstanceOf(Result.Refused.class);
        }
    }
}
