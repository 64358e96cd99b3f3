package org.glintery.storage.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.storage.WorkshopInFolder.MAY;
import static org.glintery.storage.WorkshopInFolder.drill;
import static org.glintery.storage.WorkshopInFolder.refusal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Holder;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.storage.WorkshopInFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpotCountTest {

    private WorkshopInFolder shop;
    private UUID holder;
    private Spot first;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
        holder = shop.holder("Case A", 3, Optional.empty());
        first = shop.pocket(holder, 0);
        shop.kitUp(shop.piece("Rope-walk", 200, 100), holder);
        shop.move(drill(2), shop.pocket(holder, 1), first, 100);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Result<ChangeSet> count(String one, String two) {
        Stash stash = shop.workshop().find(Stash.class).orElseThrow();
        SpotCount count =
                new SpotCount(first, List.of(new SpotCount.Line(drill(1), one), new SpotCount.Line(drill(2), two)));
        return count.change(shop.view(), stash, MAY);
    }

    @Test
    void booksWhatWasCounted_inOneStepThatCanBeTakenBack() {
        String before = shop.view().contentDigest();

        shop.apply(count("180", "about 120"));

        assertThat(shop.count(first, drill(1))).isEqualTo(180);
        assertThat(shop.view().balance(first, drill(2)).words()).isEqualTo("about 120 (±12)");
        shop.workshop().undo().orThrow();
        assertThat(shop.view().contentDigest()).isEqualTo(before);
    }

    @Test
    void leavesWhatWasNotCounted() {
        shop.apply(count("", "90"));

        assertThat(shop.count(first, drill(1))).isEqualTo(200);
        assertThat(shop.count(first, drill(2))).isEqualTo(90);
    }

    @Test
    void refusesNothing_andWhatIsNoNumber() {
        assertThat(refusal(count("", " ")).code()).isEqualTo("nothing-to-change");
        assertThat(refusal(count("12.5", "")).code()).isEqualTo("not-a-number");
    }

    @Test
    void aPocketIsMarkedMixed_andDoesNotWarnAnyMore() {
        Spot.InPocket pocket = (Spot.InPocket) first;
        shop.apply(HolderEdits.mixed(shop.view(), shop.storage(), pocket, true));

        Holder marked = shop.view().find(Holder.TYPE, holder).orElseThrow().value();
        assertThat(marked.pockets().get(0).mixed()).isTrue();
        assertThat(marked.pockets().get(1).mixed()).isFalse();
        assertThat(CabinetSheet.of(shop.view())
                        .holders()
                        .get(0)
                        .pockets()
                        .get(0)
                        .mixed())
                .isTrue();
    }

    @Test
    void aHolderIsRenamedAndLent() {
        shop.apply(HolderEdits.named(shop.view(), shop.storage(), holder, " Case Z ", "the club"));

        Holder lent = shop.view().find(Holder.TYPE, holder).orElseThrow().value();
        assertThat(lent.name()).isEqualTo("Case Z");
        assertThat(lent.lentTo()).contains("the club");
        assertThat(refusal(HolderEdits.named(shop.view(), shop.storage(), UUID.randomUUID(), "A", ""))
                        .code())
                .isEqualTo("no-holder");
    }
}
