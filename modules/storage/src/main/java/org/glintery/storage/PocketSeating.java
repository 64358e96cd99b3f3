package org.glintery.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Deals pockets out in order: one for every heap, further ones only where one is too small and as long as each later
 * heap can still have its own.
 */
final class PocketSeating {

    /** What one pocket takes of a heap. @param pocket its place among the pockets */
    record Share(int pocket, long drills) {}

    /** Where a heap goes. @param over what found no pocket; the whole heap when there are no shares */
    record Seated(List<Share> shares, long over) {}

    private PocketSeating() {}

    /**
     * @param heaps drills in each heap, at least 1
     * @param capacities drills that each pocket takes; empty when that is not known, and then any heap fits
     * @return one for each heap, in order
     */
    static List<Seated> seat(List<Long> heaps, List<Optional<Long>> capacities) {
        List<Seated> seated = new ArrayList<>();
        int next = 0;
        for (int heap = 0; heap < heaps.size(); heap++) {
            int later = heaps.size() - heap - 1;
            long left = heaps.get(heap);
            List<Share> shares = new ArrayList<>();
            while (left > 0 && next < capacities.size() && (shares.isEmpty() || capacities.size() - next > later)) {
                long taken = Math.min(left, capacities.get(next).orElse(Long.MAX_VALUE));
                shares.add(new Share(next, taken));
                left -= taken;
                next++;
            }
            seated.add(new Seated(List.copyOf(shares), left));
        }
        return seated;
    }
}
