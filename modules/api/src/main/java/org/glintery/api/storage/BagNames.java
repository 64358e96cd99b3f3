package org.glintery.api.storage;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.glintery.api.PlainText;
import org.glintery.api.Preview;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.View;

/** Gives out names for new bags that no other bag has. Not safe for use by several threads. */
@Preview(since = "1.0")
public final class BagNames {
    private static final Derived<Set<String>> ALL = BagNames::all;

    private final Set<String> taken;

    public BagNames(View view) {
        taken = new HashSet<>(view.derived(ALL));
    }

    /** The wanted name, or the first of "NAME 2", "NAME 3" ... that is free. */
    public String free(String wanted) {
        String first = PlainText.line(wanted).strip();
        String name = first;
        for (int n = 2; !taken.add(key(name)); n++) {
            name = first + " " + n;
        }
        return name;
    }

    private static Set<String> all(View view) {
        Set<String> names = new HashSet<>();
        view.all(Bag.TYPE).forEach(bag -> names.add(key(bag.value().name())));
        return names;
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
