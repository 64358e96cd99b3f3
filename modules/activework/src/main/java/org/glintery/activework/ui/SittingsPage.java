package org.glintery.activework.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.activework.WorkingTime;
import org.glintery.activework.ui.SittingDraft.Measure;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.RunningSitting;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * What the Sittings tab shows. Made without Swing; immutable.
 *
 * @param running the sitting that goes on
 * @param sittings newest first
 * @param measure in which the maker tells sittings of this piece
 * @param hasSymbols whether drills can be told by symbol
 */
record SittingsPage(
        Standing standing,
        Progress progress,
        Forecast forecast,
        Optional<WorkingTime> running,
        List<Stored<Sitting>> sittings,
        Measure measure,
        boolean hasSymbols) {

    static SittingsPage of(View view, ActiveWork bench, UUID id, LocalDate today) {
        Optional<Piece> piece = view.find(Piece.TYPE, id).map(Stored::value);
        List<Stored<Sitting>> oldestFirst = bench.sittings(view, id);
        List<Stored<Sitting>> sittings = Stream.iterate(oldestFirst.size() - 1, i -> i >= 0, i -> i - 1)
                .<Stored<Sitting>>map(oldestFirst::get)
                .toList();
        return new SittingsPage(
                piece.map(Piece::standing).orElse(Standing.LET_GO),
                bench.progress(view, id),
                bench.forecast(view, id, today),
                view.find(RunningSitting.TYPE, id).map(Stored::value).map(WorkingTime::of),
                sittings,
                measure(sittings, piece),
                Settings.keepsDrills(view) && !Legend.of(view, id).lines().isEmpty());
    }

    /** As it was told last; else in sections, where the piece is divided so. */
    private static Measure measure(List<Stored<Sitting>> newestFirst, Optional<Piece> piece) {
        for (Stored<Sitting> sitting : newestFirst) {
            var laid = sitting.value().laid();
            if (laid.drills().isPresent()
                    || laid.percent().isPresent()
                    || laid.sections().isPresent()) {
                return SittingDraft.of(sitting.value()).measure();
            }
        }
        return piece.flatMap(Piece::sections).isPresent() ? Measure.SECTIONS : Measure.DRILLS;
    }
}
