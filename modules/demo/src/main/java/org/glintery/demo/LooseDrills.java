package org.glintery.demo;

import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.colour.Srgb;
import org.glintery.demo.drills.DemoCard;

/** Drills that came without a kit, some counted, some roughly, some not at all. */
final class LooseDrills {
    /** The shade of the lit windows. */
    static final Srgb LAMPLIGHT = Srgb.ofRgb(0xFFCB66);

    private static final Srgb GLEAM = Srgb.ofRgb(0xD8DCDD);
    private static final Srgb SEA = Srgb.ofRgb(0x4E8C8A);

    private final Booking booking;
    private final DemoCard card;

    LooseDrills(Booking booking, DemoCard card) {
        this.booking = booking;
        this.card = card;
    }

    void book() {
        LocalDate swap = Calendar.TODAY.minusDays(90);
        booking.move(
                coated(Shape.SQUARE, Coating.PEARL, LAMPLIGHT),
                new Spot.Boundary(Spot.Edge.SWAPPED, Optional.of("the swap table")),
                booking.looseBag("Square pearl, swapped"),
                Amount.counted(340),
                "swapped",
                swap);
        booking.move(
                coated(Shape.ROUND, Coating.METALLIC, GLEAM),
                Spot.SUPPLIER,
                booking.looseBag("Round metallic, half a bag"),
                Amount.rough(100, 30),
                "half a bag",
                swap.plusDays(12));
        booking.move(
                coated(Shape.SQUARE, Coating.METALLIC, GLEAM),
                Spot.FOUND,
                booking.looseBag("Square metallic, a pinch"),
                Amount.rough(40, 15),
                "a pinch, from the bottom of a box",
                swap.plusDays(30));
        booking.move(
                new Drill(
                        Shape.ROUND, 300, Body.CRYSTAL, Coating.AB, Optional.empty(), DemoCard.NAME, card.nearest(SEA)),
                Spot.FOUND,
                booking.looseBag("Jar by the lamp"),
                Amount.unknown(),
                "found, not counted yet",
                swap.plusDays(41));
    }

    private Drill coated(Shape shape, Coating coating, Srgb shade) {
        return new Drill(
                shape,
                Drill.usualSizeHundredths(shape),
                Body.RESIN,
                coating,
                Optional.empty(),
                DemoCard.NAME,
                card.nearest(shade));
    }
}
