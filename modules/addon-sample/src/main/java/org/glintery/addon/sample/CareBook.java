package org.glintery.addon.sample;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** What was done for made pieces. Computes from the view and changes nothing. Any thread. */
public final class CareBook {
    private static final Derived<Map<UUID, List<CareNote>>> BY_PIECE = CareBook::byPiece;

    /** Common practice, no published source: a look and a dusting once a year. */
    private static final int LOOK_AFTER_DAYS = 365;

    /** @param since when the piece was made or last cared for */
    public record Due(UUID piece, String title, About since) {}

    /** Writes down what was done. Refused with {@code blank-note} or {@code not-made}. */
    @Messages({
        "CareBook.blank=The note was empty, so nothing was written down. Say what was done, such as 'Dusted'.",
        "# {0} - title",
        "CareBook.notMade={0} is not made yet, so there is nothing to care for. Nothing was written down.",
        "# {0} - title",
        "CareBook.change=Note care of {0}"
    })
    public Result<ChangeSet> write(View view, UUID id, Stored<Piece> piece, About on, String words) {
        String title = piece.value().title();
        if (words.isBlank()) {
            return Result.refused("blank-note", Bundle.CareBook_blank());
        }
        if (piece.value().standing() != Standing.MADE) {
            return Result.refused("not-made", Bundle.CareBook_notMade(title));
        }
        return Result.ok(ChangeSet.named(Bundle.CareBook_change(title))
                .create(CareNote.TYPE, id, new CareNote(piece.id(), on, words.strip()))
                .build());
    }

    /** The notes of a piece, the latest first. */
    public List<CareNote> notes(View view, UUID piece) {
        return view.derived(BY_PIECE).getOrDefault(piece, List.of());
    }

    /** Made pieces that nobody has looked after for a year, the longest forgotten first. */
    public List<Due> due(View view, LocalDate today) {
        LocalDate before = today.minusDays(LOOK_AFTER_DAYS);
        return view.all(Piece.TYPE).stream()
                .filter(piece -> piece.value().standing() == Standing.MADE)
                .flatMap(piece -> lastLook(view, piece)
                        .filter(since -> since.latest().filter(before::isAfter).isPresent())
                        .map(since -> new Due(piece.id(), piece.value().title(), since))
                        .stream())
                .sorted(Comparator.comparing(Due::since))
                .toList();
    }

    private Optional<About> lastLook(View view, Stored<Piece> piece) {
        return notes(view, piece.id()).stream()
                .map(CareNote::on)
                .findFirst()
                .or(() -> piece.value().standingSince());
    }

    private static Map<UUID, List<CareNote>> byPiece(View view) {
        return view.all(CareNote.TYPE).stream()
                .map(Stored::value)
                .sorted(Comparator.comparing(CareNote::on).reversed())
                .collect(Collectors.groupingBy(CareNote::piece));
    }
}
