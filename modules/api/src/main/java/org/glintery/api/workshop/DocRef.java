package org.glintery.api.workshop;

import java.util.UUID;
import java.util.regex.Pattern;
import org.glintery.api.Stable;

/**
 * The key of a document.
 *
 * @param owner the feature or add-on that owns the type, such as {@code stash}
 * @param type the kind of document, such as {@code piece}
 */
@Stable
public record DocRef(String owner, String type, UUID id) {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}](?:[._-]?[\\p{L}\\p{M}\\p{N}]){0,99}");

    /** Whether owner and type are words: letters and digits, parted by single points, hyphens or low lines. */
    public boolean isWellNamed() {
        return isWord(owner) && isWord(type);
    }

    static boolean isWord(String text) {
        return WORD.matcher(text).matches();
    }

    @Override
    public String toString() {
        return owner + "/" + type + "/" + id;
    }
}
