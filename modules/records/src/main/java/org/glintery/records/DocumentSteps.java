package org.glintery.records;

import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.PlainText;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Drill;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.Reservation;

/** Puts and removes documents on a draft; reservations are counted along. Writer thread. */
final class DocumentSteps {
    static final int MOST_BYTES = 1 << 20;

    private final JacksonCodec codec;
    private final NumberedNames<Drill> drills;

    DocumentSteps(JacksonCodec codec, NumberedNames<Drill> drills) {
        this.codec = codec;
        this.drills = drills;
    }

    Optional<Refusal> put(Draft draft, PreparedChange.Step.Put put) {
        DocRef ref = put.ref();
        Document old = draft.documents().find(ref).orElse(null);
        if (old != null && old.typeVersion() > put.typeVersion()) {
            return Optional.of(Refusals.newer(ref.type()));
        }
        if (!ref.isWellNamed() || put.typeVersion() < 1) {
            return Optional.of(Refusals.malformed(PlainText.line(ref.toString())));
        }
        Json.Obj body = put.body();
        if (old != null && put.record() != null) {
            Optional<Json.Obj> standing = standing(old, put);
            if (standing.isEmpty()) {
                return Optional.of(Refusals.outOfDate());
            }
            body = UnknownFields.keep(standing.get(), body, put.record());
        }
        byte[] plain = codec.encode(body);
        if (plain.length > MOST_BYTES) {
            return Optional.of(Refusals.documentTooLarge(ref.type()));
        }
        return set(draft, ref, put.typeVersion(), PackedBody.pack(plain));
    }

    /**
     * The body that stands, at the version that is put. Empty when an older body came there since the change was made
     * ready: raising it would run its owner's code here.
     */
    private Optional<Json.Obj> standing(Document old, PreparedChange.Step.Put put) {
        return old.typeVersion() == put.typeVersion()
                ? Optional.of(old.body(codec))
                : put.raised()
                        .filter(raised -> raised.version() == old.version())
                        .map(PreparedChange.Raised::body);
    }

    /** Removing what is not there does nothing. */
    Optional<Refusal> remove(Draft draft, DocRef ref) {
        return draft.documents().find(ref).isEmpty()
                ? Optional.empty()
                : set(draft, ref, draft.documents().find(ref).get().typeVersion(), null);
    }

    /** @param packed null to remove */
    Optional<Refusal> set(Draft draft, DocRef ref, int typeVersion, byte[] packed) {
        if (isReservation(ref)) {
            try {
                reserve(draft, ref, packed);
            } catch (MalformedException e) {
                return Optional.of(Refusals.malformed(e.getMessage()));
            }
        }
        draft.document(ref, typeVersion, packed);
        return Optional.empty();
    }

    private void reserve(Draft draft, DocRef ref, byte[] packed) {
        Integer before = draft.reserved().drillOf().get(ref.id());
        if (before != null) {
            draft.flow().reservationTouched(before);
        }
        ReservedDrills rest = draft.reserved().without(ref.id());
        if (packed == null) {
            draft.reserve(rest);
            return;
        }
        Reservation reservation = codec.decode(PackedBody.unpack(packed), Reservation.class);
        int drill = drills.number(reservation.drill());
        draft.reserve(rest.with(ref.id(), drill, reservation));
        draft.flow().reservationTouched(drill);
    }

    static boolean isReservation(DocRef ref) {
        return ref.owner().equals(Reservation.TYPE.owner()) && ref.type().equals(Reservation.TYPE.name());
    }
}
