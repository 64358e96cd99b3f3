package org.glintery.club.swaps;

import java.util.ArrayList;
import java.util.List;
import org.glintery.api.Json;
import org.glintery.planning.clearing.Transfer;

/** The transfers of an earlier answer of {@code swap clear}, as far as they are between members of this round. */
final class EarlierPlan {

    private static final int MOST_PACKETS = 10_000_000;

    private EarlierPlan() {}

    /** @throws org.glintery.api.MalformedException when it is no such answer */
    static List<Transfer> read(Json file, NamedRound named) {
        List<Transfer> transfers = new ArrayList<>();
        for (FilePlace line : FilePlace.whole(file).need("transfers").items()) {
            int from = named.members().indexOf(line.need("from").text());
            int to = named.members().indexOf(line.need("to").text());
            int kind = named.kinds().indexOf(line.need("kind").text());
            int packets = line.need("packets").whole(1, MOST_PACKETS);
            boolean through = line.field("through")
                    .map(FilePlace::text)
                    .map(named.members()::indexOf)
                    .filter(organiser -> named.organiser().isPresent()
                            && named.organiser().getAsInt() == organiser
                            && organiser != from
                            && organiser != to)
                    .isPresent();
            if (from >= 0 && to >= 0 && kind >= 0) {
                transfers.add(new Transfer(from, to, kind, packets, through));
            }
        }
        return transfers;
    }
}
