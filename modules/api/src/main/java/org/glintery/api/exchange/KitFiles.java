package org.glintery.api.exchange;

import java.nio.file.Path;
import java.util.UUID;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.stash.NewKit;
import org.glintery.api.workshop.View;

/** Kits as JSON by the published schema. Disk. */
@Preview(since = "1.0")
public interface KitFiles {

    /** Refused with {@code unreadable} or {@code not-a-kit}; the text names what is wrong and where. */
    Result<NewKit> read(Path file);

    /** Writes a kit with its pieces and legends. */
    Result<Path> write(View view, UUID kit, Path file);
}
