package org.glintery.demo;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.Moulding;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;
import org.glintery.demo.drills.DrillGrid;

/** Fourteen finishes: scores spread, some unscored, some with only a title, fields left for later; and their frames. */
final class MadePieces {
    private static final int[] SCORES = {0, 0, 0, 3, 4, 5, 2, 4, 5, 0, 5, 4, 3, 0};
    private static final List<String> MAKING = List.of(
            "Quick and restful: large blocks of one colour.",
            "The sky was slow, the roofs went by themselves.",
            "A lot of confetti near the shore.",
            "The glue was strong, nothing popped.",
            "Worked from the middle outwards, and I would not again.");
    private static final List<String> ALTERED = List.of("", "Left the outermost row away.", "", "Two reds exchanged in the flag.", "");
    private static final List<String> COMMENTS = List.of(
            "Looks best from across the room.",
            "Would make it again, larger.",
            "A present, so it left the house the same week.",
            "The darkest blues are hard to tell apart by lamplight.",
            "");

    private final ChangeSet.Builder change;

    MadePieces(ChangeSet.Builder change) {
        this.change = change;
    }

    /** The oldest are remembered only roughly. Empty when nothing is known. */
    static Optional<About> finishedOn(int made) {
        return switch (made) {
            case 0 -> Optional.empty();
            case 1 -> About.edtf("2022-XX-XX");
            case 2 -> About.edtf("2023-23");
            case 5, 9 -> About.edtf(Calendar.finishedOn(made).toString().substring(0, 7) + "~");
            default -> Optional.of(About.on(Calendar.finishedOn(made)));
        };
    }

    void write(PieceInMaking piece) {
        int n = piece.made();
        change.create(Finish.TYPE, piece.id(), finish(piece, n));
        if (n >= 3 && n != 13) {
            change.create(FramePlan.TYPE, piece.id(), plan(piece, n));
        }
    }

    private static Finish finish(PieceInMaking piece, int n) {
        if (n < 3) {
            return Finish.titled(piece.told().title(), finishedOn(n));
        }
        boolean latest = n == 13;
        List<Picture> photos = latest
                ? List.of()
                : piece.picture().map(blob -> List.of(Shelving.picture(blob, "As it came off the table"))).orElse(List.of());
        return new Finish(
                piece.told().title(),
                Optional.of(About.on(Calendar.startedOn(n))),
                finishedOn(n),
                SCORES[n] == 0 ? Optional.empty() : Optional.of(SCORES[n]),
                latest ? "" : MAKING.get(n % MAKING.size()),
                latest ? "" : ALTERED.get(n % ALTERED.size()),
                latest ? List.of() : List.of("pen", n % 2 == 0 ? "multi-placer, 7 wide" : "roller"),
                Optional.of(n % 3 == 0 ? "club room" : "kitchen table"),
                latest ? Sealing.NOT_SAID : n % 2 == 0 ? Sealing.SEALED : Sealing.NOT_SEALED,
                photos,
                List.of(),
                latest ? "" : COMMENTS.get(n % COMMENTS.size()),
                latest
                        ? Set.of(Field.SCORE, Field.MAKING, Field.PICTURE, Field.COMMENTS, Field.SEALING)
                        : n == 9 ? Set.of(Field.SCORE) : Set.of());
    }

    private static FramePlan plan(PieceInMaking piece, int n) {
        DrillGrid grid = piece.grid().orElseThrow();
        double pitchMm = piece.told().pitchMm();
        return switch (n % 4) {
            case 0 -> FramePlan.decided(FramePlan.Decision.NOT_FRAMED, "rolled, in the chest");
            case 1 -> new FramePlan(
                    FramePlan.Decision.FRAMED,
                    Optional.of(grid.columns() * pitchMm),
                    Optional.of(grid.rows() * pitchMm),
                    Optional.of(new Moulding("Oiled ash", 20, 6, 14)),
                    FramePlan.USUAL_ALLOWANCE_MM,
                    3,
                    FramePlan.Glazing.NONE,
                    "wall by the stairs",
                    Optional.empty(),
                    Optional.of(About.on(Calendar.finishedOn(n).plusDays(12))),
                    "");
            case 2 -> FramePlan.decided(FramePlan.Decision.STRETCHED, "club room");
            default -> FramePlan.decided(FramePlan.Decision.NOT_DECIDED, "");
        };
    }
}
