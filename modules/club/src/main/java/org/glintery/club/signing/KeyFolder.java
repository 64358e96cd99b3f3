package org.glintery.club.signing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HexFormat;
import java.util.Optional;
import org.glintery.api.OffTheEventThread;

/**
 * A user's own keys, one file each, outside any workshop, so that a copy of a workshop holds none. Where files have owners
 * and rights, nobody else may read them. Disk, not on the event thread.
 */
public final class KeyFolder {
    private static final String OWNER_ALONE = "rw-------";
    private static final String FOLDER_RIGHTS = "rwx------";
    private static final int MOST_BYTES = 200;
    private final Path folder;

    public KeyFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Where the user's keys are: the folder that the system property {@code glintery.keys} or the environment's
     * {@code GLINTERY_KEYS} names, else {@code .glintery-keys} at home.
     */
    public static KeyFolder ofTheUser() {
        String named = System.getProperty("glintery.keys", System.getenv("GLINTERY_KEYS"));
        return new KeyFolder(
                named == null || named.isBlank()
                        ? Path.of(System.getProperty("user.home"), ".glintery-keys")
                        : Path.of(named));
    }

    /** Keeps a key; it appears with its rights, never before them. A key that is there already stays as it is. */
    public void keep(MemberKey key) throws IOException {
        OffTheEventThread.check();
        Files.createDirectories(folder, rights(folder.toAbsolutePath(), FOLDER_RIGHTS));
        Path file = file(key.publicKey().memberId());
        if (find(key.publicKey().memberId()).isPresent()) {
            return;
        }
        write(file, HexFormat.of().formatHex(key.seed()) + "\n");
    }

    /** A file that only its owner may read. Fails when it is there already. */
    public static void write(Path file, String text) throws IOException {
        Path whole = file.toAbsolutePath();
        Files.createFile(whole, rights(whole.getParent(), OWNER_ALONE));
        Files.writeString(whole, text, StandardCharsets.UTF_8, StandardOpenOption.WRITE, StandardOpenOption.SYNC);
    }

    /** The key of a member, when it is kept here. */
    public Optional<MemberKey> find(String memberId) throws IOException {
        OffTheEventThread.check();
        Path file = file(memberId);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
            return Optional.empty();
        }
        String seed = Files.readString(file, StandardCharsets.UTF_8).strip();
        return seed.matches("[0-9a-f]{64}")
                ? Optional.of(MemberKey.ofSeed(HexFormat.of().parseHex(seed)))
                        .filter(key -> key.publicKey().memberId().equals(memberId))
                : Optional.empty();
    }

    private Path file(String memberId) {
        if (!memberId.matches("[0-9a-f]{32}")) {
            throw new IllegalArgumentException("not the id of a member");
        }
        return folder.resolve(memberId + ".key");
    }

    private static FileAttribute<?>[] rights(Path where, String rights) {
        return where.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))}
                : new FileAttribute<?>[0];
    }
}
