package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tries every plan of a tiny round, for comparison: slow, plain, and without anything of what it is compared with. */
final class EveryPlan {

    private final Round round;
    private final List<int[]> meetings = new ArrayList<>();
    private final int[] packets;
    private final int[] offerLeft;
    private final int[] wantLeft;
    private Outcome best;
    private List<Transfer> before = List.of();
    private int kept;

    /**
     * What a plan comes to; less is better from left to right.
     *
     * @param met packets by priority, the first first; more is better
     */
    record Outcome(List<Integer> met, long postage, long parcels, long unfairness) {

        boolean isBetterThan(Outcome other) {
            if (!met.equals(other.met)) {
                return compare(met, other.met) > 0;
            }
            if (postage != other.postage) {
                return postage < other.postage;
            }
            return parcels != other.parcels ? parcels < other.parcels : unfairness < other.unfairness;
        }
    }

    private EveryPlan(Round round) {
        this.round = round;
        for (int i = 0; i < round.offers().size(); i++) {
            for (int j = 0; j < round.wants().size(); j++) {
                Offer offer = round.offers().get(i);
                Want want = round.wants().get(j);
                if (offer.trader() != want.trader() && want.kinds().contains(offer.kind())) {
                    meetings.add(new int[] {i, j});
                }
            }
        }
        packets = new int[meetings.size()];
        offerLeft = round.offers().stream().mapToInt(Offer::packets).toArray();
        wantLeft = round.wants().stream().mapToInt(Want::packets).toArray();
    }

    static int meetings(Round round) {
        return new EveryPlan(round).meetings.size();
    }

    static Outcome best(Round round) {
        EveryPlan every = new EveryPlan(round);
        every.fill(0);
        return every.best;
    }

    /** The most packets of an earlier clearing that can go the same way in a plan which meets most wants. */
    static int mostKept(Round round, List<Transfer> before) {
        EveryPlan every = new EveryPlan(round);
        every.before = before;
        every.fill(0);
        return every.kept;
    }

    private void fill(int meeting) {
        if (meeting == packets.length) {
            judge();
            return;
        }
        int[] ends = meetings.get(meeting);
        int most = Math.min(offerLeft[ends[0]], wantLeft[ends[1]]);
        for (int count = 0; count <= most; count++) {
            packets[meeting] = count;
            offerLeft[ends[0]] -= count;
            wantLeft[ends[1]] -= count;
            fill(meeting + 1);
            offerLeft[ends[0]] += count;
            wantLeft[ends[1]] += count;
        }
        packets[meeting] = 0;
    }

    private void judge() {
        int[] given = new int[round.traders().size()];
        int[] got = new int[given.length];
        int[] priorities = round.wants().stream()
                .mapToInt(Want::priority)
                .distinct()
                .sorted()
                .toArray();
        Integer[] met = new Integer[priorities.length];
        Arrays.fill(met, 0);
        Set<Way> ways = new HashSet<>();
        for (int m = 0; m < packets.length; m++) {
            if (packets[m] > 0) {
                Offer offer = round.offers().get(meetings.get(m)[0]);
                Want want = round.wants().get(meetings.get(m)[1]);
                given[offer.trader()] += packets[m];
                got[want.trader()] += packets[m];
                met[Arrays.binarySearch(priorities, want.priority())] += packets[m];
                ways.add(new Way(offer.trader(), want.trader()));
            }
        }
        long unfairness = 0;
        for (int t = 0; t < given.length; t++) {
            Trader trader = round.traders().get(t);
            int more = given[t] - got[t];
            boolean forNothing = given[t] > 0 && got[t] == 0 && !trader.mayGiveForNothing();
            if (more > trader.mayGiveMore() || -more > trader.mayGetMore() || forNothing) {
                return;
            }
            unfairness += more > 0 && trader.mayGiveForNothing() ? 0 : (long) more * more;
        }
        keep(List.of(met));
        send(List.of(met), List.copyOf(ways), unfairness);
    }

    private void keep(List<Integer> met) {
        Map<List<Integer>, Integer> now = new HashMap<>();
        for (int m = 0; m < packets.length; m++) {
            Offer offer = round.offers().get(meetings.get(m)[0]);
            int to = round.wants().get(meetings.get(m)[1]).trader();
            now.merge(List.of(offer.trader(), to, offer.kind()), packets[m], Integer::sum);
        }
        Map<List<Integer>, Integer> then = new HashMap<>();
        before.forEach(was -> then.merge(List.of(was.from(), was.to(), was.kind()), was.packets(), Integer::sum));
        int same = then.entrySet().stream()
                .mapToInt(was -> Math.min(was.getValue(), now.getOrDefault(was.getKey(), 0)))
                .sum();
        int order = best == null ? 1 : compare(met, best.met);
        kept = order > 0 ? same : order == 0 ? Math.max(kept, same) : kept;
    }

    private static int compare(List<Integer> met, List<Integer> other) {
        for (int level = 0; level < met.size(); level++) {
            if (!met.get(level).equals(other.get(level))) {
                return met.get(level) - other.get(level);
            }
        }
        return 0;
    }

    /** Every way straight or through the organiser. */
    private void send(List<Integer> met, List<Way> ways, long unfairness) {
        int choices = round.postage().organiser().isPresent() ? 1 << ways.size() : 1;
        for (int choice = 0; choice < choices; choice++) {
            Set<Way> parcels = new HashSet<>();
            for (int w = 0; w < ways.size(); w++) {
                Way way = ways.get(w);
                int organiser = round.postage().organiser().orElse(-1);
                if ((choice >> w & 1) == 1 && way.from() != organiser && way.to() != organiser) {
                    parcels.add(new Way(way.from(), organiser));
                    parcels.add(new Way(organiser, way.to()));
                } else {
                    parcels.add(way);
                }
            }
            long postage = parcels.stream().mapToLong(round.postage()::of).sum();
            Outcome outcome = new Outcome(met, postage, parcels.size(), unfairness);
            if (best == null || outcome.isBetterThan(best)) {
                best = outcome;
            }
        }
    }
}
