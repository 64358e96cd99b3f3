package org.glintery.activework.verbs;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.verb.VerbCall;

/** Where a piece stands now. */
public record OnTheBench(UUID piece, String title, Standing standing, Optional<About> since) {

    static OnTheBench of(VerbCall call, UUID id) {
        Piece piece = call.workshop().view().find(Piece.TYPE, id).orElseThrow().value();
        return new OnTheBench(id, piece.title(), piece.standing(), piece.standingSince());
    }
}
