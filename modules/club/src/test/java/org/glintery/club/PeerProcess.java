package org.glintery.club;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.glintery.api.Json;
import org.glintery.club.signing.MemberKey;

/** A member in a process of their own: reads orders from standard input, one a line, and answers each with one line. */
final class PeerProcess {

    private PeerProcess() {}

    /** Arguments: the club, the seed of the own key, the own folder. */
    public static void main(String[] args) throws Exception {
        MemberKey key = MemberKey.ofSeed(HexFormat.of().parseHex(args[1]));
        Peer peer = new Peer(RoomCopy.empty(args[0]), key, new RoomFolder(Path.of(args[2])));
        var in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String order = in.readLine(); order != null; order = in.readLine()) {
            System.out.println(answer(peer, order.split(" ")));
            System.out.flush();
        }
    }

    private static String answer(Peer peer, String[] order) {
        switch (order[0]) {
            case "write":
                peer.write("offer", order[1], Json.EMPTY.with("words", new Json.Text(order[2])));
                return "done";
            case "roll":
                List<Json> ids =
                        Stream.of(order).skip(1).<Json>map(Json.Text::new).toList();
                peer.write("roll", "roll", Json.EMPTY.with("members", new Json.Arr(ids)));
                return "done";
            case "remove":
                peer.remove("offer", order[1]);
                return "done";
            case "sync":
                return "found " + peer.sync().size();
            default:
                return String.join(" ", peer.texts());
        }
    }
}
