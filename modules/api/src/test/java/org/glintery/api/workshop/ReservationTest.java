package org.glintery.api.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.junit.jupiter.api.Test;

/** Ids that are made from content stay what they are, for they stand in workshops on disk. */
class ReservationTest {
    private static final UUID PIECE = UUID.fromString("6f0b7a52-1d3e-4c8f-9a64-2b7e5d9c1f30");
    private static final Drill PLAIN = Drill.of(Shape.ROUND, 280, "own", "T1");
    private static final Drill SPECIAL =
            new Drill(Shape.SPECIAL, 600, Body.CRYSTAL, Coating.AB, Optional.of("drop"), "ferry|2", "50% grey");

    @Test
    void hasTheIdItAlwaysHad() {
        // MD5, as RFC 4122 version 3 without a name space, of "ledger/reservation/piece/PIECE/KEY", made with Python's
        // hashlib
        assertThat(Reservation.idForPiece(PIECE, PLAIN))
                .isEqualTo(UUID.fromString("b89661f9-38b2-3872-86eb-3785b8216ef3"));
        assertThat(Reservation.idForPiece(PIECE, SPECIAL))
                .isEqualTo(UUID.fromString("3bae323d-cd0b-326e-b17b-154f634c1a74"));
    }

    @Test
    void tellsDrillsApart_whateverTheirCodesHold() {
        assertThat(PLAIN.key()).isEqualTo("round|280|resin|none|own|T1");
        assertThat(SPECIAL.key()).isEqualTo("special|600|crystal|ab|ferry%7C2|50%25 grey|drop");
        assertThat(Drill.of(Shape.ROUND, 280, "own|T", "1").key())
                .isNotEqualTo(Drill.of(Shape.ROUND, 280, "own", "T|1").key());
    }
}
