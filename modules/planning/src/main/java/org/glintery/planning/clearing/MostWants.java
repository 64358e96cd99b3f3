package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.glintery.planning.flow.Work;

/**
 * First stage of a clearing: most wants met, priority by priority, with nobody giving for nothing who may not. That last
 * condition is no flow. Where the best flow breaks it, another as good is tried for; only when there is none the search
 * branches: a trader gives nothing, or gets something. Best branches first, so the first good plan is an optimum.
 *
 * @param plan a best plan found, priority by priority
 * @param bound no plan meets wants with more packets in all without meeting fewer of a higher priority
 * @param faces all best plans are on one of these; that of the plan first
 */
record MostWants(WantsFlow plan, int bound, List<Face> faces) {

    private static final Comparator<WantsFlow> BEST_FIRST = (a, b) -> Arrays.compare(b.met(), a.met());

    static MostWants of(Round round, List<KindLines> kinds, Work work) {
        return new Search(round, kinds, work).run();
    }

    /** The branches that are open, and the best plan so far. */
    private static final class Search {
        private final Round round;
        private final List<KindLines> kinds;
        private final Work work;
        private final PriorityQueue<WantsFlow> open = new PriorityQueue<>(BEST_FIRST);
        private WantsFlow best;

        Search(Round round, List<KindLines> kinds, Work work) {
            this.round = round;
            this.kinds = kinds;
            this.work = work;
        }

        MostWants run() {
            WantsFlow root = WantsFlow.solve(round, kinds, Hopeless.parts(round, kinds), work)
                    .orElseThrow();
            best = repaired(root, Part.GIVES_NOTHING).orElseThrow();
            if (isBetter(root)) {
                repaired(root, Part.GETS_SOMETHING).filter(this::isBetter).ifPresent(flow -> best = flow);
            }
            if (!isBetter(root)) {
                return new MostWants(best, IntStream.of(best.met()).sum(), List.of(root.face()));
            }
            open.add(root);
            while (!open.isEmpty() && isBetter(open.peek()) && !work.isSpent()) {
                WantsFlow next = open.remove();
                if (next.wronged().length == 0) {
                    best = next;
                } else {
                    branch(next);
                }
            }
            if (!open.isEmpty() && isBetter(open.peek())) {
                return new MostWants(best, mostInAll(), List.of(best.face()));
            }
            return new MostWants(best, IntStream.of(best.met()).sum(), bestFaces());
        }

        /** Faces that overlap are no harm. */
        private List<Face> bestFaces() {
            List<Face> faces = new ArrayList<>(List.of(best.face()));
            open.stream()
                    .filter(flow -> Arrays.equals(flow.met(), best.met()))
                    .map(WantsFlow::face)
                    .forEach(faces::add);
            return faces;
        }

        private boolean isBetter(WantsFlow flow) {
            return BEST_FIRST.compare(flow, best) < 0;
        }

        /** Gives all who are wronged the same part until nobody is. */
        private Optional<WantsFlow> repaired(WantsFlow from, Part part) {
            Optional<WantsFlow> flow = Optional.of(from);
            while (flow.isPresent() && flow.get().wronged().length > 0) {
                flow = with(flow.get(), part, flow.get().wronged());
            }
            return flow;
        }

        private void branch(WantsFlow flow) {
            int wronged = flow.wronged()[0];
            with(flow, Part.GETS_SOMETHING, wronged).ifPresent(open::add);
            with(flow, Part.GIVES_NOTHING, wronged).ifPresent(open::add);
        }

        private Optional<WantsFlow> with(WantsFlow flow, Part part, int... traders) {
            Part[] parts = flow.parts().clone();
            for (int trader : traders) {
                parts[trader] = part;
            }
            return WantsFlow.solve(round, kinds, parts, work);
        }

        /** Without priorities and without the condition. */
        private int mostInAll() {
            List<Want> equal = round.wants().stream()
                    .map(want -> new Want(want.trader(), want.kinds(), want.packets(), 0))
                    .toList();
            Round relaxed = new Round(round.traders(), round.offers(), equal, round.postage());
            return WantsFlow.solve(relaxed, kinds, Hopeless.parts(round, kinds), work)
                    .orElseThrow()
                    .met()[0];
        }
    }
}
