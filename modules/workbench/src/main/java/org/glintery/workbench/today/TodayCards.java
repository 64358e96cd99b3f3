package org.glintery.workbench.today;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import org.glintery.api.workshop.View;
import org.glintery.workbench.host.ForeignCall;
import org.glintery.workbench.parts.Card;
import org.glintery.workbench.parts.PartPane;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;

/** The cards of Today, from whichever features are there. One that fails says so in its place. Event thread. */
final class TodayCards {
    private final Desk desk;
    private final List<TodayCard> cards;
    private final Map<TodayCard, JComponent> made = new HashMap<>();
    private final Set<TodayCard> failing = new HashSet<>();

    TodayCards(Desk desk, Collection<? extends TodayCard> cards) {
        this.desk = desk;
        this.cards = cards.stream()
                .<TodayCard>map(card -> card)
                .sorted(Comparator.comparing(card -> ForeignCall.makeOr(Integer.MAX_VALUE, card, card::position)))
                .toList();
    }

    /** Those that have something to say, each with the same component as before. */
    List<JComponent> offered(View view) {
        return cards.stream()
                .filter(card -> isOffered(card, view))
                .map(card -> made.computeIfAbsent(card, this::component))
                .toList();
    }

    /** One that could not say it is not asked again before the user takes it back: it is shown, to be named. */
    private boolean isOffered(TodayCard card, View view) {
        if (failing.contains(card)) {
            return true;
        }
        return ForeignCall.makeOr(Optional.<Boolean>empty(), card, () -> Optional.of(card.offered(view)))
                .orElseGet(() -> failing.add(card));
    }

    private JComponent component(TodayCard card) {
        String title = ForeignCall.makeOr(card.getClass().getSimpleName(), card, card::title);
        return new Card(title, new PartPane(title, desk, card, () -> create(card)));
    }

    /** Asks once more whether it is offered: where that failed, it fails here, where it is told. */
    private ScreenPart<?> create(TodayCard card) {
        card.offered(desk.view());
        failing.remove(card);
        return card.create(desk);
    }
}
