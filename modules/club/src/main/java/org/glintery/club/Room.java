package org.glintery.club;

import java.util.List;
import org.glintery.api.Preview;
import org.glintery.api.Result;

/** Where a club's documents lie. It is not trusted: whoever can reach it may change anything in it. Disk or network. */
@Preview(since = "1.0")
public interface Room {

    /** All that lies there. Refused when the room can't be reached at all. */
    Result<List<Lying>> lying();

    /** The name under which a document lies there. */
    String placeOf(SignedDocument document);

    /** Leaves a document there, whole or not at all, in place of whatever has its name. */
    Result<String> leave(SignedDocument document);

    /** Takes away what lies there under a name that {@link #lying} gave; the owner's tidying, and nobody else's. */
    Result<String> clear(String where);
}
