package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.zip.ZipFile;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A picture that is gone or damaged keeps nobody from a copy of all the rest, which says what it lacks. */
class LostPicturesTest {
    private static final String GONE =
            "A picture of Net loft is missing on the disk. Add it again, or take it from an older backup.";
    private static final String DAMAGED =
            "A picture of Rope-walk was changed or damaged on the disk. Add it again, or take it from an older backup.";

    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();
    private final Blob damaged = Blob.of("image/png", TestPictures.png(3, 3));
    private final Blob gone = Blob.of("image/png", TestPictures.png(4, 4));
    private final Blob whole = Blob.of("image/png", TestPictures.png(5, 5));
    private Workshop workshop;

    @BeforeEach
    void make() throws IOException {
        workshop = workshops.create(temp.resolve("w")).orThrow();
        piece("Rope-walk", damaged);
        piece("Net loft", gone);
        piece("Boatyard crane", whole);
        Path pictures = temp.resolve("w").resolve(BlobFolder.NAME);
        Files.write(pictures.resolve(damaged.hash()), new byte[] {1}, StandardOpenOption.APPEND);
        Files.delete(pictures.resolve(gone.hash()));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private void piece(String title, Blob blob) {
        Piece piece = Piece.titled(title, Standing.SHELVED)
                .withPictures(List.of(new Picture(blob.hash(), blob.mediaType(), "")));
        workshop.apply(ChangeSet.named("Shelve " + title)
                        .create(Piece.TYPE, UUID.randomUUID(), piece)
                        .blob(blob)
                        .build())
                .orThrow();
    }

    private static CopyReport ok(Result<CopyReport> result, String... warnings) {
        assertThat(result).isInstanceOf(Result.Ok.class);
        assertThat(((Result.Ok<CopyReport>) result).warnings()).containsExactlyInAnyOrder(warnings);
        return result.orThrow();
    }

    @Test
    void areNamedByThePieceTheyBelongTo() {
        assertThat(workshop.check().problems()).containsExactlyInAnyOrder(GONE, DAMAGED);
    }

    @Test
    void stayOutOfABackup_thatHoldsAllTheRest_andIsRestoredWithAWord() throws IOException {
        Path backup = temp.resolve("b.zip");
        assertThat(ok(workshop.backup(backup), GONE, DAMAGED).blobs()).isEqualTo(1);
        try (var zip = new ZipFile(backup.toFile())) {
            assertThat(zip.stream().map(entry -> entry.getName()))
                    .contains("pictures/" + whole.hash() + ".png")
                    .noneMatch(name -> name.contains(gone.hash()) || name.contains(damaged.hash()));
        }
        Path restored = temp.resolve("restored");
        assertThat(ok(workshops.restore(backup, restored), GONE, GONE.replace("Net loft", "Rope-walk"))
                        .blobs())
                .isEqualTo(1);
        try (Workshop again = workshops.open(restored).orThrow()) {
            assertThat(again.view().contentDigest()).isEqualTo(workshop.view().contentDigest());
            assertThat(again.blob(whole.hash()).orElseThrow()).isEqualTo(whole.bytes());
            assertThat(again.blob(damaged.hash())).isEqualTo(Optional.empty());
        }
    }

    @Test
    void stayOutOfAnExport_thatCanBeImported() {
        Path file = temp.resolve("all.json");
        ok(workshop.exportJson(file), GONE, DAMAGED);
        try (Workshop other = workshops.create(temp.resolve("other")).orThrow()) {
            other.importJson(file).orThrow();
            assertThat(other.view().all(Piece.TYPE)).hasSize(3);
            assertThat(other.view().blobs().keySet()).containsExactly(whole.hash());
        }
    }
}
