package org.glintery.club.verbs;

import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.club.RoomCopy;
import org.glintery.club.signing.MemberKey;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code club new}: starts a club, whose organiser is the one who starts it. */
@ServiceProvider(service = Verb.class)
public final class ClubNewVerb implements Verb {

    @Override
    public String name() {
        return "club new";
    }

    @Override
    @Messages("ClubNewVerb.summary=Start a club that shares a folder")
    public String summary() {
        return Bundle.ClubNewVerb_summary();
    }

    @Override
    public String feature() {
        return "club";
    }

    @Override
    @Messages({
        "ClubNewVerb.name=what the club is called",
        "ClubNewVerb.as=your own name, as the others see it",
        "ClubNewVerb.room=the folder that the club shares: on a synced drive or a stick",
        "ClubNewVerb.sheet=where to write your recovery sheet, to print and keep"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("name", "NAME", Bundle.ClubNewVerb_name()),
                Param.required("as", "NAME", Bundle.ClubNewVerb_as()),
                Param.required("room", "FOLDER", Bundle.ClubNewVerb_room()),
                Param.option("sheet", "FILE.txt", Bundle.ClubNewVerb_sheet()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Entered.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        Optional<String> name = Entering.name(call.need("name"));
        if (name.isEmpty()) {
            return VerbResult.wrongUsage(Bundle.Entering_noName());
        }
        MemberKey key = MemberKey.made(new SecureRandom());
        RoomCopy copy = RoomCopy.empty(key.publicKey().memberId())
                .with(
                        key,
                        RoomCopy.ROLL,
                        RoomCopy.ROLL,
                        Entering.named(name.get()).with("members", new Json.Arr(List.of())));
        return new Entering(call, key).enter(copy, name.get());
    }
}
