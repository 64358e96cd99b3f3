package org.glintery.stash.posting;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;

/**
 * What is answered to one line.
 *
 * @param line its number, for a line that was refused
 * @param id of the movement, as far as it can be read
 * @param ids of a batch that was booked
 */
public record PostAnswer(
        Optional<Long> line, Optional<String> id, Optional<List<UUID>> ids, Optional<Refusal> refused) {

    static PostAnswer booked(UUID id) {
        return new PostAnswer(Optional.empty(), Optional.of(id.toString()), Optional.empty(), Optional.empty());
    }

    static PostAnswer booked(List<UUID> ids) {
        return new PostAnswer(Optional.empty(), Optional.empty(), Optional.of(ids), Optional.empty());
    }

    static PostAnswer refused(long line, Optional<String> id, Refusal refusal) {
        return new PostAnswer(Optional.of(line), id, Optional.empty(), Optional.of(refusal));
    }
}
