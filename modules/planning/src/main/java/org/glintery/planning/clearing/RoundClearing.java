package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import org.glintery.api.Preview;
import org.glintery.planning.flow.Work;

/**
 * Clears a swap round. First, most wants are met, priority by priority; among those plans one with the least postage and
 * then the fewest parcels is taken, and among those the fairest. Nobody gives more than they offer, gets what they don't
 * want, goes beyond the difference they allow between given and received, or gives for nothing who may not.
 *
 * <p>The first stage is an integer flow and so exact; it branches only where somebody would give for nothing. Fewest parcels
 * are a fixed-charge problem, which is hard: rounds of a club's size are searched to the end, large or dense ones as far as
 * patience goes, with a bound that holds in any case.
 */
@Preview(since = "1.0")
public final class RoundClearing {

    private static final double FOR_WANTS = 0.2;

    private final Round round;
    private final List<KindLines> kinds;
    private final List<Transfer> before;
    private final Work work;

    private RoundClearing(Round round, List<Transfer> before, Patience patience) {
        this.round = round;
        this.before = before;
        kinds = KindLines.of(round);
        work = new Work(patience.looks());
    }

    public static Clearing clear(Round round, Patience patience) {
        return new RoundClearing(round, List.of(), patience).clearing();
    }

    /**
     * Clears a round again in which not all is as it was. Most wants are met as in any clearing; among those plans as many
     * packets as possible go the same way as before, and these are not touched for the sake of postage.
     *
     * @param before by the traders and kinds of this round; what is no longer possible may be among it
     */
    public static Clearing clearAgain(Round round, List<Transfer> before, Patience patience) {
        return new RoundClearing(round, before, patience).clearing();
    }

    private Clearing clearing() {
        Work forWants = work.share(FOR_WANTS);
        MostWants wants = MostWants.of(round, kinds, forWants);
        work.takeBack(forWants);
        List<Sent> plan = wants.plan().plan();
        List<FaceClearing.Settled> settled = new ArrayList<>();
        for (Face face : wants.faces()) {
            FaceClearing clearing = new FaceClearing(round, kinds, face, work);
            if (before.isEmpty() && settled.isEmpty()) {
                settled.add(clearing.settle(plan));
            } else {
                clearing.settleAfter(before, plan).ifPresent(settled::add);
            }
        }
        if (settled.isEmpty()) {
            // no work was left to find what could stay
            settled.add(new FaceClearing(round, kinds, wants.faces().get(0), work).settle(plan));
        }
        return answer(wants, settled);
    }

    private Clearing answer(MostWants wants, List<FaceClearing.Settled> settled) {
        FaceClearing.Settled best = settled.stream()
                .min(Comparator.comparingInt(FaceClearing.Settled::kept)
                        .reversed()
                        .thenComparingLong(FaceClearing.Settled::postage)
                        .thenComparingLong(FaceClearing.Settled::parcels)
                        .thenComparingLong(FaceClearing.Settled::unfairness))
                .orElseThrow();
        List<FaceClearing.Settled> rivals =
                settled.stream().filter(other -> other.kept() == best.kept()).toList();
        List<FaceClearing.Settled> asCheap = rivals.stream()
                .filter(other -> other.leastPostage() <= best.postage())
                .toList();
        List<FaceClearing.Settled> asFew = asCheap.stream()
                .filter(other -> other.fewestParcels(best.postage()) <= best.parcels())
                .toList();
        return new Clearing(
                Sent.transfers(round, best.plan()),
                met(wants.plan().met()),
                wants.bound(),
                best.postage(),
                least(rivals, FaceClearing.Settled::leastPostage),
                best.parcels(),
                Math.min(best.parcels(), least(asCheap, other -> other.fewestParcels(best.postage()))),
                plainParcels(wants.plan().plan()),
                best.unfairness(),
                Math.min(best.unfairness(), least(asFew, FaceClearing.Settled::leastUnfair)),
                best.kept());
    }

    private static long least(List<FaceClearing.Settled> settled, ToLongFunction<FaceClearing.Settled> figure) {
        return settled.stream().mapToLong(figure).min().orElseThrow();
    }

    private List<Clearing.Met> met(int[] packets) {
        int[] priorities = WantsFlow.priorities(round);
        int[] wanted = new int[priorities.length];
        for (Want want : round.wants()) {
            wanted[Arrays.binarySearch(priorities, want.priority())] += want.packets();
        }
        return IntStream.range(0, priorities.length)
                .mapToObj(level -> new Clearing.Met(priorities[level], packets[level], wanted[level]))
                .toList();
    }

    private long plainParcels(List<Sent> plan) {
        return Sent.transfers(round, plan).stream()
                .map(transfer -> new Way(transfer.from(), transfer.to()))
                .distinct()
                .count();
    }
}
