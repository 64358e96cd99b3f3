package org.glintery.club.verbs;

import java.util.List;
import org.glintery.api.Result;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.club.SignedDocument;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code room sync}: takes what is new from the room and leaves there what is new here. */
@ServiceProvider(service = Verb.class)
public final class RoomSyncVerb implements Verb {

    @Override
    public String name() {
        return "room sync";
    }

    @Override
    @Messages("RoomSyncVerb.summary=Take what is new from the club's folder, and leave there what is new here")
    public String summary() {
        return Bundle.RoomSyncVerb_summary();
    }

    @Override
    public String feature() {
        return "club";
    }

    @Override
    public List<Param> params() {
        return List.of();
    }

    @Override
    public Class<? extends Record> answers() {
        return RoomAnswer.class;
    }

    @Override
    @Messages("RoomSyncVerb.change=Hear from the club")
    public VerbResult run(VerbCall call) {
        Result<RoomLook> look = RoomLook.of(call);
        if (look instanceof Result.Refused<RoomLook> no) {
            return VerbResult.refused(no.refusal());
        }
        RoomLook seen = look.orThrow();
        Result<ChangeSet> change =
                seen.club().kept(call.workshop().view(), seen.seen().copy(), Bundle.RoomSyncVerb_change());
        if (change instanceof Result.Ok<ChangeSet> ok && ok.value().operations().isEmpty()) {
            return leave(call, seen);
        }
        return VerbSteps.apply(call, change, () -> leave(call, seen));
    }

    /** What was received stands already: what can't be left is said, and left the next time. */
    private static VerbResult leave(VerbCall call, RoomLook look) {
        int left = 0;
        for (SignedDocument document : look.seen().toLeave()) {
            left += done(call, look.room().leave(document)) ? 1 : 0;
        }
        for (String where : look.seen().toClear()) {
            done(call, look.room().clear(where));
        }
        RoomAnswer answer = RoomAnswer.of(look.before(), look.seen(), left);
        return VerbResult.said(answer, answer.text());
    }

    private static boolean done(VerbCall call, Result<String> step) {
        if (step instanceof Result.Refused<String> no) {
            call.say(no.refusal().text());
            return false;
        }
        return true;
    }
}
