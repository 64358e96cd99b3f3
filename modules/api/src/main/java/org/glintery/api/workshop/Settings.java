package org.glintery.api.workshop;

import java.util.Currency;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Stable;

/**
 * What the maker chose for this workshop.
 *
 * @param currency the one currency of all money, ISO 4217
 * @param demo whether it was filled with the demo
 */
@Stable
public record Settings(Depth depth, String currency, boolean demo) {
    public static final DocumentType<Settings> TYPE = DocumentType.of("workshop", "settings", Settings.class);

    /** The one settings document of a workshop. */
    public static final UUID ID = new UUID(0, 1);

    public static final Settings USUAL = new Settings(Depth.DRILLS_AS_WELL, "EUR", false);

    /** How much of the workshop is kept here. */
    public enum Depth {
        ONLY_THE_BOOK,
        DRILLS_AS_WELL
    }

    public Settings {
        Currency.getInstance(currency);
    }

    /** The settings as chosen; empty until the first choice. */
    public static Optional<Settings> of(View view) {
        return view.find(TYPE, ID).map(Stored::value);
    }

    /** Adds another depth to a change; everything else stays as it was chosen. */
    public static void choose(ChangeSet.Builder change, View view, Depth depth) {
        Optional<Stored<Settings>> old = view.find(TYPE, ID);
        Settings before = old.map(Stored::value).orElse(USUAL);
        Settings now = new Settings(depth, before.currency(), before.demo());
        old.ifPresentOrElse(stored -> change.replace(TYPE, stored, now), () -> change.create(TYPE, ID, now));
    }

    /** Adds another currency to a change; prices keep their numbers, everything else stays as it was chosen. */
    public static void price(ChangeSet.Builder change, View view, String currency) {
        Optional<Stored<Settings>> old = view.find(TYPE, ID);
        Settings before = old.map(Stored::value).orElse(USUAL);
        Settings now = new Settings(before.depth(), currency, before.demo());
        old.ifPresentOrElse(stored -> change.replace(TYPE, stored, now), () -> change.create(TYPE, ID, now));
    }

    public static boolean keepsDrills(View view) {
        return of(view).orElse(USUAL).depth() == Depth.DRILLS_AS_WELL;
    }
}
