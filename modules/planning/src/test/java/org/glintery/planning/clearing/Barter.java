package org.glintery.planning.clearing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Barter as in PrefLib data set 00036 (Dickerson, Procaccia and Sandholm 2012): a trader a pair, each with one packet, each
 * wanting one of the packets that an edge leads to. Optima without a bound on the length of cycles were computed apart.
 */
final class Barter {

    private Barter() {}

    /** The instances' names with the most packets that can move. */
    static Map<String, Integer> optima() {
        Map<String, Integer> optima = new TreeMap<>();
        lines("optima.csv").stream()
                .skip(1)
                .map(line -> line.split(","))
                .forEach(parts -> optima.put(parts[0], Integer.parseInt(parts[5])));
        return optima;
    }

    static Round round(String instance) {
        int pairs = 0;
        List<int[]> edges = new ArrayList<>();
        for (String line : lines(instance + ".txt")) {
            if (line.startsWith("# NUMBER ALTERNATIVES:")) {
                pairs = Integer.parseInt(line.substring(line.indexOf(':') + 2));
            } else if (!line.startsWith("#")) {
                String[] parts = line.split(",");
                edges.add(new int[] {Integer.parseInt(parts[0]) - 1, Integer.parseInt(parts[1]) - 1});
            }
        }
        List<Trader> traders = new ArrayList<>();
        List<Offer> offers = new ArrayList<>();
        List<Want> wants = new ArrayList<>();
        for (int pair = 0; pair < pairs; pair++) {
            int to = pair;
            traders.add(Trader.within(0));
            offers.add(new Offer(pair, pair, 1));
            wants.add(new Want(
                    pair,
                    edges.stream()
                            .filter(edge -> edge[1] == to)
                            .map(edge -> edge[0])
                            .toList(),
                    1,
                    1));
        }
        return new Round(traders, offers, wants, Postage.flat(250));
    }

    private static List<String> lines(String file) {
        try (InputStream in = Barter.class.getResourceAsStream("barter/" + file);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
