package org.glintery.api.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.glintery.api.Preview;

/** A file that is synced is not found after a power cut unless its name is too. Not on the event thread. */
@Preview(since = "1.0")
public final class FolderNames {
    private FolderNames() {}

    /** Makes the names in a folder durable, where folders can be synced; Windows knows no such thing. */
    public static void sync(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
