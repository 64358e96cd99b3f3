package org.glintery.club.verbs;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.club.Finding;
import org.glintery.club.RoomCopy;
import org.openide.util.NbBundle.Messages;

/**
 * What a look into the room answers.
 *
 * @param documents how many count now
 * @param received how many came or changed
 * @param left how many were written to the room; for a check, how many would be
 */
public record RoomAnswer(int documents, int received, int left, List<Found> findings) {

    /**
     * Something that was refused or is not as it should be.
     *
     * @param reason a word for scripts, such as {@code forged}
     */
    public record Found(String where, String reason, String text) {}

    static RoomAnswer of(RoomCopy before, RoomCopy.Seen seen, int left) {
        int received = (int) seen.copy().held().stream()
                .filter(document -> !before.held().contains(document))
                .count();
        return new RoomAnswer(
                seen.copy().documents().size(),
                received,
                left,
                seen.findings().stream().map(RoomAnswer::found).toList());
    }

    private static Found found(Finding finding) {
        return new Found(
                finding.where(), finding.fault().code(), finding.fault().words());
    }

    @Messages({
        "# {0} - documents",
        "# {1} - received",
        "# {2} - left",
        "RoomAnswer.sum=In the room: {0}. New here: {1}. New there: {2}.",
        "RoomAnswer.well=Nothing was refused.",
        "# {0} - where",
        "# {1} - what is wrong",
        "RoomAnswer.found={0}: {1}"
    })
    String text() {
        String sum = Bundle.RoomAnswer_sum(String.valueOf(documents), String.valueOf(received), String.valueOf(left));
        Stream<String> lines = findings.isEmpty()
                ? Stream.of(Bundle.RoomAnswer_well())
                : findings.stream().map(one -> Bundle.RoomAnswer_found(one.where(), one.text()));
        return Stream.concat(Stream.of(sum), lines).collect(Collectors.joining("\n"));
    }
}
