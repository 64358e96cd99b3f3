package org.glintery.benchmarks.packaged;

import java.util.UUID;

/** One movement as {@code drills post} reads it: drills bought into a bag. */
public record PostedMovement(UUID id, String code, String bag, int count) {

    /** As JSON, without an end of line. */
    public String json() {
        return "{\"id\":\"" + id
                + "\",\"drill\":{\"shape\":\"square\",\"sizeMm\":2.5,\"body\":\"resin\",\"coating\":\"none\","
                + "\"card\":\"own\",\"code\":\"" + code
                + "\"},\"from\":\"supplier\",\"to\":\"bag:" + bag + "\",\"count\":" + count + ",\"reason\":\"bought\"}";
    }
}
