package org.glintery.api.stash;

import java.util.Optional;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;

/**
 * What a card says of a code.
 *
 * @param hex the colour as {@code #rrggbb}, lower case; empty when not known
 * @param rough whether the colour is only near, as from a photo
 */
@Stable
public record CardEntry(Optional<String> name, Optional<String> hex, boolean rough) {
    public static final CardEntry UNKNOWN = new CardEntry(Optional.empty(), Optional.empty(), false);

    public CardEntry {
        name = PlainText.line(name);
        hex = PlainText.line(hex);
    }
}
