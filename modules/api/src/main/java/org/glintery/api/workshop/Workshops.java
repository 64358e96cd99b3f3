package org.glintery.api.workshop;

import java.nio.file.Path;
import org.glintery.api.Result;
import org.glintery.api.Stable;

/** Opens workshops. Found by {@code Lookup}; disk, not on the event thread. */
@Stable
public interface Workshops {

    /** Whether a folder holds a workshop, by its files; opens nothing. */
    boolean isWorkshop(Path folder);

    /**
     * Opens an existing workshop. Refused with {@code no-workshop}, {@code in-use} (names who has it),
     * {@code newer} or {@code unreadable}. Warns on a network or synced folder.
     */
    Result<Workshop> open(Path folder);

    /** Makes a workshop in a new or empty folder and opens it. */
    Result<Workshop> create(Path folder);

    /** Lays a backup out in a new or empty folder and verifies every part; leaves nothing on a failure. */
    Result<Workshop.CopyReport> restore(Path backup, Path folder);
}
