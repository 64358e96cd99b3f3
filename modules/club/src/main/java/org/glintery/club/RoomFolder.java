package org.glintery.club;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.disk.NewFile;
import org.openide.util.NbBundle.Messages;

/**
 * A room in a folder that members share by whatever copies files: a synced drive, a stick. One file a version of a document,
 * which appears whole or not at all; times of files mean nothing. Links are not followed. Disk, not on the event thread.
 */
@Preview(since = "1.0")
public final class RoomFolder implements Room {
    private static final String ENDING = ".json";
    private static final int MOST_FILES = 20_000;
    private static final int SIGNATURE_SHOWN = 16;
    private final Path folder;

    public RoomFolder(Path folder) {
        this.folder = folder;
    }

    @Override
    @Messages({
        "# {0} - folder",
        "RoomFolder.gone=The folder {0} is not there or can''t be read. What you have of the club is kept; try again when the "
                + "drive is connected."
    })
    public Result<List<Lying>> lying() {
        OffTheEventThread.check();
        List<Lying> all = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + ENDING)) {
            for (Path file : files) {
                if (all.size() == MOST_FILES) {
                    all.add(faulty(folder.toString(), Fault.TOO_CROWDED));
                    break;
                }
                all.add(read(file));
            }
            return Result.ok(all);
        } catch (IOException | java.nio.file.DirectoryIteratorException e) {
            return Result.refused("no-room", Bundle.RoomFolder_gone(folder));
        }
    }

    private static Lying read(Path file) {
        String name = file.getFileName().toString();
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return faulty(name, Fault.UNREADABLE);
        }
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            byte[] bytes = in.readNBytes(SignedDocument.MOST_BYTES + 1);
            if (bytes.length > SignedDocument.MOST_BYTES) {
                return faulty(name, Fault.TOO_LARGE);
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new Lying(name, Optional.of(text), Optional.empty());
        } catch (CharacterCodingException e) {
            return faulty(name, Fault.UNFINISHED);
        } catch (IOException e) {
            return faulty(name, Fault.UNREADABLE);
        }
    }

    private static Lying faulty(String name, Fault fault) {
        return new Lying(name, Optional.empty(), Optional.of(fault));
    }

    /** Made of words and figures alone, so that it can't lead out of the folder. */
    @Override
    public String placeOf(SignedDocument document) {
        DocKey id = document.id();
        return id.owner() + "." + id.kind() + "." + id.name() + ".v" + document.version() + "."
                + document.signature().substring(0, SIGNATURE_SHOWN) + ENDING;
    }

    @Override
    public Result<String> leave(SignedDocument document) {
        String place = placeOf(document);
        byte[] bytes = document.text().getBytes(StandardCharsets.UTF_8);
        return NewFile.replace(folder.resolve(place), out -> {
            out.write(bytes);
            return Result.ok(place);
        });
    }

    @Override
    @Messages({
        "# {0} - file",
        "RoomFolder.stays={0} could not be taken away from the folder. It counts for nothing; you can delete it yourself."
    })
    public Result<String> clear(String where) {
        OffTheEventThread.check();
        try {
            // only a name as lying() gave it: no path
            Files.deleteIfExists(folder.resolve(Path.of(where).getFileName()));
            return Result.ok(where);
        } catch (IOException e) {
            return Result.refused("not-cleared", Bundle.RoomFolder_stays(where));
        }
    }
}
