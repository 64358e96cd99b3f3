package org.glintery.stash;

import org.glintery.api.stash.ColourCard;
import org.openide.util.NbBundle.Messages;

/** What a colour card is called that nobody has named yet. */
public final class CardTitle {

    private CardTitle() {}

    @Messages("CardTitle.own=My own")
    public static String of(String card) {
        return card.equals(ColourCard.OWN) ? Bundle.CardTitle_own() : card;
    }
}
