package org.glintery.records;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file that is synced is not found after a power cut unless its name is too. */
final class FolderNames {
    private FolderNames() {}

    /** Makes the names in a folder durable, where folders can be synced; Windows knows no such thing. */
    static void sync(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
