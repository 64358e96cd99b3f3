package org.glintery.api.kinds;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Preview;
import org.glintery.api.activework.Question;
import org.glintery.api.activework.RunningSitting;
import org.glintery.api.activework.Sitting;
import org.glintery.api.charts.CellBand;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.LaidBand;
import org.glintery.api.finishes.Finish;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Source;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.storage.KitUp;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Settings;

/**
 * The kinds of documents whose records are here, so that whoever reads a workshop from elsewhere can tell which documents do
 * not fit. Those of add-ons are not: nobody but they can tell what fits.
 */
@Preview(since = "1.0")
public final class DocumentKinds {
    public static final List<DocumentType<?>> ALL = List.of(
            Kit.TYPE,
            Piece.TYPE,
            Legend.TYPE,
            ColourCard.TYPE,
            Source.TYPE,
            Sitting.TYPE,
            RunningSitting.TYPE,
            Question.TYPE,
            Finish.TYPE,
            FramePlan.TYPE,
            Holder.TYPE,
            Bag.TYPE,
            KitUp.TYPE,
            KeepingPlace.TYPE,
            Design.TYPE,
            CellBand.TYPE,
            LaidBand.TYPE,
            Reservation.TYPE,
            FoundDrills.TYPE,
            Settings.TYPE);

    private DocumentKinds() {}

    /** The kind that a document is of; empty when it is not one of these. */
    public static Optional<DocumentType<?>> of(DocRef document) {
        return ALL.stream()
                .<DocumentType<?>>map(type -> type)
                .filter(type ->
                        type.owner().equals(document.owner()) && type.name().equals(document.type()))
                .findFirst();
    }
}
