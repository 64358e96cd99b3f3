package org.glintery.stash;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * Makes codes known to their cards. A code that is known keeps what is known of it; only gaps are filled. Not safe
 * for use by several threads.
 */
final class CardLearning {

    private final View view;
    private final Map<String, Map<String, CardEntry>> told = new LinkedHashMap<>();
    private final List<String> warnings = new ArrayList<>();

    CardLearning(View view) {
        this.view = view;
    }

    /** Replaces what a card says of a code: for a person who corrects it. */
    @Messages({
        "CardLearning.noCode=A drill needs a card and a code. Nothing was changed.",
        "# {0} - what was written",
        "CardLearning.noColour=''{0}'' is not a colour. Write it like #2a9d8f. Nothing was changed.",
        "# {0} - card",
        "# {1} - code",
        "CardLearning.describe=Describe {0} {1}"
    })
    static Result<ChangeSet> describe(View view, String card, String code, CardEntry entry) {
        if (card.isBlank() || code.isBlank()) {
            return Result.refused("no-code", Bundle.CardLearning_noCode());
        }
        if (entry.hex().filter(hex -> !hex.matches("#[0-9a-f]{6}")).isPresent()) {
            return Result.refused(
                    "not-a-colour", Bundle.CardLearning_noColour(entry.hex().get()));
        }
        ChangeSet.Builder change = ChangeSet.named(Bundle.CardLearning_describe(card, code));
        Optional<Stored<ColourCard>> stored = view.find(ColourCard.TYPE, ColourCard.idOf(card));
        Map<String, CardEntry> entries = new LinkedHashMap<>(entries(stored));
        entries.put(code, entry);
        put(change, card, stored, entries);
        return Result.ok(change.build());
    }

    CardLearning told(Map<String, Map<String, CardEntry>> cards) {
        cards.forEach((card, codes) -> codes.forEach((code, entry) -> tell(card, code, entry)));
        return this;
    }

    CardLearning used(Collection<Drill> drills) {
        drills.forEach(drill -> tell(drill.card(), drill.code(), CardEntry.UNKNOWN));
        return this;
    }

    /** Adds what is new to the change: nothing when all was known. */
    void into(ChangeSet.Builder change) {
        told.forEach((card, codes) -> {
            Optional<Stored<ColourCard>> stored = view.find(ColourCard.TYPE, ColourCard.idOf(card));
            Map<String, CardEntry> known = entries(stored);
            Map<String, CardEntry> merged = new LinkedHashMap<>(known);
            codes.forEach((code, entry) -> merged.merge(code, entry, (old, now) -> filled(card, code, old, now)));
            if (!merged.equals(known)) {
                put(change, card, stored, merged);
            }
        });
    }

    /** Where what was told differs from what is known; to be read after {@link #into}. */
    List<String> warnings() {
        return warnings;
    }

    private void tell(String card, String code, CardEntry entry) {
        told.computeIfAbsent(card, c -> new LinkedHashMap<>())
                .merge(code, normal(entry), (first, second) -> fill(first, second));
    }

    @Messages({
        "# {0} - card",
        "# {1} - code",
        "# {2} - known colour",
        "# {3} - colour here",
        "CardLearning.differs={0} {1} is known as {2}, here it is {3}. What was known stays."
    })
    private CardEntry filled(String card, String code, CardEntry known, CardEntry now) {
        if (known.hex().isPresent() && now.hex().isPresent() && !known.hex().equals(now.hex())) {
            warnings.add(Bundle.CardLearning_differs(
                    card, code, known.hex().get(), now.hex().get()));
        }
        return fill(known, now);
    }

    private static CardEntry fill(CardEntry known, CardEntry now) {
        boolean takesColour = known.hex().isEmpty() && now.hex().isPresent();
        return new CardEntry(
                known.name().or(now::name), known.hex().or(now::hex), takesColour ? now.rough() : known.rough());
    }

    private static CardEntry normal(CardEntry entry) {
        return new CardEntry(entry.name(), entry.hex().map(hex -> hex.toLowerCase(Locale.ROOT)), entry.rough());
    }

    private static Map<String, CardEntry> entries(Optional<Stored<ColourCard>> stored) {
        return stored.map(s -> s.value().entries()).orElse(Map.of());
    }

    private static void put(
            ChangeSet.Builder change,
            String card,
            Optional<Stored<ColourCard>> stored,
            Map<String, CardEntry> entries) {
        if (stored.isPresent()) {
            ColourCard old = stored.get().value();
            change.replace(ColourCard.TYPE, stored.get(), new ColourCard(old.name(), old.title(), entries, old.same()));
        } else {
            change.create(
                    ColourCard.TYPE,
                    ColourCard.idOf(card),
                    new ColourCard(card, CardTitle.of(card), entries, List.of()));
        }
    }
}
