package org.glintery.records;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.glintery.api.disk.FolderNames;

/** Blobs as files named by their hash. A file is complete and synced before it has its name. */
final class BlobFolder {
    static final String NAME = "pictures";

    private final Path folder;

    BlobFolder(Path workshop) {
        this.folder = workshop.resolve(NAME);
    }

    /** Writes a blob unless its file is there. Writer thread. @return whether there was none before */
    boolean write(String hash, byte[] bytes) throws IOException {
        Path file = file(hash);
        if (Files.exists(file) && Files.size(file) == bytes.length) {
            return false;
        }
        boolean isNew = Files.notExists(file);
        if (Files.notExists(folder)) {
            Files.createDirectories(folder);
            FolderNames.sync(folder.toAbsolutePath().getParent());
        }
        Path part = folder.resolve(hash + ".part");
        try {
            try (FileChannel channel = FileChannel.open(
                    part, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            FolderNames.sync(folder);
            return isNew;
        } catch (IOException e) {
            Files.deleteIfExists(part);
            throw e;
        }
    }

    /** Removes the file of a blob that came to nothing. */
    void delete(String hash) throws IOException {
        Files.deleteIfExists(file(hash));
    }

    Optional<byte[]> read(String hash) throws IOException {
        try {
            return Optional.of(Files.readAllBytes(file(hash)));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    Path file(String hash) {
        return folder.resolve(hash);
    }
}
