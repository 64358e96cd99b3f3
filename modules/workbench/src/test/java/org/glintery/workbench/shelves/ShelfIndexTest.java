package org.glintery.workbench.shelves;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.workbench.TestView;
import org.junit.jupiter.api.Test;

class ShelfIndexTest {
    private static final UUID ROPE = new UUID(1, 1);
    private static final UUID CRANE = new UUID(1, 2);

    @Test
    void findsPieces_byEveryWordOfTitleAndCode() {
        ShelfIndex index = ShelfIndex.of(small(1));

        assertThat(titles(index, "rope")).containsExactly("Rope-walk");
        assertThat(titles(index, "4r2-k")).containsExactly("Boatyard crane");
        assertThat(titles(index, "crane 4R2")).containsExactly("Boatyard crane");
        assertThat(titles(index, "rope 4R2")).isEmpty();
        assertThat(titles(index, "  ")).hasSize(2);
    }

    @Test
    void takesSynonyms_forDrills() {
        ShelfIndex index = ShelfIndex.of(small(1));

        assertThat(titles(index, "round diamonds")).containsExactly("Rope-walk");
        assertThat(titles(index, "gems")).containsExactly("Rope-walk");
        assertThat(titles(index, "beads")).containsExactly("Rope-walk");
    }

    @Test
    void takesSynonyms_forFramesAndStandings() {
        ShelfIndex index = ShelfIndex.of(small(1).with(
                        FramePlan.TYPE,
                        CRANE,
                        FramePlan.decided(FramePlan.Decision.FRAMED, "the hall, in a cream mount")));

        assertThat(titles(index, "mat")).containsExactly("Boatyard crane");
        assertThat(titles(index, "cream passepartout")).containsExactly("Boatyard crane");
        assertThat(titles(index, "started")).containsExactly("Rope-walk");
    }

    @Test
    void takesNoSynonyms_thatAreNoWordsOfTheTrade() {
        assertThat(titles(ShelfIndex.of(small(1)), "stash")).isEmpty();
        assertThat(titles(ShelfIndex.of(small(1)), "wip")).isEmpty();
    }

    @Test
    void findsWhatIsTyped_alsoWhereItIsASynonym() {
        ShelfIndex index = ShelfIndex.of(new TestView(1)
                .with(Piece.TYPE, ROPE, Piece.titled("Door mat of rope", Standing.SHELVED))
                .with(Piece.TYPE, CRANE, Piece.titled("Gemini crane", Standing.SHELVED)));

        assertThat(titles(index, "mat")).containsExactly("Door mat of rope");
        assertThat(titles(index, "gem")).containsExactly("Gemini crane");
    }

    @Test
    void findsByCoatingAndBody_inFullAndForShort() {
        Drill shining = new Drill(Shape.ROUND, 280, Body.CRYSTAL, Coating.AB, Optional.empty(), "own", "T1");
        ShelfIndex index = ShelfIndex.of(new TestView(1)
                .with(Piece.TYPE, ROPE, Piece.titled("Rope-walk", Standing.SHELVED))
                .with(Piece.TYPE, CRANE, Piece.titled("Boatyard crane", Standing.SHELVED))
                .with(Legend.TYPE, CRANE, Legend.of(List.of(line(shining)))));

        assertThat(titles(index, "aurora")).containsExactly("Boatyard crane");
        assertThat(titles(index, "AB")).containsExactly("Boatyard crane");
        assertThat(titles(index, "rhinestones")).containsExactly("Boatyard crane");
    }

    @Test
    void countsByStanding_whatTheQueryFinds() {
        ShelfIndex index = ShelfIndex.of(small(1));

        assertThat(index.counts(""))
                .containsExactly(Map.entry(Standing.SHELVED, 1), Map.entry(Standing.ON_THE_BENCH, 1));
        assertThat(index.counts("rope")).containsExactly(Map.entry(Standing.ON_THE_BENCH, 1));
        assertThat(index.find("", Optional.of(Standing.SHELVED))).hasSize(1);
    }

