package org.glintery.api.stash;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Blob;

/**
 * A kit to be shelved with all that is in it.
 *
 * @param cards what its legends say of codes: card name, then code; codes known already keep what is known
 * @param blobs the bytes of the pictures that kit and pieces name
 */
@Stable
public record NewKit(
        UUID id, Kit kit, List<NewPiece> pieces, Map<String, Map<String, CardEntry>> cards, List<Blob> blobs) {

    public NewKit {
        pieces = List.copyOf(pieces);
        Map<String, Map<String, CardEntry>> copies = new LinkedHashMap<>();
        cards.forEach((card, codes) -> {
            Map<String, CardEntry> known = new LinkedHashMap<>();
            codes.forEach((code, entry) -> known.putIfAbsent(PlainText.line(code), entry));
            copies.putIfAbsent(PlainText.line(card), Collections.unmodifiableMap(known));
        });
        cards = Collections.unmodifiableMap(copies);
        blobs = List.copyOf(blobs);
    }

    /** A piece of the kit with its legend; without lines and photo when there is no legend yet. */
    public record NewPiece(UUID id, Piece piece, Legend legend) {}
}
