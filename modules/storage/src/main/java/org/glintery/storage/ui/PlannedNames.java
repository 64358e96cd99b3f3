package org.glintery.storage.ui;

import java.util.HashMap;
import java.util.Map;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Names of places in a plan: bags that it is going to make have theirs in the plan only. Immutable. */
final class PlannedNames {

    private final View view;
    private final Map<Spot, String> made = new HashMap<>();

    PlannedNames(View view, ChangeSet plan) {
        this.view = view;
        for (Operation operation : plan.operations()) {
            if (operation instanceof Operation.Put<?> put && put.value() instanceof Bag bag) {
                made.put(new Spot.InBag(put.id()), bag.name());
            }
        }
    }

    @Messages({"# {0} - name", "PlannedNames.newBag=a new bag, {0}"})
    String words(Spot spot) {
        String name = made.get(spot);
        return name == null ? SpotNames.words(view, spot) : Bundle.PlannedNames_newBag(name);
    }
}
