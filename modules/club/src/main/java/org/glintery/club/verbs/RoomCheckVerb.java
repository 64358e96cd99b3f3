package org.glintery.club.verbs;

import java.util.List;
import org.glintery.api.Result;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code room check}: looks into the room and changes nothing. */
@ServiceProvider(service = Verb.class)
public final class RoomCheckVerb implements Verb {

    @Override
    public String name() {
        return "room check";
    }

    @Override
    @Messages("RoomCheckVerb.summary=Look into the club's folder and say what is not as it should be")
    public String summary() {
        return Bundle.RoomCheckVerb_summary();
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
    public VerbResult run(VerbCall call) {
        Result<RoomLook> look = RoomLook.of(call);
        if (look instanceof Result.Refused<RoomLook> no) {
            return VerbResult.refused(no.refusal());
        }
        RoomLook seen = look.orThrow();
        RoomAnswer answer =
                RoomAnswer.of(seen.before(), seen.seen(), seen.seen().toLeave().size());
        return VerbResult.said(answer, answer.text());
    }
}
