package org.glintery.records;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.Refusal;
import org.glintery.api.disk.FolderNames;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.PictureFacts;
import org.openide.util.NbBundle.Messages;

/**
 * Lays the parts of a backup out in a folder. Only what the manifest names is written, under names of our own making,
 * no more bytes than it says, and each part's hash must be right. Every file is synced; the database gets its name last.
 */
@Messages({
    "restore-not-a-backup=This file is not a backup of a workshop. Nothing was restored.",
    "restore-newer=This backup was written by a newer Glintery. Nothing was restored; update Glintery.",
    "# {0} - part of the backup",
    "restore-damaged=This backup is damaged ({0}). Nothing was restored; try an older backup.",
    "# {0} - such as 60 000 x 60 000",
    "restore-picture-too-large=A picture in this backup says it is {0} pixels, which is too large to open. Nothing was "
            + "restored; it may be meant to do harm.",
    "restore-no-room=There is not enough room on the disk for what this backup holds. Nothing was restored."
})
final class RestoreFolder {
    private static final String DATABASE_PART = Database.FILE + ".part";
    private static final int HASH_LENGTH = 64;
    private static final int MOST_MANIFEST_BYTES = 32 << 20;
    /** Text and tables shrink to a tenth or so; what claims to shrink much more is made to fill the disk. */
    private static final long MOST_SHRUNK = 200;

    private static final long ALWAYS_PLAUSIBLE_BYTES = 64L << 20;

    private final Path folder;
    private final JacksonCodec codec;
    private final Schema schema;

    RestoreFolder(Path folder, JacksonCodec codec, Schema schema) {
        this.folder = folder;
        this.codec = codec;
        this.schema = schema;
    }

    /** Why a backup was not laid out. */
    static final class NotRestored extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Refusal refusal;

        NotRestored(String code, String text) {
            super(text);
            this.refusal = new Refusal(code, text);
        }

