package org.glintery.club.verbs;

import java.nio.file.Path;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.View;
import org.glintery.club.Club;
import org.glintery.club.Membership;
import org.glintery.club.Room;
import org.glintery.club.RoomCopy;
import org.glintery.club.RoomFolder;
import org.openide.util.NbBundle.Messages;

/** One look into the room of the workshop's club. */
record RoomLook(Club club, Room room, RoomCopy before, RoomCopy.Seen seen) {

    /** Refused with {@code no-club} or {@code no-room}. */
    @Messages("RoomLook.none=This workshop is in no club yet. 'club new' starts one, 'club join' joins one.")
    static Result<RoomLook> of(VerbCall call) {
        Club club = call.workshop().find(Club.class).orElseThrow();
        View view = call.workshop().view();
        if (club.membership(view).isEmpty()) {
            return Result.refused("no-club", Bundle.RoomLook_none());
        }
        Membership membership = club.membership(view).get();
        Room room = new RoomFolder(Path.of(membership.room()));
        RoomCopy before = club.copy(view);
        return room.lying()
                .then(lying ->
                        Result.ok(new RoomLook(club, room, before, before.look(room, lying, membership.member()))));
    }
}
