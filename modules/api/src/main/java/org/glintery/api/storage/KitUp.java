package org.glintery.api.storage;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * Which symbol of a piece lies in which spot. The document has the piece's id and goes at kit down.
 *
 * @param toClear whether the piece is made and the holder waits to be freed
 */
@Stable
public record KitUp(UUID holder, List<Seat> seats, Optional<About> on, boolean toClear) {
    public static final DocumentType<KitUp> TYPE = DocumentType.of("storage", "kitup", KitUp.class);

    public KitUp {
        seats = List.copyOf(seats);
    }

    /** A symbol's place: a pocket, or a bag where the holder overflowed. */
    public record Seat(String symbol, Drill drill, Spot spot) {
        public Seat {
            symbol = PlainText.line(symbol);
        }
    }

    public static Optional<KitUp> of(View view, UUID piece) {
        return view.find(TYPE, piece).map(Stored::value);
    }
}
