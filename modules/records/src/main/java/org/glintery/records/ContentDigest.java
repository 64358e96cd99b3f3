package org.glintery.records;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;

/** SHA-256 over what a state holds, in an order that does not depend on its history. */
final class ContentDigest {
    private final MessageDigest digest = PackedBody.sha256();

    static String of(State state, Names names) {
        var content = new ContentDigest();
        state.documents().byKey().forEach(document -> {
            content.text(document.ref().toString());
            content.number(document.typeVersion());
            content.bytes(PackedBody.unpack(document.packed()));
        });
        content.text("balances");
        content.balances(state.balances(), names);
        content.text("blobs");
        new TreeMap<>(state.blobs()).forEach((hash, blob) -> {
            content.text(hash);
            content.text(blob.mediaType());
        });
        return HexFormat.of().formatHex(content.digest.digest());
    }

    private void balances(BalanceMap balances, Names names) {
        Map<String, Map<String, Balance>> sorted = new TreeMap<>();
        balances.spots().forEach(spot -> {
            Spot where = names.spots().value(spot);
            if (!where.isBoundary()) {
                var drills = new TreeMap<String, Balance>();
                balances.in(spot)
                        .forEach((drill, balance) ->
                                drills.put(names.drills().value(drill).toString(), balance));
                sorted.put(where.toString(), drills);
            }
        });
        sorted.forEach((spot, row) -> {
            text(spot);
            row.forEach((drill, balance) -> {
                text(drill);
                number(balance.count());
                number(balance.variance());
                number(balance.uncounted());
            });
        });
    }

    private void text(String text) {
        bytes(text.getBytes(StandardCharsets.UTF_8));
    }

    /** With its length first, so that no two sequences read alike. */
    private void bytes(byte[] bytes) {
        number(bytes.length);
        digest.update(bytes);
    }

    private void number(long number) {
        digest.update(ByteBuffer.allocate(Long.BYTES).putLong(number).array());
    }
}
