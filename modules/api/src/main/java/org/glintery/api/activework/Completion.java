package org.glintery.api.activework;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.time.About;

/** What is told when a piece is completed. @param score 1 to 5 */
@Stable
public record Completion(UUID piece, About on, Optional<Integer> score, String comments) {
    public Completion {
        comments = PlainText.lines(comments);
    }
}
