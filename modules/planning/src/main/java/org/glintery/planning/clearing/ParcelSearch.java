package org.glintery.planning.clearing;

import java.util.Optional;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.Work;

/**
 * Exact search over links by branch and cut: a link is either closed or paid for. Branches whose bound is no better than
 * the best plan known are cut off; the rest is searched until the work is spent.
 *
 * <p>Not safe for use by several threads.
 */
final class ParcelSearch {

    private static final int ROOT_ROUNDS = 30;
    private static final int ROUNDS = 2;
    private static final int GUIDED_EVERY = 5;
    private static final int PASSES = 6;
    private static final int PLANS_AT_ROOT = 6;
    private static final double WHOLE = 1e-6;

    private final ParcelNetwork net;
    private final GivingRule rule;
    private final Aim aim;
    private final Work work;
    private final LinkStates states;
    private final ParcelProgram program;
    private final GuidedPlans guided;
    private final PseudoCosts experience;
    private long leftOpen = Long.MAX_VALUE;
    private long nodes;

    /**
     * @param start any plan of the network
     * @param limit what a plan may cost when the aim is something else
     */
    ParcelSearch(
            ParcelNetwork net,
            Bounds ranges,
            GivingRule rule,
            int[] start,
            Aim aim,
            Optional<ParcelProgram.Limit> limit,
            Work work) {
        this.net = net;
        this.rule = rule;
        this.aim = aim;
        this.work = work;
        states = new LinkStates(net, ranges, rule, start, work);
        states.openNeeded();
        program = new ParcelProgram(net, ranges, states.all(), limit, work);
        guided = new GuidedPlans(net, ranges, rule, work);
        experience = new PseudoCosts(net.ways().size());
    }

    /** @return no plan costs less than this, or than {@link Aim#goal} if that is less */
    long run() {
        node(Long.MIN_VALUE, rise -> {});
        return leftOpen;
    }

    /** Hears of the bound of a branch, before it was rounded up. */
    private interface Level {
        void reached(double level);
    }

    private void node(long inherited, Level reached) {
        nodes++;
        boolean root = nodes == 1;
        long least = inherited;
        int before;
        do {
            before = states.decided();
            states.openNeeded();
            consider();
            program.decide(states);
            least = Math.max(least, program.improve(aim.goal(), root ? ROOT_ROUNDS : ROUNDS));
            reached.reached(program.level());
            if (least >= aim.goal()) {
                return;
            }
            if (work.isSpent()) {
                leftOpen = Math.min(leftOpen, least);
                return;
            }
            if (root || nodes % GUIDED_EVERY == 0) {
                lookAround(root ? PLANS_AT_ROOT : 1);
            }
            if (!decideByPrice()) {
                return;
            }
        } while (states.decided() > before);
        int link = mostPromising();
        if (link >= 0) {
            branch(link, least);
        } else {
            wholeLinks(least);
        }
    }

    private void consider() {
        aim.consider(states.residual().flows());
    }

    /** Makes plans along the links that the program uses. */
    private void lookAround(int plans) {
        for (int i = 0; i < plans; i++) {
            guided.plan(this::usage, i == 0 ? 0 : 1).ifPresent(flow -> {
                ParcelDescent descent = new ParcelDescent(net, states.bounds(), rule, flow, nodes, work);
                descent.run(PASSES);
                aim.consider(descent.flow());
            });
        }
    }

    private double usage(int link) {
        return states.isFree(link) ? program.usage(link) : states.all()[link] == LinkStates.OPEN ? 1 : -1;
    }

    /** Decides links that would cost too much the other way. @return whether anything is left */
    private boolean decideByPrice() {
        for (int l = 0; l < net.ways().size(); l++) {
            if (states.isFree(l) && program.otherwise(l) >= aim.goal()) {
                if (program.wants(l)) {
                    states.open(l);
                } else if (!states.close(l)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A free link that is used in part; -1 when all are used or not. */
    private int mostPromising() {
        int best = -1;
        double most = 0;
        for (int l = 0; l < net.ways().size(); l++) {
            if (states.isFree(l)) {
                double usage = program.usage(l);
                double promise = usage < WHOLE || usage > 1 - WHOLE ? 0 : experience.promise(l, usage);
                if (promise > most) {
                    most = promise;
                    best = l;
                }
            }
        }
        return best;
    }

    /** The program uses whole links only: looks at that plan, then goes on where there may be others. */
    private void wholeLinks(long least) {
        LinkStates.Mark mark = states.mark();
        boolean possible = true;
        int link = -1;
        for (int l = 0; l < net.ways().size() && possible; l++) {
            if (states.isFree(l)) {
                boolean used = program.usage(l) > 0.5;
                link = used || link < 0 ? l : link;
                possible = used || states.close(l);
            }
        }
        int wronged = GivingRule.NOBODY;
        if (possible) {
            consider();
            wronged = rule.brokenFor(states.residual()::flow);
        }
        states.back(mark);
        if (least >= aim.goal()) {
            return;
        }
        if (wronged >= 0) {
            branchOnTrader(wronged, least);
        } else if (link >= 0) {
            branch(link, least);
        }
    }

    private void branch(int link, long least) {
        double usage = program.usage(link);
        double level = program.level();
        int first = usage > 0.5 ? 1 : 0;
        for (int side : new int[] {first, 1 - first}) {
            LinkStates.Mark mark = states.mark();
            if (decide(link, side)) {
                double change = side == 1 ? 1 - usage : usage;
                node(least, reached -> experience.learn(link, side, change, reached - level));
            }
            states.back(mark);
        }
    }

    private boolean decide(int link, int side) {
        if (side == 1) {
            states.open(link);
            return true;
        }
        return states.close(link);
    }

    private void branchOnTrader(int trader, long least) {
        Bounds before = states.bounds().copy();
        for (boolean gets : new boolean[] {true, false}) {
            LinkStates.Mark mark = states.mark();
            if (gets ? states.getSomething(trader) : states.giveNothing(trader)) {
                node(least, reached -> {});
            }
            states.back(mark);
            states.restore(before);
        }
    }
}
