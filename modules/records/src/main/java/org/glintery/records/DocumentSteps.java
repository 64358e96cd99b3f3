package org.glintery.records;

import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Reservation;
import org.glintery.api.workshop.DocRef;

/** Puts and removes documents on a draft; reservations are counted along. Writer thread. */
final class DocumentSteps {
    static final int MOST_BYTES = 1 << 20;

    private final JacksonCodec codec;
    private final NumberedNames<org.glintery.api.ledger.Drill> drills;

    DocumentSteps(JacksonCodec codec, NumberedNames<org.glintery.api.ledger.Drill> drills) {
        this.codec = codec;
        this.drills = drills;
    }

    /** @param record the record class whose unknown fields of an old body are kept; null to take the body as it is */
    Optional<Refusal> put(Draft draft, DocRef ref, int typeVersion, Json.Obj body, Class<?> record) {
        Document old = draft.documents().find(ref).orElse(null);
        if (old != null && old.typeVersion() > typeVersion) {
            return Optional.of(Refusals.newer(ref.type()));
        }
        boolean merges = record != null && old != null && old.typeVersion() == typeVersion;
        byte[] plain = codec.encode(merges ? UnknownFields.keep(old.body(codec), body, record) : body);
        if (plain.length > MOST_BYTES) {
            return Optional.of(Refusals.documentTooLarge(ref.type()));
        }
        return set(draft, ref, typeVersion, PackedBody.pack(plain));
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
