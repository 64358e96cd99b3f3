package org.glintery.club;

import java.util.regex.Pattern;
import org.glintery.api.Preview;

/**
 * What names a document in a room.
 *
 * @param owner the id of the only member who may write it
 * @param kind and {@code name}: words of small letters, figures and hyphens, so that neither can be a path
 */
@Preview(since = "1.0")
public record DocKey(String owner, String kind, String name) implements Comparable<DocKey> {
    private static final Pattern WORD = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");
    private static final Pattern ID = Pattern.compile("[0-9a-f]{32}");

    public DocKey {
        if (!ID.matcher(owner).matches()
                || !WORD.matcher(kind).matches()
                || !WORD.matcher(name).matches()) {
            throw new IllegalArgumentException("not the key of a document");
        }
    }

    @Override
    public int compareTo(DocKey other) {
        return toString().compareTo(other.toString());
    }

    @Override
    public String toString() {
        return owner + "/" + kind + "/" + name;
    }
}
