package org.glintery.api.finishes;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.activework.CompletionPart;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The finishes. Methods compute from the view and change nothing: apply what they give. Any thread. */
@Stable
public interface Finishes extends CompletionPart {

    /**
     * Writes or replaces the record of a piece. If the piece is not there yet, it is made with standing made:
     * that is how old finishes come in. A field that is filled is no longer left for later. Refused with
     * {@code no-title}, {@code no-picture} when neither the workshop nor {@code pictures} has its bytes, or
     * {@code bad-score}.
     *
     * @param pictures the bytes of pictures that the record names and the workshop may not hold yet
     */
    Result<ChangeSet> write(View view, UUID piece, Finish finish, List<Blob> pictures);

    /** All records, latest finish first; those without a date last. */
    List<Stored<Finish>> all(View view);

    /** Records with fields left for later, in the order of {@link #all}, then made pieces without a record, by title. */
    List<ToWrite> stillToWrite(View view);

    /** A record that waits to be written. */
    record ToWrite(UUID piece, String title, Set<Finish.Field> fields) {
        public ToWrite {
            fields = Collections.unmodifiableSet(new TreeSet<>(fields));
        }
    }
}
