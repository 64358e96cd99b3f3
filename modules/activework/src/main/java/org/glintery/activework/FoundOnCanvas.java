package org.glintery.activework;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.View;

/** Drills that were laid on a piece though none were booked, and flagged as found. Not safe for several threads. */
final class FoundOnCanvas {

    private final View view;
    private final Spot canvas;
    private final Map<Drill, Long> more = new LinkedHashMap<>();
    private final Map<Drill, Long> told = new LinkedHashMap<>();

    FoundOnCanvas(View view, UUID piece) {
        this.view = view;
        this.canvas = new Spot.OnCanvas(piece);
    }

    /** Those that nobody has told of since. */
    long unexplained(Drill drill) {
        return FoundDrills.at(view, canvas, drill) + more.getOrDefault(drill, 0L);
    }

    /** So many that a sitting found came with the piece, as was told since: they are the piece's own. */
    void toldSince(Drill drill, long count) {
        told.merge(drill, count, Long::sum);
    }

    long toldSince(Drill drill) {
        return told.getOrDefault(drill, 0L);
    }

    /** @param count below 0 when they were not found after all */
    void add(Drill drill, long count) {
        more.merge(drill, count, Long::sum);
    }

    void flag(ChangeSet.Builder change) {
        more.forEach((drill, count) -> FoundDrills.add(change, view, canvas, drill, count));
    }
}