        Refusal refusal() {
            return refusal;
        }
    }

    /** Gives the hashes of pictures that the backup says it lacks. */
    Set<String> layOut(Path backup) throws NotRestored, IOException {
        try (var zip = new ZipFile(backup.toFile())) {
            BackupManifest manifest = manifest(zip);
            long total = total(manifest);
            if (total > ALWAYS_PLAUSIBLE_BYTES + MOST_SHRUNK * Files.size(backup)) {
                throw damaged("it claims to hold more than it can");
            }
            if (total > Files.getFileStore(folder).getUsableSpace()) {
                throw new NotRestored("disk-full", Bundle.restore_no_room());
            }
            Set<String> seen = new HashSet<>();
            for (BackupManifest.Part part : manifest.parts()) {
                if (!seen.add(part.name())) {
                    throw damaged(part.name());
                }
                extract(zip, part);
            }
            if (!seen.contains(BackupManifest.DATABASE)) {
                throw damaged(BackupManifest.DATABASE);
            }
            nameDatabase();
            return Set.copyOf(manifest.lost().orElse(List.of()));
        } catch (ZipException e) {
            throw new NotRestored("not-a-backup", Bundle.restore_not_a_backup());
        }
    }

    /** Last of all: a restore that was cut short leaves no folder that looks like a workshop. */
    private void nameDatabase() throws IOException {
        Path pictures = folder.resolve(BlobFolder.NAME);
        if (Files.exists(pictures)) {
            FolderNames.sync(pictures);
        }
        Files.move(folder.resolve(DATABASE_PART), folder.resolve(Database.FILE), StandardCopyOption.ATOMIC_MOVE);
        FolderNames.sync(folder);
        FolderNames.sync(folder.toAbsolutePath().getParent());
    }

    private static long total(BackupManifest manifest) throws NotRestored {
        long total = 0;
        for (BackupManifest.Part part : manifest.parts()) {
            if (part.bytes() < 0 || total + part.bytes() < total) {
                throw damaged(part.name());
            }
            total += part.bytes();
        }
        return total;
    }

    private BackupManifest manifest(ZipFile zip) throws NotRestored, IOException {
        ZipEntry entry = zip.getEntry(BackupManifest.NAME);
        if (entry == null) {
            throw new NotRestored("not-a-backup", Bundle.restore_not_a_backup());
        }
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes(MOST_MANIFEST_BYTES);
            Json json = codec.parse(new String(bytes, StandardCharsets.UTF_8));
            BackupManifest manifest = codec.fromJson(json, BackupManifest.class);
            if (!manifest.format().equals(BackupManifest.FORMAT)) {
                throw new NotRestored("not-a-backup", Bundle.restore_not_a_backup());
            }
            if (manifest.version() > BackupManifest.VERSION || manifest.schema() > schema.version()) {
                throw new NotRestored("newer", Bundle.restore_newer());
            }
            return manifest;
        } catch (MalformedException e) {
            throw new NotRestored("not-a-backup", Bundle.restore_not_a_backup());
        }
    }

    private void extract(ZipFile zip, BackupManifest.Part part) throws NotRestored, IOException {
        ZipEntry entry = zip.getEntry(part.name());
        if (entry == null) {
            throw damaged(part.name());
        }
        MessageDigest digest = PackedBody.sha256();
        try (InputStream in = zip.getInputStream(entry);
                Target target = target(part)) {
            var out = new DigestOutputStream(target.stream(), digest);
            byte[] some = new byte[1 << 16];
            long left = part.bytes();
            for (int length = in.read(some); length >= 0; length = in.read(some)) {
                left -= length;
                if (left < 0) {
                    throw damaged(part.name());
                }
                out.write(some, 0, length);
            }
            if (left != 0) {
                throw damaged(part.name());
            }
            target.force();
        } catch (ZipException | java.io.EOFException e) {
            throw damaged(part.name());
        }
        if (!HexFormat.of().formatHex(digest.digest()).equals(part.sha256())) {
            throw damaged(part.name());
        }
        if (part.name().startsWith(BackupManifest.PICTURES) && part.bytes() <= Blob.MOST_BYTES) {
            checkSize(Files.readAllBytes(pictureFile(part.name())));
        }
    }

    private static void checkSize(byte[] picture) throws NotRestored {
        Optional<PictureFacts> tooLarge = PictureFacts.of(picture).filter(PictureFacts::isTooLarge);
        if (tooLarge.isPresent()) {
            throw new NotRestored(
                    "picture-too-large",
                    Bundle.restore_picture_too_large(tooLarge.get().sizeWords()));
        }
    }

    private Path pictureFile(String name) {
        int from = BackupManifest.PICTURES.length();
        return folder.resolve(BlobFolder.NAME).resolve(name.substring(from, from + HASH_LENGTH));
    }

    /** Where a part goes: readable copies are only checked, and a name of any other form is refused. */
    private Target target(BackupManifest.Part part) throws NotRestored, IOException {
        String name = part.name();
        if (name.equals(BackupManifest.README) || name.equals(BackupManifest.EXPORT)) {
            return new Target(Optional.empty());
        }
        if (name.equals(BackupManifest.DATABASE)) {
            return Target.at(folder.resolve(DATABASE_PART));
        }
        if (name.matches(BackupManifest.PICTURES + "[0-9a-f]{" + HASH_LENGTH + "}(\\.[a-z]{1,5})?")) {
            Files.createDirectories(folder.resolve(BlobFolder.NAME));
            return Target.at(pictureFile(name));
        }
        throw damaged("an unexpected part");
    }

    /** A new file, or nowhere. */
    private record Target(Optional<FileChannel> file) implements AutoCloseable {
        static Target at(Path path) throws IOException {
            return new Target(
                    Optional.of(FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)));
        }

        OutputStream stream() {
            return file.map(Channels::newOutputStream).orElseGet(OutputStream::nullOutputStream);
        }

        void force() throws IOException {
            if (file.isPresent()) {
                file.get().force(true);
            }
        }

        @Override
        public void close() throws IOException {
            if (file.isPresent()) {
                file.get().close();
            }
        }
    }

    private static NotRestored damaged(String what) {
        return new NotRestored("damaged", Bundle.restore_damaged(what));
    }
}
