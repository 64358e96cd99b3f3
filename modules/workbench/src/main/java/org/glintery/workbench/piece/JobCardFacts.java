package org.glintery.workbench.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.finishes.Finish;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.KeepingPlaces;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * What stands on a job card. Pure.
 *
 * @param gone whether the piece is no longer in the workshop
 * @param lines under the title, as on a gallery label
 */
record JobCardFacts(
        boolean gone,
        String title,
        Optional<Picture> picture,
        List<String> lines,
        Standing standing,
        Optional<About> since,
        boolean made,
        Optional<Integer> score) {

    static JobCardFacts of(View view, UUID id) {
        return view.find(Piece.TYPE, id)
                .map(Stored::value)
                .map(piece -> of(view, id, piece))
                .orElseGet(() -> new JobCardFacts(
                        true,
                        "",
                        Optional.empty(),
                        List.of(),
                        Standing.LET_GO,
                        Optional.empty(),
                        false,
                        Optional.empty()));
    }

    private static JobCardFacts of(View view, UUID id, Piece piece) {
        Optional<Finish> finish = view.find(Finish.TYPE, id).map(Stored::value);
        Optional<Picture> picture = finish.flatMap(f -> f.photos().stream().findFirst())
                .or(() -> piece.pictures().stream().findFirst());
        return new JobCardFacts(
                false,
                piece.title(),
                picture,
                lines(view, id, piece),
                piece.standing(),
                piece.standingSince(),
                finish.isPresent() || piece.standing() == Standing.MADE,
                finish.flatMap(Finish::score));
    }

    @Messages({
        "# {0} - round, square",
        "JobCard.drills={0} drills",
        "JobCard.full=full coverage",
        "JobCard.partial=partial coverage",
        "# {0} - place",
        "JobCard.keptAt=Kept at {0}",
        "# {0} - title of the kit",
        "JobCard.kit=From the kit {0}",
        "# {0} - title of the kit",
        "# {1} - where it came from",
        "JobCard.kitFrom=From the kit {0}, {1}"
    })
    private static List<String> lines(View view, UUID id, Piece piece) {
        List<String> what = new ArrayList<>();
        String size = PieceWords.size(piece.canvas());
        if (!size.isEmpty()) {
            what.add(size);
        }
        piece.drillShape()
                .ifPresent(
                        s -> what.add(Bundle.JobCard_drills(PieceWords.shape(s).toLowerCase(Locale.ROOT))));
        if (piece.coverage() != Coverage.NOT_SAID) {
            what.add(piece.coverage() == Coverage.FULL ? Bundle.JobCard_full() : Bundle.JobCard_partial());
        }
        List<String> lines = new ArrayList<>();
        if (!what.isEmpty()) {
            lines.add(String.join(", ", what));
        }
        piece.kit()
                .flatMap(k -> view.find(Kit.TYPE, k))
                .map(Stored::value)
                .ifPresent(kit -> lines.add(kit.source()
                        .map(s -> Bundle.JobCard_kitFrom(kit.title(), s))
                        .orElseGet(() -> Bundle.JobCard_kit(kit.title()))));
        String place = KeepingPlaces.name(view, piece.keptAt());
        if (!place.isEmpty()) {
            lines.add(Bundle.JobCard_keptAt(place));
        }
        view.find(FramePlan.TYPE, id)
                .map(Stored::value)
                .filter(plan -> plan.decision() != FramePlan.Decision.NOT_DECIDED)
                .ifPresent(plan -> lines.add(PieceWords.frame(plan.decision())
                        + (plan.livesAt().isBlank() || plan.livesAt().equalsIgnoreCase(place)
                                ? ""
                                : ", " + plan.livesAt())));
        return lines;
    }
}
