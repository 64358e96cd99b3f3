package org.glintery.club.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.Result;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.club.Club;
import org.glintery.club.DocKey;
import org.glintery.club.Member;
import org.glintery.club.Membership;
import org.glintery.club.RoomCopy;
import org.glintery.club.signing.MemberKey;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code club members}: lists who is in the club; its organiser admits, keeps and removes members. */
@ServiceProvider(service = Verb.class)
public final class ClubMembersVerb implements Verb {

    /** Who is in the club, and who asks to be. */
    public record Members(String club, Optional<String> name, List<Line> members) {}

    /**
     * One of them.
     *
     * @param keptBy the organiser who writes for a member without a computer
     */
    public record Line(String id, String name, boolean admitted, boolean organiser, Optional<String> keptBy) {}

    @Override
    public String name() {
        return "club members";
    }

    @Override
    @Messages("ClubMembersVerb.summary=List the members of the club; its organiser admits and removes them")
    public String summary() {
        return Bundle.ClubMembersVerb_summary();
    }

    @Override
    public String feature() {
        return "club";
    }

    @Override
    @Messages({
        "ClubMembersVerb.admit=put someone who asks to join on the roll: their name or id",
        "ClubMembersVerb.keep=add a member without a computer, for whom you write",
        "ClubMembersVerb.remove=take someone off the roll: their name or id"
    })
    public List<Param> params() {
        return List.of(
                Param.option("admit", "WHO", Bundle.ClubMembersVerb_admit()),
                Param.option("keep", "NAME", Bundle.ClubMembersVerb_keep()),
                Param.option("remove", "WHO", Bundle.ClubMembersVerb_remove()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Members.class;
    }

    @Override
    @Messages({
        "ClubMembersVerb.notOrganiser=Only the club's organiser admits and removes members. Nothing was changed.",
        "ClubMembersVerb.change=Change the members of the club"
    })
    public VerbResult run(VerbCall call) {
        Club club = call.workshop().find(Club.class).orElseThrow();
        View view = call.workshop().view();
        Optional<Membership> membership = club.membership(view);
        if (membership.isEmpty()) {
            return VerbResult.refused("no-club", Bundle.RoomLook_none());
        }
        if (params().stream().allMatch(param -> call.values(param.name()).isEmpty())) {
            return said(club.copy(view));
        }
        if (!membership.get().isOrganiser()) {
            return VerbResult.refused("not-organiser", Bundle.ClubMembersVerb_notOrganiser());
        }
        Result<MemberKey> key = club.key(view);
        if (key instanceof Result.Refused<MemberKey> no) {
            return VerbResult.refused(no.refusal());
        }
        return changed(call, club, club.copy(view), key.orThrow());
    }

    @Messages({"# {0} - who", "ClubMembersVerb.unknown=''{0}'' is nobody in the club, or more than one. Say the id."})
    private static VerbResult changed(VerbCall call, Club club, RoomCopy before, MemberKey key) {
        RoomCopy copy = before;
        for (String who : call.values("admit")) {
            Optional<Member> member = find(copy, who, false);
            if (member.isEmpty()) {
                return unknown(copy, who);
            }
            List<String> roll = roll(copy);
            roll.add(member.get().id());
            copy = withRoll(copy, key, roll);
        }
        for (String name : call.values("keep")) {
            if (Entering.name(name).isEmpty()) {
                return VerbResult.wrongUsage(Bundle.Entering_noName());
            }
            copy = copy.with(
                    key,
                    RoomCopy.KEPT,
                    UUID.randomUUID().toString(),
                    Entering.named(Entering.name(name).get()));
        }
        for (String who : call.values("remove")) {
            Optional<Member> member = find(copy, who, true);
            if (member.isEmpty()) {
                return unknown(copy, who);
            }
            List<String> roll = roll(copy);
            copy = member.get().keptBy().isPresent()
                    ? copy.without(key, RoomCopy.KEPT, member.get().id())
                    : roll.remove(member.get().id()) ? withRoll(copy, key, roll) : copy;
        }
        RoomCopy after = copy;
        Result<ChangeSet> change = club.kept(call.workshop().view(), after, Bundle.ClubMembersVerb_change());
        return VerbSteps.apply(call, change, () -> said(after));
    }

    private static VerbResult unknown(RoomCopy copy, String who) {
        return new VerbResult.WrongUsage(
                Bundle.ClubMembersVerb_unknown(who),
                copy.members().stream()
                        .map(member -> member.id() + " " + member.name())
                        .toList());
    }

    private static Optional<Member> find(RoomCopy copy, String who, boolean admitted) {
        List<Member> found = copy.members().stream()
                .filter(member -> member.admitted() == admitted)
                .filter(member -> member.id().equals(who) || member.name().equalsIgnoreCase(who.strip()))
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static List<String> roll(RoomCopy copy) {
        List<String> roll = new ArrayList<>(copy.roll());
        roll.remove(copy.club());
        return roll;
    }

    private static RoomCopy withRoll(RoomCopy copy, MemberKey key, List<String> roll) {
        Json.Obj old = copy.find(new DocKey(copy.club(), RoomCopy.ROLL, RoomCopy.ROLL))
                .orElseThrow()
                .body();
        List<Json> ids = roll.stream().sorted().<Json>map(Json.Text::new).toList();
        return copy.with(key, RoomCopy.ROLL, RoomCopy.ROLL, old.with("members", new Json.Arr(ids)));
    }

    @Messages({
        "ClubMembersVerb.who=Name",
        "ClubMembersVerb.id=Id",
        "ClubMembersVerb.what=",
        "ClubMembersVerb.organiser=organiser",
        "ClubMembersVerb.kept=without a computer",
        "ClubMembersVerb.member=member",
        "ClubMembersVerb.asks=asks to join"
    })
    private static VerbResult said(RoomCopy copy) {
        TextTable table =
                new TextTable(Bundle.ClubMembersVerb_who(), Bundle.ClubMembersVerb_what(), Bundle.ClubMembersVerb_id());
        List<Line> lines = new ArrayList<>();
        for (Member member : copy.members()) {
            boolean organiser = member.id().equals(copy.club());
            lines.add(new Line(member.id(), member.name(), member.admitted(), organiser, member.keptBy()));
            table.row(member.name(), standing(member, organiser), member.id());
        }
        return VerbResult.said(new Members(copy.club(), copy.clubName(), lines), table.toString());
    }

    private static String standing(Member member, boolean organiser) {
        if (organiser) {
            return Bundle.ClubMembersVerb_organiser();
        }
        if (member.keptBy().isPresent()) {
            return Bundle.ClubMembersVerb_kept();
        }
        return member.admitted() ? Bundle.ClubMembersVerb_member() : Bundle.ClubMembersVerb_asks();
    }
}
