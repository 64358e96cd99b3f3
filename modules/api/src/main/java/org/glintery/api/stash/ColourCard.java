package org.glintery.api.stash;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.workshop.ByName;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.View;

/**
 * A named set of codes with names and colours where known. Its document id follows from its short name.
 *
 * @param name the short name that drills refer to; never changes
 * @param title what is shown
 * @param same groups of codes that were declared to be the same drill
 */
@Stable
public record ColourCard(String name, String title, Map<String, CardEntry> entries, List<List<String>> same) {
    public static final DocumentType<ColourCard> TYPE = DocumentType.of("stash", "card", ColourCard.class);

    /** The short name of the maker's own card. */
    public static final String OWN = "own";

    public ColourCard {
        name = PlainText.line(name);
        title = PlainText.line(title);
        Map<String, CardEntry> clean = new LinkedHashMap<>();
        entries.forEach((code, entry) -> clean.putIfAbsent(PlainText.line(code), entry));
        entries = Collections.unmodifiableMap(clean);
        same = same.stream()
                .map(codes -> codes.stream().map(PlainText::line).toList())
                .toList();
    }

    public static UUID idOf(String name) {
        return ByName.idFor(TYPE, PlainText.line(name));
    }

    /** What the card says of a drill's code; empty when it does not know the code. */
    public static Optional<CardEntry> entry(View view, String card, String code) {
        return view.find(TYPE, idOf(card)).map(c -> c.value().entries().get(code));
    }
}
