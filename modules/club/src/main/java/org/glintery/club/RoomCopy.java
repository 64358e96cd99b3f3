package org.glintery.club;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.glintery.api.Json;
import org.glintery.api.PlainText;
import org.glintery.api.Preview;
import org.glintery.club.signing.MemberKey;

/**
 * What one member holds of a club's room: the newest version of each document that is truly signed by its owner. It follows
 * from the documents that were seen, not from the order in which they came. What counts is what members on the roll wrote.
 * Immutable; any thread.
 */
@Preview(since = "1.0")
public final class RoomCopy {
    /** The organiser's list of members. */
    public static final String ROLL = "roll";
    /** What a member says of themselves; it may come before they are on the roll. */
    public static final String CARD = "member";
    /** What the organiser says of a member without a computer. */
    public static final String KEPT = "kept-member";

    private final String club;
    private final Map<DocKey, SignedDocument> held;

    private RoomCopy(String club, Map<DocKey, SignedDocument> held) {
        this.club = club;
        this.held = Collections.unmodifiableMap(held);
    }

    /** @param club the member id of its organiser, whose key answers for the roll */
    public static RoomCopy empty(String club) {
        return new RoomCopy(club, new TreeMap<>());
    }

    /** A copy as it was kept; each text is judged anew, and what is none of the club's is left out. */
    public static RoomCopy of(String club, Collection<String> texts) {
        Map<DocKey, SignedDocument> held = new TreeMap<>();
        for (String text : texts) {
            Judgement.of(club, text).document().ifPresent(document -> hold(held, document));
        }
        return new RoomCopy(club, held);
    }

    private static void hold(Map<DocKey, SignedDocument> held, SignedDocument document) {
        held.merge(document.id(), document, (old, other) -> other.takesThePlaceOf(old) ? other : old);
    }

    public String club() {
        return club;
    }

    /** All that is held, tombstones and cards of those who ask to join among it. */
    public Collection<SignedDocument> held() {
        return held.values();
    }

    /** What the organiser calls the club; empty until the roll has come. */
    public Optional<String> clubName() {
        return Optional.ofNullable(held.get(new DocKey(club, ROLL, ROLL)))
                .flatMap(roll -> roll.body().text("name"))
                .map(PlainText::line)
                .filter(name -> !name.isBlank() && name.length() <= Member.LONGEST_NAME);
    }

    /** What counts now: documents of members on the roll, without tombstones. */
    public List<SignedDocument> documents() {
        Set<String> roll = roll();
        return held.values().stream()
                .filter(document ->
                        !document.removed() && roll.contains(document.id().owner()))
                .toList();
    }

    public Optional<SignedDocument> find(DocKey id) {
        return Optional.ofNullable(held.get(id)).filter(document -> !document.removed() && roll().contains(id.owner()));
    }

    /** This copy with a document written or changed by the holder of a key. */
    public RoomCopy with(MemberKey key, String kind, String name, Json.Obj body) {
        return next(key, kind, name, false, body);
    }

    /** This copy with a document of the holder of a key removed: its tombstone stays. */
    public RoomCopy without(MemberKey key, String kind, String name) {
        return next(key, kind, name, true, Json.EMPTY);
    }

    private RoomCopy next(MemberKey key, String kind, String name, boolean removed, Json.Obj body) {
        DocKey id = new DocKey(key.publicKey().memberId(), kind, name);
        long version = held.containsKey(id) ? held.get(id).version() + 1 : 1;
        Map<DocKey, SignedDocument> more = new TreeMap<>(held);
        more.put(id, SignedDocument.signed(club, id, version, removed, body, key));
        return new RoomCopy(club, more);
    }

    /**
     * What is held after a look into a room, and what was found there.
     *
     * @param toLeave documents that are held and do not lie in the room as they should
     * @param toClear where older versions or second copies of one's own documents lie
     */
    @Preview(since = "1.0")
    public record Seen(RoomCopy copy, List<Finding> findings, List<SignedDocument> toLeave, List<String> toClear) {
        public Seen {
            findings = List.copyOf(findings);
            toClear = List.copyOf(toClear);
            toLeave = List.copyOf(toLeave);
        }
    }

