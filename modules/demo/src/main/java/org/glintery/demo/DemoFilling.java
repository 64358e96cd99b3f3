package org.glintery.demo;

import java.time.LocalDate;
import java.util.List;
import org.glintery.api.Result;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DemoWorkshop;
import org.glintery.api.workshop.DemoWorkshop.Watch;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.demo.drills.DemoCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** Fills an empty workshop with the demo, as one change. */
@ServiceProvider(service = DemoWorkshop.class)
@Messages({
    "demo-not-empty=This workshop is not empty. Nothing was added; the demo goes into a workshop of its own.",
    "demo-left=The demo was stopped. Nothing was added.",
    "demo-sentence=Fill with the demo"
})
public final class DemoFilling implements DemoWorkshop {
    @Override
    public Result<Applied> fill(Workshop workshop, long seed, Watch watch) {
        View view = workshop.view();
        if (view.documents().anyMatch(document -> !document.ref().equals(Settings.TYPE.ref(Settings.ID)))
                || !view.spots().isEmpty()) {
            return Result.refused("not-empty", Bundle.demo_not_empty());
        }
        Effort effort = new Effort(Plot.pieces().size(), watch);
        ChangeSet change = change(new Seeded(seed), effort);
        return effort.isLeft() ? Result.refused("left", Bundle.demo_left()) : workshop.apply(change);
    }

    private static ChangeSet change(Seeded seeded, Effort effort) {
        var change = ChangeSet.named(Bundle.demo_sentence());
        var card = new DemoCard();
        change.put(Settings.TYPE, Settings.ID, new Settings(Settings.Depth.DRILLS_AS_WELL, "EUR", true));
        change.create(ColourCard.TYPE, ColourCard.idOf(DemoCard.NAME), card.document());
        var places = new Places(seeded, change);
        var shelving = new Shelving(seeded, change, places);
        var booking = new Booking(seeded, change);
        var drilling = new Drilling(change, booking, new Cases(seeded, change));
        var evenings = new Evenings(seeded, change);
        var doubts = new Doubts(seeded, change);
        var made = new MadePieces(change);
        var frames = new Frames(change, places);
        List<PieceInMaking> pieces = new Casting(seeded, card, effort).cast(Plot.pieces());
        if (effort.isLeft()) {
            return change.build(); // the rest needs all of them
        }
        for (PieceInMaking piece : pieces) {
            LocalDate arrived = Calendar.arrivedOn(piece, seeded);
            shelving.shelve(piece, arrived);
            drilling.book(piece, arrived);
            evenings.sit(piece);
            doubts.ask(piece);
            if (piece.told().made()) {
                made.write(piece);
                frames.decide(piece);
            }
        }
        new LooseDrills(booking, card).book();
        return change.build(seeded.id());
    }
}
