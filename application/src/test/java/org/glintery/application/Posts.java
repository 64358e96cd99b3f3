package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Lines for {@code drills post -}, and the process that reads them. */
final class Posts {

    private Posts() {}

    /** One movement from the supplier into a bag. */
    static String line(UUID id, int count) {
        return ("{\"id\":\"%s\",\"drill\":{\"shape\":\"round\",\"sizeMm\":2.8,\"body\":\"resin\",\"coating\":\"none\","
                        + "\"card\":\"own\",\"code\":\"T1\"},\"from\":\"supplier\",\"to\":\"bag:b1\",\"count\":%d,"
                        + "\"reason\":\"bought\"}\n")
                .formatted(id, count);
    }

    static String lines(int most) {
        return IntStream.range(0, most)
                .mapToObj(i -> line(UUID.randomUUID(), 1 + i))
                .collect(Collectors.joining());
    }

    /** The Java process that a launcher script has started: the one that does the work. */
    static ProcessHandle java(Process launcher) {
        var found = launcher.descendants()
                .filter(handle ->
                        handle.info().command().filter(c -> c.endsWith("java")).isPresent())
                .toList();
        assertThat(found).as("java processes of the launcher").hasSize(1);
        return found.get(0);
    }
}