    /**
     * Looks at what lies in a room; changes nothing there.
     *
     * @param own the member who looks: their own documents may be new, so that nobody need have taken them away
     */
    public Seen look(Room room, List<Lying> lying, String own) {
        List<Finding> findings = new ArrayList<>();
        Map<DocKey, SignedDocument> now = new TreeMap<>(held);
        List<Found> found = new ArrayList<>();
        for (Lying one : lying) {
            one.fault().ifPresent(fault -> findings.add(new Finding(one.where(), fault)));
            one.text().map(text -> Judgement.of(club, text)).ifPresent(judged -> {
                judged.fault().ifPresent(fault -> findings.add(new Finding(one.where(), fault)));
                judged.document().ifPresent(document -> found.add(new Found(one.where(), document)));
            });
        }
        found.forEach(one -> hold(now, one.document()));
        Set<String> roll = new RoomCopy(club, now).roll();
        now.keySet().removeIf(id -> !mayBeHeld(id, roll) && !held.containsKey(id));
        Set<String> proper = new HashSet<>();
        for (Found one : found) {
            findings.addAll(judge(one, room, now, roll, proper));
        }
        for (SignedDocument document : held.values()) {
            SignedDocument newest = now.get(document.id());
            if (newest.version() == document.version() && !newest.equals(document)) {
                findings.add(new Finding(room.placeOf(document), Fault.TWO_OF_ONE));
            }
        }
        List<SignedDocument> toLeave = now.values().stream()
                .filter(document -> roll.contains(document.id().owner())
                        || document.id().owner().equals(own))
                .filter(document -> !proper.contains(room.placeOf(document)))
                .toList();
        for (SignedDocument document : toLeave) {
            if (document.equals(held.get(document.id()))
                    && !document.id().owner().equals(own)) {
                findings.add(new Finding(room.placeOf(document), Fault.MISSING));
            }
        }
        List<String> toClear = found.stream()
                .filter(one -> one.document().id().owner().equals(own))
                .filter(one -> now.containsKey(one.document().id()))
                .filter(one ->
                        !one.where().equals(room.placeOf(now.get(one.document().id()))))
                .map(Found::where)
                .toList();
        return new Seen(new RoomCopy(club, now), findings, toLeave, toClear);
    }

    private record Found(String where, SignedDocument document) {}

    private static List<Finding> judge(
            Found one, Room room, Map<DocKey, SignedDocument> now, Set<String> roll, Set<String> proper) {
        SignedDocument document = one.document();
        SignedDocument newest = now.get(document.id());
        if (!mayBeHeld(document.id(), roll)) {
            return List.of(new Finding(one.where(), Fault.FOREIGN_SIGNED));
        }
        boolean wellNamed = one.where().equals(room.placeOf(document));
        if (wellNamed) {
            proper.add(one.where());
        }
        if (newest.version() > document.version()) {
            return List.of(new Finding(one.where(), Fault.REPLAYED));
        }
        if (!newest.equals(document)) {
            return List.of(new Finding(one.where(), Fault.TWO_OF_ONE));
        }
        return wellNamed ? List.of() : List.of(new Finding(one.where(), Fault.RENAMED));
    }

    private static boolean mayBeHeld(DocKey id, Set<String> roll) {
        return roll.contains(id.owner()) || id.kind().equals(CARD);
    }

    /** Everybody who is on the roll or asks to be, the roll first, each part by name. */
    public List<Member> members() {
        Set<String> roll = roll();
        return held.values().stream()
                .filter(document -> !document.removed())
                .flatMap(document -> member(document, roll).stream())
                .sorted(Comparator.comparing((Member member) -> !member.admitted())
                        .thenComparing(Member::name)
                        .thenComparing(Member::id))
                .toList();
    }

    private Optional<Member> member(SignedDocument document, Set<String> roll) {
        String owner = document.id().owner();
        String name = PlainText.line(document.body().text("name").orElse(""));
        boolean named = !name.isBlank() && name.length() <= Member.LONGEST_NAME;
        if (named && document.id().kind().equals(CARD) && document.id().name().equals(CARD)) {
            return Optional.of(new Member(owner, name, Optional.empty(), roll.contains(owner)));
        }
        return named && document.id().kind().equals(KEPT) && owner.equals(club)
                ? Optional.of(new Member(document.id().name(), name, Optional.of(owner), true))
                : Optional.empty();
    }

    /** The ids on the roll; the organiser is always on it. */
    public Set<String> roll() {
        Set<String> ids = new HashSet<>(Set.of(club));
        SignedDocument roll = held.get(new DocKey(club, ROLL, ROLL));
        if (roll != null && roll.body().get("members").orElse(Json.NULL) instanceof Json.Arr list) {
            list.items().forEach(item -> {
                if (item instanceof Json.Text id) {
                    ids.add(id.value());
                }
            });
        }
        return ids;
    }
}
