package org.glintery.demo;

import java.util.Optional;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;

/** What was decided about frames: framed, stretched, in a sleeve, not framed, or not yet. */
final class Frames {
    private static final Moulding ASH = new Moulding("Oiled ash", 20, 6, 14);
    private static final Moulding DRIFT = new Moulding("Grey driftwood", 35, 7, 18);
    private static final int DAYS_TO_FRAME = 12;

    private final ChangeSet.Builder change;
    private final Places places;

    Frames(ChangeSet.Builder change, Places places) {
        this.change = change;
        this.places = places;
    }

    /** A piece that is not named has no plan. */
    void decide(PieceInMaking piece) {
        switch (piece.told().title()) {
            case "Signal board 2", "Signal board 3" -> framed(piece, ASH, Glazing.NONE, "wall by the stairs");
            case Plot.FUNNEL ->
                framed(piece, DRIFT, Glazing.usual(Glazing.Material.ACRYLIC), "ferry saloon, over the bench");
            case "The long pier in winter" -> framed(piece, DRIFT, Glazing.NONE, "hall");
            case "Cable ferry, early" -> plan(piece, FramePlan.decided(Decision.STRETCHED, "club room"));
            case "Lock gates at noon" -> plan(piece, FramePlan.decided(Decision.SLEEVE, "chest of rolled canvases"));
            case "Rowing boats from the quay", "Biscuit tin, red band" ->
                plan(piece, FramePlan.decided(Decision.NOT_FRAMED, "kitchen"));
            case "Pilot boat in a swell" -> plan(piece, FramePlan.decided(Decision.NOT_FRAMED, "given away"));
            case "Evening behind the breakwater" -> plan(piece, FramePlan.decided(Decision.NOT_DECIDED, ""));
            default -> {}
        }
    }

    private void framed(PieceInMaking piece, Moulding moulding, Glazing glazing, String livesAt) {
        var grid = piece.grid().orElseThrow();
        double pitchMm = piece.told().pitchMm();
        boolean onTheWall = livesAt.startsWith("wall");
        plan(
                piece,
                new FramePlan(
                        Decision.FRAMED,
                        Optional.of(grid.columns() * pitchMm),
                        Optional.of(grid.rows() * pitchMm),
                        Optional.of(moulding),
                        FramePlan.USUAL_ALLOWANCE_MM,
                        FramePlan.USUAL_KERF_MM,
                        glazing,
                        livesAt,
                        onTheWall ? Optional.of(places.wall()) : Optional.empty(),
                        Optional.of(About.on(Calendar.finishedOn(piece.made()).plusDays(DAYS_TO_FRAME))),
                        ""));
    }

    private void plan(PieceInMaking piece, FramePlan plan) {
        change.create(FramePlan.TYPE, piece.id(), plan);
    }
}