    @Test
    void keepsRows_whoseDocumentsDidNotChange() {
        Piece rope = Piece.titled("Rope-walk", Standing.SHELVED);
        Piece crane = Piece.titled("Boatyard crane", Standing.SHELVED);
        ShelfIndex before =
                ShelfIndex.of(new TestView(1).with(Piece.TYPE, ROPE, rope).with(Piece.TYPE, CRANE, crane));

        ShelfIndex after = ShelfIndex.of(
                new TestView(2)
                        .with(Piece.TYPE, ROPE, rope)
                        .with(Piece.TYPE, CRANE, crane.with(Standing.MADE, Optional.empty())),
                before);

        assertThat(after.find("rope", Optional.empty()).get(0))
                .isSameAs(before.find("rope", Optional.empty()).get(0));
        assertThat(after.find("crane", Optional.empty()).get(0).standing()).contains(Standing.MADE);
    }

    @Test
    void showsKitsThatHaveNoPieceYet_onAShelfOfTheirOwn() {
        TestView view = small(1).with(Kit.TYPE, new UUID(3, 1), Kit.titled("Set of four tins"));
        ShelvesModel model = new ShelvesModel();
        model.setIndex(ShelfIndex.of(view));

        assertThat(model.shelves())
                .startsWith(
                        new ShelvesModel.Line(ShelvesModel.Shelf.ALL, 3),
                        new ShelvesModel.Line(ShelvesModel.Shelf.KITS, 1));
        model.choose(ShelvesModel.Shelf.KITS);
        assertThat(model.rows()).extracting(ShelfRow::title).containsExactly("Set of four tins");
        assertThat(model.rows()).allMatch(ShelfRow::isKit);

        view.with(Piece.TYPE, new UUID(1, 9), ofKit(new UUID(3, 1)));
        assertThat(ShelfIndex.of(view).kitsAlone("")).isEmpty();
    }

    private static Piece ofKit(UUID kit) {
        Piece plain = Piece.titled("First tin", Standing.SHELVED);
        return new Piece(
                plain.title(),
                Optional.of(kit),
                plain.madeAgainFrom(),
                plain.standing(),
                plain.standingSince(),
                plain.coverage(),
                plain.drillShape(),
                plain.canvas(),
                plain.sections(),
                plain.pictures(),
                plain.keptAt(),
                plain.story());
    }

    @Test
    void findsByTheFrame_alsoWhenItWasDecidedSince() {
        Piece rope = Piece.titled("Rope-walk", Standing.MADE);
        ShelfIndex before = ShelfIndex.of(new TestView(1).with(Piece.TYPE, ROPE, rope));
        assertThat(titles(before, "not framed")).isEmpty();

        ShelfIndex after = ShelfIndex.of(
                new TestView(2)
                        .with(Piece.TYPE, ROPE, rope)
                        .with(FramePlan.TYPE, ROPE, FramePlan.decided(FramePlan.Decision.NOT_FRAMED, "a drawer")),
                before);

        assertThat(titles(after, "not framed")).containsExactly("Rope-walk");
    }

    private static TestView small(long revision) {
        Piece rope = Piece.titled("Rope-walk", Standing.ON_THE_BENCH);
        Piece round = new Piece(
                rope.title(),
                rope.kit(),
                rope.madeAgainFrom(),
                rope.standing(),
                rope.standingSince(),
                rope.coverage(),
                Optional.of(Shape.ROUND),
                rope.canvas(),
                rope.sections(),
                rope.pictures(),
                rope.keptAt(),
                "");
        LegendLine line = line(Drill.of(Shape.SQUARE, 250, "own", "4R2-K"));
        return new TestView(revision)
                .with(Piece.TYPE, ROPE, round)
                .with(Piece.TYPE, CRANE, Piece.titled("Boatyard crane", Standing.SHELVED))
                .with(Legend.TYPE, CRANE, Legend.of(List.of(line)));
    }

    private static LegendLine line(Drill drill) {
        return new LegendLine("A", drill, Optional.empty(), Amount.unknown(), Optional.empty(), Map.of());
    }

    private static List<String> titles(ShelfIndex index, String query) {
        return index.find(query, Optional.empty()).stream().map(ShelfRow::title).toList();
    }
}
