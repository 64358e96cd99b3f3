package org.glintery.finishes;

import java.util.Comparator;
import java.util.List;
import org.glintery.api.finishes.Finish;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The latest finish first; those without a date last, in the order they were written. Any thread. */
final class FinishOrder {

    private static final Comparator<Stored<Finish>> LATEST_FIRST = Comparator.comparing(
            finish -> finish.value().finishedOn(),
            (a, b) -> a.isPresent() && b.isPresent()
                    ? b.get().compareTo(a.get())
                    : Boolean.compare(b.isPresent(), a.isPresent()));

    private FinishOrder() {}

    static List<Stored<Finish>> latestFirst(View view) {
        return view.all(Finish.TYPE).stream().sorted(LATEST_FIRST).toList();
    }
}
