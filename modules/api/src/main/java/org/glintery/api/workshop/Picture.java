package org.glintery.api.workshop;

import org.glintery.api.PlainText;
import org.glintery.api.Stable;

/**
 * A picture kept in the workshop, by the SHA-256 of its bytes in lower-case hexadecimal.
 *
 * @param mediaType such as {@code image/png}
 * @param caption may be empty
 */
@Stable
public record Picture(String hash, String mediaType, String caption) {
    public Picture {
        hash = PlainText.line(hash);
        mediaType = PlainText.line(mediaType);
        caption = PlainText.line(caption);
    }
}
