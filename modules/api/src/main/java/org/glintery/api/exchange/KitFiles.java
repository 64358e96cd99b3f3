package org.glintery.api.exchange;

import java.nio.file.Path;
import java.util.UUID;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.stash.NewKit;
import org.glintery.api.workshop.View;

/** Kits as JSON by the published schema. Disk; not on the event thread. */
@Preview(since = "1.0")
public interface KitFiles {

    /**
     * A kit with new ids. Refused with {@code unreadable}, {@code not-a-kit}, {@code newer}, {@code too-large}, or for a
     * picture {@code picture-outside}, {@code picture-missing}, {@code picture-too-large} or {@code not-a-picture}; the text names what is wrong and
     * where.
     */
    Result<NewKit> read(Path file);

    /**
     * Writes a kit with its pieces and legends, without ids and keeping places, and with what pictures tell of place and
     * camera taken out; pictures of which that is not sure are left out with a warning. Refused if the file exists or can't
     * be written.
     */
    Result<Path> write(View view, UUID kit, Path file);
}
