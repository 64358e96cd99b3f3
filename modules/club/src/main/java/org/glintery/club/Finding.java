package org.glintery.club;

import org.glintery.api.PlainText;
import org.glintery.api.Preview;

/**
 * Something in a room that is not as it should be.
 *
 * @param where it lies, or would lie: one line of plain text
 */
@Preview(since = "1.0")
public record Finding(String where, Fault fault) {
    public Finding {
        where = PlainText.line(where);
    }
}
