package org.glintery.club.swaps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Balance;
import org.glintery.planning.clearing.Offer;
import org.glintery.planning.clearing.Round;
import org.glintery.planning.clearing.Trader;
import org.glintery.planning.clearing.Want;
import org.openide.util.NbBundle.Messages;

/** Reads a swap round from its file; {@code round.schema.json} beside this class says what it may hold. */
final class RoundFile {

    private static final int MOST_MEMBERS = 2_000;
    private static final int MOST_LINES = 200_000;
    private static final int MOST_KINDS_OF_A_WANT = 1_000;
    private static final int MOST_PACKETS = 10_000;
    private static final int MOST_DIFFERENCE = 1_000_000;
    private static final int LAST_PRIORITY = 1_000;
    private static final int MOST_PERCENT = 100;

    private final Map<String, Integer> members = new LinkedHashMap<>();
    private final Map<String, Integer> kinds = new LinkedHashMap<>();
    private final List<Trader> traders = new ArrayList<>();
    private final List<Offer> offers = new ArrayList<>();
    private final List<Want> wants = new ArrayList<>();
    private boolean kindsAreListed;
    private long lines;

    private RoundFile() {}

    /** @throws MalformedException when it is no round; the message names the place and is fit to be shown */
    static NamedRound read(Json file) {
        return new RoundFile().round(FilePlace.whole(file));
    }

    @Messages({
        "# {0} - how many",
        "# {1} - the most",
        "RoundFile.manyMembers=The round has {0} members. At most {1} can be cleared at once.",
        "# {0} - the most",
        "RoundFile.manyLines=The round has too many offers and wants. At most {0} can be cleared at once.",
        "# {0} - path",
        "# {1} - name",
        "RoundFile.twice={0}: there is already a member called ''{1}''. Each member needs a name of their own.",
        "# {0} - path",
        "# {1} - name",
        "RoundFile.unknownKind={0}: ''{1}'' is not among the kinds that the file lists.",
        "# {0} - path",
        "# {1} - how many",
        "# {2} - the most",
        "RoundFile.manyKinds={0} names {1} kinds; a want takes at most {2}, and at least one.",
        "# {0} - path",
        "RoundFile.twoTolerances={0} gives a tolerance in packets and in percent. Say only one of them.",
        "# {0} - path",
        "RoundFile.kindTwice={0} is listed twice.",
        "RoundFile.tooMuch=The round has more packets in all than can be cleared at once."
    })
    private NamedRound round(FilePlace file) {
        file.field("packet").ifPresent(packet -> packet.whole(1, MOST_DIFFERENCE));
        for (FilePlace kind : file.items("kinds")) {
            if (kinds.put(kind.text(), kinds.size()) != null) {
                throw new MalformedException(Bundle.RoundFile_kindTwice(kind.shown()));
            }
        }
        kindsAreListed = file.field("kinds").isPresent();
        List<FilePlace> all = file.need("members").items();
        if (all.size() > MOST_MEMBERS) {
            throw new MalformedException(
                    Bundle.RoundFile_manyMembers(Balance.grouped(all.size()), Balance.grouped(MOST_MEMBERS)));
        }
        all.forEach(this::name);
        all.forEach(this::member);
        PostageFile postage = PostageFile.read(file.field("postage"), members);
        try {
            return new NamedRound(
                    new Round(traders, offers, wants, postage.postage()),
                    List.copyOf(members.keySet()),
                    List.copyOf(kinds.keySet()),
                    postage.unit());
        } catch (IllegalArgumentException e) {
            // each line was looked at: only their sum is left
            throw new MalformedException(Bundle.RoundFile_tooMuch(), e);
        }
    }

    private void name(FilePlace member) {
        FilePlace id = member.need("id");
        if (members.putIfAbsent(id.text(), members.size()) != null) {
            throw new MalformedException(Bundle.RoundFile_twice(id.shown(), id.text()));
        }
    }

    private void member(FilePlace member) {
        int trader = traders.size();
        Map<Integer, Integer> packets = new TreeMap<>();
        for (FilePlace offer : member.items("offers")) {
            countLine();
            int kind = kind(offer.need("kind"));
            packets.merge(kind, offer.need("packets").whole(0, MOST_PACKETS), Integer::sum);
        }
        packets.forEach((kind, count) -> offers.add(new Offer(trader, kind, count)));
        member.items("wants").forEach(want -> want(trader, want));
        traders.add(trader(
                member, packets.values().stream().mapToInt(Integer::intValue).sum()));
    }

    private void want(int trader, FilePlace want) {
        countLine();
        FilePlace any = want.need("anyOf");
        Set<Integer> serve = new TreeSet<>();
        any.items().forEach(kind -> serve.add(kind(kind)));
        if (serve.isEmpty() || serve.size() > MOST_KINDS_OF_A_WANT) {
            throw new MalformedException(Bundle.RoundFile_manyKinds(
                    any.shown(), Balance.grouped(serve.size()), Balance.grouped(MOST_KINDS_OF_A_WANT)));
        }
        int packets = want.need("packets").whole(0, MOST_PACKETS);
        int priority = want.field("priority")
                .map(place -> place.whole(1, LAST_PRIORITY))
                .orElse(1);
        wants.add(new Want(trader, List.copyOf(serve), packets, priority));
    }

    private Trader trader(FilePlace member, int offered) {
        var packets = member.field("tolerancePackets").map(place -> place.whole(0, MOST_DIFFERENCE));
        var percent = member.field("tolerancePercent")
                .map(place -> place.number(BigDecimal.ZERO, BigDecimal.valueOf(MOST_PERCENT)));
        if (packets.isPresent() && percent.isPresent()) {
            throw new MalformedException(Bundle.RoundFile_twoTolerances(member.shown()));
        }
        int tolerance = packets.orElseGet(() -> percent.map(share -> share.multiply(BigDecimal.valueOf(offered))
                        .movePointLeft(2)
                        .intValue())
                .orElse(0));
        boolean generous = member.field("generous").map(FilePlace::flag).orElse(false);
        return generous ? Trader.generous(tolerance) : Trader.within(tolerance);
    }

    private int kind(FilePlace place) {
        String name = place.text();
        if (kindsAreListed && !kinds.containsKey(name)) {
            throw new MalformedException(Bundle.RoundFile_unknownKind(place.shown(), name));
        }
        return kinds.computeIfAbsent(name, kind -> kinds.size());
    }

    private void countLine() {
        if (++lines > MOST_LINES) {
            throw new MalformedException(Bundle.RoundFile_manyLines(Balance.grouped(MOST_LINES)));
        }
    }
}
