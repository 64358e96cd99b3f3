package org.glintery.storage.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.storage.WorkshopInFolder.drill;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.Holder;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.storage.WorkshopInFolder;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HolderVerbsTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private FakeCall call() {
        return new FakeCall(shop.workshop());
    }

    private static String text(VerbResult result) {
        assertThat(result).isInstanceOf(VerbResult.Said.class);
        return ((VerbResult.Said) result).text();
    }

    @Test
    void addsAHolderOnce() {
        assertThat(text(new HolderAddVerb()
                        .run(call().with("name", "Case A").with("rows", "2").with("columns", "3"))))
                .startsWith("Added Case A with 6 pockets");
        assertThat(new HolderAddVerb().run(call().with("name", "case a"))).isInstanceOf(VerbResult.Refused.class);
        assertThat(new HolderAddVerb().run(call().with("name", "B").with("rows", "many")))
                .isInstanceOf(VerbResult.WrongUsage.class);
    }

    @Test
    void tellsPocketsAsPeopleSayThem_whetherOneOrAThousand() {
        assertThat(text(new HolderAddVerb()
                        .run(call().with("name", "Tin").with("rows", "1").with("columns", "1"))))
                .startsWith("Added Tin with 1 pocket (");
        assertThat(text(new HolderAddVerb()
                        .run(call().with("name", "Wall").with("rows", "10").with("columns", "100"))))
                .startsWith("Added Wall with 1\u2009000 pockets (");

        assertThat(text(new HolderShowVerb().run(call().with("holder", "Tin"))))
                .isEqualTo("Tin, 0 of 1 pocket used, free");
        assertThat(text(new HolderShowVerb().run(call().with("holder", "Wall"))))
                .isEqualTo("Wall, 0 of 1\u2009000 pockets used, free");
        assertThat(text(new HolderListVerb().run(call()))).contains("1\u2009000");
    }

    @Test
    void endsTheSentence_whenDrillsLieInAHolderAndNoPieceDoes() {
        UUID holder = shop.holder("Case A", 3, Optional.empty());
        shop.move(drill(1), Spot.SUPPLIER, shop.pocket(holder, 0), 5);

        assertThat(text(new HolderShowVerb().run(call().with("holder", "Case A"))))
                .startsWith("Case A, 1 of 3 pockets used\n");
    }

    @Test
    void saysThatNoneIsFree_onlyWhenFreeOnesWereAskedFor() {
        assertThat(text(new HolderListVerb().run(call()))).isEqualTo("No holders.");

        UUID holder = shop.holder("Case A", 3, Optional.empty());
        shop.move(drill(1), Spot.SUPPLIER, shop.pocket(holder, 0), 5);
        assertThat(text(new HolderListVerb().run(call().flagged("free")))).isEqualTo("No free holders.");
    }

    @Test
    void aLentHolderIsNotFree_andKittingUpIntoItWarns() {
        UUID holder = shop.holder("Case D", 3, Optional.empty());
        Holder old = shop.view().find(Holder.TYPE, holder).orElseThrow().value();
        shop.apply(shop.storage()
                .editHolder(
                        shop.view(),
                        holder,
                        new Holder(
                                old.name(),
                                old.rows(),
                                old.columns(),
                                old.pockets(),
                                old.keptAt(),
                                Optional.of("the club"),
                                old.notes())));
        shop.piece("Rope-walk", 200);

        assertThat(text(new HolderListVerb().run(call().flagged("free")))).isEqualTo("No free holders.");
        assertThat(text(new HolderListVerb().run(call()))).contains("lent to the club");
        assertThat(text(new HolderShowVerb().run(call().with("holder", "Case D"))))
                .isEqualTo("Case D, 0 of 3 pockets used, lent to the club");
        FakeCall preview =
                call().with("piece", "Rope-walk").with("holder", "Case D").flagged("preview");
        text(new KitUpVerb().run(preview));
        assertThat(preview.said)
                .containsExactly("Case D is lent to the club. Get it back first, or pick another holder.");
    }

    @Test
    void tellsHowAnOptionIsWritten_whenItIsNotUnderstood() {
        assertThat(new HolderAddVerb().run(call().with("name", "B").with("capacity", "many")))
                .isEqualTo(VerbResult.wrongUsage(
                        "--capacity is a whole number from 1 to 1\u2009000\u2009000\u2009000, not 'many'."));
        shop.piece("Rope-walk", 200);
        assertThat(new KitDownVerb().run(call().with("piece", "Rope-walk").with("on", "soon")))
                .isEqualTo(VerbResult.wrongUsage(
                        "--on 'soon' is not a date. Write it like 2025-03-31 or 'about October 2024'."));
    }

    @Test
    void kitsUpAndDown_byName() {
        UUID holder = shop.holder("Case A", 3, Optional.of(500L));
        UUID piece = shop.piece("Rope-walk", 200, 100);

        String up = text(new KitUpVerb().run(call().with("piece", "rope-walk").with("holder", "case a")));
        assertThat(up)
                .startsWith("Kitted up Rope-walk in Case A: 2 pockets, 0 bags.")
                .contains("Case A, A2");
        assertThat(text(new HolderListVerb().run(call()))).contains("Rope-walk");
        assertThat(text(new HolderShowVerb().run(call().with("holder", "Case A"))))
                .contains("own T2, round 2.8 mm");

        shop.make(piece);
        String down =
                text(new KitDownVerb().run(call().with("piece", "Rope-walk").with("repair", "5")));
        assertThat(down).startsWith("Kitted down Rope-walk. Case A is cleared.").contains("bag own T1");
        assertThat(shop.count(shop.bagNamed("Repair packet of Rope-walk"), drill(1)))
                .isEqualTo(5);
        assertThat(shop.view().contents(shop.pocket(holder, 0))).isEmpty();
    }

    @Test
    void namesTheBagsOfAPlan_thatAreNotMadeYet() {
        shop.holder("Case A", 1, Optional.empty());
        UUID piece = shop.piece("Rope-walk", 0);
        List<LegendLine> asks = List.of(
                new LegendLine("A", drill(1), Optional.of(50L), Amount.unknown(), Optional.empty(), Map.of()),
                new LegendLine("B", drill(2), Optional.of(50L), Amount.unknown(), Optional.empty(), Map.of()));
        shop.apply(Result.ok(
                ChangeSet.named("Ask").put(Legend.TYPE, piece, Legend.of(asks)).build()));
        Spot leftovers = shop.bag("leftovers");
        shop.move(drill(1), Spot.SUPPLIER, leftovers, 80);

        int bags = shop.view().all(Bag.TYPE).size();
        VerbResult planned = new KitUpVerb()
                .run(call().with("piece", "Rope-walk").with("holder", "Case A").flagged("preview"));
        assertThat(text(planned))
                .startsWith("Would kit up Rope-walk in Case A: 1 pocket, 1 bag.")
                .endsWith("bag Rope-walk");
        assertThat(((KitUpVerb.KittedUp) ((VerbResult.Said) planned).answer()).seats())
                .extracting(KitUpVerb.Seat::spot)
                .containsExactly("pocket:Case A/A1", "bag:Rope-walk");
        assertThat(shop.view().all(Bag.TYPE)).as("nothing is made yet").hasSize(bags);
    }

    @Test
    void isWrongUsage_whenANameIsUnknownOrAmbiguous() {
        shop.holder("Case A", 3, Optional.empty());
        shop.piece("Rope-walk", 200);
        shop.piece("Rope locker", 200);

        VerbResult ambiguous = new KitUpVerb().run(call().with("piece", "rope").with("holder", "Case A"));
        assertThat(((VerbResult.WrongUsage) ambiguous).candidates()).hasSize(2);
        assertThat(new KitUpVerb().run(call().with("piece", "Rope-walk").with("holder", "Case Z")))
                .isInstanceOf(VerbResult.WrongUsage.class);
    }
}
