package org.glintery.workbench.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.workbench.TestView;
import org.junit.jupiter.api.Test;

class JobCardFactsTest {
    private static final UUID PIECE = new UUID(1, 1);
    private static final UUID KIT = new UUID(1, 2);

    @Test
    void tellsWhatItIs_likeAGalleryLabel() {
        JobCardFacts facts = JobCardFacts.of(whole(), PIECE);

        assertThat(facts.title()).isEqualTo("Rope-walk");
        assertThat(facts.lines())
                .containsExactly(
                        "35 x 45 cm, square drills, full coverage",
                        "From the kit Harbour set, Quayside",
                        "Not framed, the hall");
        assertThat(facts.score()).contains(4);
        assertThat(facts.gone()).isFalse();
    }

    @Test
    void saysNothing_ofWhatIsNotKnown() {
        TestView view = new TestView(1).with(Piece.TYPE, PIECE, Piece.titled("Net loft", Standing.HOPED_FOR));

        JobCardFacts facts = JobCardFacts.of(view, PIECE);

        assertThat(facts.lines()).isEmpty();
        assertThat(facts.made()).isFalse();
    }

    @Test
    void isGone_whenThePieceIsNotThere() {
        assertThat(JobCardFacts.of(new TestView(1), PIECE).gone()).isTrue();
    }

    @Test
    void tellsTheStoryInOrder_fromTheDocuments() {
        assertThat(Timeline.of(whole(), PIECE).stream().map(Timeline.Event::what))
                .containsExactly(
                        "The kit was ordered", "First sitting", "2 sittings, the last " + day(9).words(), "Finished");
    }

    private static TestView whole() {
        Piece piece = new Piece(
                "Rope-walk",
                Optional.of(KIT),
                Optional.empty(),
                Standing.MADE,
                Optional.of(day(12)),
                Coverage.FULL,
                Optional.of(Shape.SQUARE),
                Canvas.drilled(350, 450),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                "");
        Kit kit = new Kit(
                "Harbour set",
                Optional.of("Quayside"),
                Optional.of(day(1)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "");
        Finish finish = new Finish(
                "Rope-walk",
                Optional.empty(),
                Optional.of(day(12)),
                Optional.of(4),
                "",
                "",
                List.of(),
                Optional.empty(),
                Finish.Sealing.NOT_SAID,
                List.of(),
                List.of(),
                "",
                Set.of());
        return new TestView(1)
                .with(Piece.TYPE, PIECE, piece)
                .with(Kit.TYPE, KIT, kit)
                .with(Finish.TYPE, PIECE, finish)
                .with(FramePlan.TYPE, PIECE, FramePlan.decided(FramePlan.Decision.NOT_FRAMED, "the hall"))
                .with(Sitting.TYPE, new UUID(3, 1), sitting(9))
                .with(Sitting.TYPE, new UUID(3, 2), sitting(5));
    }

    private static Sitting sitting(int day) {
        return new Sitting(
                PIECE,
                day(day),
                Optional.empty(),
                Optional.empty(),
                Optional.of(60),
                0,
                Laid.drills(500),
                Optional.empty(),
                "");
    }

    private static About day(int day) {
        return About.on(LocalDate.of(2026, 3, day));
    }
}
