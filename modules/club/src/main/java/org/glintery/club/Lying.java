package org.glintery.club;

import java.util.Optional;
import org.glintery.api.Preview;

/**
 * One thing that lies in a room, not judged yet.
 *
 * @param where its name there
 * @param text at most {@link SignedDocument#MOST_BYTES} of it; empty when it could not be read
 * @param fault why not
 */
@Preview(since = "1.0")
public record Lying(String where, Optional<String> text, Optional<Fault> fault) {}
