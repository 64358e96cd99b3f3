package org.glintery.activework;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;

/**
 * How much each sitting laid, where only some say so. A sitting that says how much tells how far the piece is by then, as a
 * section is told on the evening it is done: what was laid between two such states is spread over the sittings between them,
 * the telling one included, by their minutes. One without minutes counts as an average one of those that have them; where
 * none has, all count the same. The first state is an empty canvas. After the last one it is not known. Pure; any thread.
 */
final class SittingAmounts {

    private SittingAmounts() {}

    /** One for each sitting, in order; empty where it is not known. */
    static List<Optional<Double>> of(List<Sitting> oldestFirst, Function<Laid, Optional<Double>> measure) {
        List<Optional<Double>> amounts = new ArrayList<>();
        List<Sitting> since = new ArrayList<>();
        for (Sitting sitting : oldestFirst) {
            since.add(sitting);
            Optional<Double> told = measure.apply(sitting.laid()).filter(amount -> amount > 0);
            if (told.isPresent()) {
                amounts.addAll(spread(told.get(), since));
                since.clear();
            }
        }
        since.forEach(open -> amounts.add(Optional.empty()));
        return amounts;
    }

    private static List<Optional<Double>> spread(double amount, List<Sitting> sittings) {
        double average = sittings.stream()
                .mapToInt(sitting -> sitting.minutes().orElse(0))
                .filter(minutes -> minutes > 0)
                .average()
                .orElse(1);
        double[] weights = sittings.stream()
                .mapToDouble(sitting -> sitting.minutes()
                        .filter(minutes -> minutes > 0)
                        .map(Integer::doubleValue)
                        .orElse(average))
                .toArray();
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        List<Optional<Double>> shares = new ArrayList<>();
        for (double weight : weights) {
            shares.add(Optional.of(amount * weight / sum));
        }
        return shares;
    }
}
