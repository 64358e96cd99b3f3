package org.glintery.club;

import java.util.List;
import org.glintery.api.Json;
import org.glintery.club.signing.MemberKey;

/** One member at work in a test: a copy, a key and a room. */
final class Peer {
    private RoomCopy copy;
    private final MemberKey key;
    private final Room room;

    Peer(RoomCopy copy, MemberKey key, Room room) {
        this.copy = copy;
        this.key = key;
        this.room = room;
    }

    RoomCopy copy() {
        return copy;
    }

    void write(String kind, String name, Json.Obj body) {
        copy = copy.with(key, kind, name, body);
    }

    void remove(String kind, String name) {
        copy = copy.without(key, kind, name);
    }

    List<Finding> sync() {
        RoomCopy.Seen seen =
                copy.look(room, room.lying().orThrow(), key.publicKey().memberId());
        seen.toLeave().forEach(document -> room.leave(document).orThrow());
        seen.toClear().forEach(where -> room.clear(where).orThrow());
        copy = seen.copy();
        return seen.findings();
    }

    /** What counts, as text. */
    List<String> texts() {
        return copy.documents().stream().map(SignedDocument::text).toList();
    }
}
