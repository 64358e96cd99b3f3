package org.glintery.stash.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Money;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.storage.KeepingPlaces;
import org.glintery.api.time.About;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.stash.WorkshopInFolder;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PieceEditVerbTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
        new KitAddVerb()
                .run(new FakeCall(shop.workshop())
                        .with("title", "Rope-walk")
                        .with("sections", "9")
                        .with("source", "Quay shop"));
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private FakeCall call() {
        return new FakeCall(shop.workshop()).with("piece", "Rope-walk");
    }

    private static VerbResult run(FakeCall call) {
        return new PieceEditVerb().run(call);
    }

    private static PieceEditVerb.Edited edited(FakeCall call) {
        VerbResult result = run(call);
        assertThat(result).isInstanceOf(VerbResult.Said.class);
        return (PieceEditVerb.Edited) ((VerbResult.Said) result).answer();
    }

    private Piece only() {
        assertThat(shop.view().all(Piece.TYPE)).hasSize(1);
        return shop.view().all(Piece.TYPE).get(0).value();
    }

    @Test
    void correctsThePiece_andKeepsWhatIsNotSaid() {
        PieceEditVerb.Edited edited = edited(call().with("title", "Rope-walk at low water")
                .with("shape", "square")
                .with("coverage", "partial")
                .with("columns", "140")
                .with("rows", "180")
                .with("pitch", "2,5")
                .with("width", "350")
                .with("height", "450")
                .with("cloth-width", "410")
                .with("cloth-height", "510")
                .with("kept-at", "Tall shelf")
                .with("story", "Begun at the quay."));

        Piece piece = only();
        assertThat(edited.piece()).isEqualTo(piece);
        assertThat(edited.keptAt()).isEqualTo("Tall shelf");
        assertThat(piece.title()).isEqualTo("Rope-walk at low water");
        assertThat(piece.drillShape()).contains(Shape.SQUARE);
        assertThat(piece.coverage()).isEqualTo(Coverage.PARTIAL);
        assertThat(piece.canvas())
                .isEqualTo(new Canvas(
                        Optional.of(350.0),
                        Optional.of(450.0),
                        Optional.of(410.0),
                        Optional.of(510.0),
                        Optional.of(2.5),
                        Optional.of(140),
                        Optional.of(180)));
        assertThat(piece.sections()).contains(9);
        assertThat(KeepingPlaces.name(shop.view(), piece.keptAt())).isEqualTo("Tall shelf");
        assertThat(piece.story()).isEqualTo("Begun at the quay.");
        assertThat(shop.view().all(Kit.TYPE).get(0).value().source()).contains("Quay shop");
    }

    @Test
    void takesAwayWhatIsSaidToBeEmpty() {
        edited(call().with("kept-at", "Tall shelf"));
        edited(call().with("sections", "").with("kept-at", " ").with("source", ""));

        assertThat(only().sections()).isEmpty();
        assertThat(only().keptAt()).isEmpty();
        assertThat(shop.view().all(Kit.TYPE).get(0).value().source()).isEmpty();
        assertThat(shop.view().all(KeepingPlace.TYPE)).hasSize(1);
    }

    @Test
    void correctsTheKitInTheSameChange() {
        long revision = shop.view().revision();
        PieceEditVerb.Edited edited = edited(call().with("sections", "4")
                .with("price", "34,50")
                .with("ordered", "about October 2024")
                .with("notes", "Came in a tube."));

        Kit kit = shop.view().all(Kit.TYPE).get(0).value();
        assertThat(edited.kit()).contains(kit);
        assertThat(kit.price()).contains(new Money(new BigDecimal("34.50")));
        assertThat(kit.orderedOn().map(About::words)).contains("about October 2024");
        assertThat(kit.notes()).isEqualTo("Came in a tube.");
        assertThat(only().sections()).contains(4);
        assertThat(shop.view().revision()).isEqualTo(revision + 1);
        edited(call().with("postage", "4.90"));
        assertThat(shop.view().all(Kit.TYPE).get(0).value().postage()).isPresent();
    }

    @Test
    void standsSinceToday_unlessSaid_butNotSinceADayThatHasNotBeenYet() {
        edited(call().with("standing", "ordered"));
        assertThat(only().standing()).isEqualTo(Standing.ORDERED);
        assertThat(only().standingSince()).contains(About.on(LocalDate.now(call().clock())));

        edited(call().with("since", "spring 2024"));
        assertThat(only().standingSince().map(About::words)).contains("spring 2024");

        VerbResult later = run(call().with("since", "May " + (shop.view().day().getYear() + 4)));
        assertThat(later).isInstanceOf(VerbResult.Refused.class);
        assertThat(((VerbResult.Refused) later).refusal().code()).isEqualTo("future-day");
    }

    @Test
    void isWrongUsage_whenNothingIsSaidOrUnderstood_andChangesNothing() {
        long revision = shop.view().revision();

        assertThat(run(call())).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(run(call().with("sections", "some"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(run(call().with("price", "dear").with("title", "Crane"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(run(call().with("since", "the other day or so"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(run(call().with("title", " "))).isInstanceOf(VerbResult.Refused.class);
        assertThat(shop.view().revision()).isEqualTo(revision);
    }

    @Test
    void refusesWhatTellsOfAKit_whereThereIsNone() {
        shop.workshop()
                .apply(ChangeSet.named("Add a piece")
                        .create(Piece.TYPE, UUID.randomUUID(), Piece.titled("Net loft", Standing.SHELVED))
                        .build())
                .orThrow();
        VerbResult refused =
                run(new FakeCall(shop.workshop()).with("piece", "Net loft").with("price", "3"));

        assertThat(((VerbResult.Refused) refused).refusal().text()).startsWith("Net loft has no kit");
    }
}
