package org.glintery.planning.clearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A round run again when somebody has dropped out. */
class DropoutTest {

    private static final long SEED = 77;

    @Test
    void leavesAloneWhomItDoesNotConcern() {
        // Two circles of three. Without 1 the first is broken; the second can be closed either way round, at the same
        // cost.
        Round round = circles();
        List<Transfer> broken = circle(0, 10);
        for (List<Transfer> stays : List.of(circle(3, 10), reversed(circle(3, 10)))) {
            Round without = withoutLines(round, 1);
            List<Transfer> before = new ArrayList<>(broken);
            before.addAll(stays);
            Clearing clearing = RoundClearing.clearAgain(without, before, Patience.SHORT);
            assertThat(PlanCheck.complaints(without, clearing)).isEmpty();
            assertThat(clearing.transfers()).containsExactlyInAnyOrderElementsOf(stays);
            assertThat(clearing.kept()).isEqualTo(3);
        }
    }

    /** In the first circle each wants what the one before has; in the second what either has. */
    private static Round circles() {
        List<Offer> offers = new ArrayList<>();
        List<Want> wants = new ArrayList<>();
        for (int t = 0; t < 6; t++) {
            int first = t / 3 * 3;
            int before = 10 + first + (t + 2) % 3;
            int behind = 10 + first + (t + 1) % 3;
            offers.add(new Offer(t, 10 + t, 1));
            wants.add(new Want(t, t < 3 ? List.of(before) : List.of(before, behind), 1, 1));
        }
        return new Round(Collections.nCopies(6, Trader.within(0)), offers, wants, Postage.flat(250));
    }

    private static List<Transfer> circle(int first, int kinds) {
        return IntStream.range(0, 3)
                .mapToObj(i -> new Transfer(first + i, first + (i + 1) % 3, kinds + first + i, 1, false))
                .toList();
    }

    private static List<Transfer> reversed(List<Transfer> circle) {
        return circle.stream()
                .map(transfer -> new Transfer(transfer.to(), transfer.from(), 10 + transfer.to(), 1, false))
                .toList();
    }

    @Test
    void keepsAsManyPacketsOnTheirWayAsTryingEveryPlanFinds() {
        Random random = new Random(SEED);
        int kept = 0;
        int changed = 0;
        for (int i = 0; i < 200; i++) {
            Round all = TinyRounds.next(random);
            List<Transfer> before = RoundClearing.clear(all, Patience.SHORT).transfers();
            Round left = withoutLines(all, random.nextInt(all.traders().size()));
            Clearing clearing = RoundClearing.clearAgain(left, before, Patience.SHORT);
            String which = "seed " + SEED + " round " + i + ": " + left + " after " + before;
            assertThat(PlanCheck.complaints(left, clearing)).as(which).isEmpty();
            assertThat(kept(before, clearing.transfers())).as(which).isEqualTo(clearing.kept());
            assertThat(clearing.kept()).as(which).isEqualTo(EveryPlan.mostKept(left, before));
            kept += clearing.kept();
            changed += clearing.wantsMet() - clearing.kept();
        }
        assertThat(kept).as("packets kept").isGreaterThan(50);
        assertThat(changed).as("packets that go another way").isPositive();
    }

    @Test
    void clearsTheRoundAnyway_whenThereIsNoPatienceToKeepAnything() {
        Round round = InventedRounds.sparse().round(1);
        List<Transfer> before = RoundClearing.clear(round, new Patience(0)).transfers();
        Clearing again = RoundClearing.clearAgain(round, before, new Patience(0));
        assertThat(PlanCheck.complaints(round, again)).isEmpty();
        assertThat(again.wantsProven()).isTrue();
    }

    private static int kept(List<Transfer> before, List<Transfer> after) {
        return after.stream()
                .mapToInt(now ->
                        Math.min(packets(after, now), packets(before, now)) * now.packets() / packets(after, now))
                .sum();
    }

    private static int packets(List<Transfer> transfers, Transfer like) {
        return transfers.stream()
                .filter(other -> other.from() == like.from() && other.to() == like.to() && other.kind() == like.kind())
                .mapToInt(Transfer::packets)
                .sum();
    }

    private static Round withoutLines(Round round, int... dropouts) {
        return new Round(
                round.traders(),
                round.offers().stream()
                        .filter(offer -> Arrays.stream(dropouts).noneMatch(t -> t == offer.trader()))
                        .toList(),
                round.wants().stream()
                        .filter(want -> Arrays.stream(dropouts).noneMatch(t -> t == want.trader()))
                        .toList(),
                round.postage());
    }
}
