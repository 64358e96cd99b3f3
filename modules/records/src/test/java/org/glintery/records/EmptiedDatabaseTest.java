package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workshop whose database was emptied or damaged is told of, not taken for a new one. */
class EmptiedDatabaseTest {
    private static final String EMPTY = "The database of this workshop is empty, though its folder is not new."
            + " Nothing was changed; restore a backup into a new folder. If it was never used, delete the folder and make"
            + " the workshop anew.";

    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();
    private Path folder;
    private Path file;

    @BeforeEach
    void make() {
        folder = temp.resolve("w");
        file = folder.resolve(Database.FILE);
        try (Workshop workshop = workshops.create(folder).orThrow()) {
            workshop.apply(ChangeSet.named("Shelve")
                            .create(Kit.TYPE, UUID.randomUUID(), Kit.titled("Net loft"))
                            .build())
                    .orThrow();
        }
    }

    private String refusal() {
        Result<Workshop> opened = workshops.open(folder);
        assertThat(opened).isInstanceOf(Result.Refused.class);
        return ((Result.Refused<Workshop>) opened).refusal().text();
    }

    @Test
    void isRefusedAndLeftAsItIs_whenItsFileHasNoBytes() throws IOException {
        Files.write(file, new byte[0]);
        assertThat(refusal()).isEqualTo(EMPTY);
        assertThat(file).isEmptyFile();
    }

    @Test
    void isRefused_whenItHoldsNoTables() throws IOException, SQLException {
        Files.delete(file);
        Database.open(folder).close();
        assertThat(refusal()).isEqualTo(EMPTY);
    }

    @Test
    void isRefused_whenTheJournalHoldsOnlyTheNewestChanges() throws IOException {
        Path killed = temp.resolve("killed");
        Files.createDirectories(killed);
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            workshop.undo().orThrow();
            Files.copy(folder.resolve(Journal.FILE), killed.resolve(Journal.FILE)); // as a killed process leaves it
        }
        Files.createFile(killed.resolve(Database.FILE));
        Result<Workshop> opened = workshops.open(killed);
        assertThat(opened).isInstanceOf(Result.Refused.class);
        assertThat(((Result.Refused<Workshop>) opened).refusal().code()).isEqualTo("unreadable");
    }

    @Test
    void isMadeAnewFromTheJournal_whenThatHoldsEveryChange() throws IOException {
        Path killed = temp.resolve("killed");
        Files.createDirectories(killed);
        try (Workshop workshop = workshops.create(temp.resolve("new")).orThrow()) {
            workshop.apply(ChangeSet.named("Shelve")
                            .create(Kit.TYPE, UUID.randomUUID(), Kit.titled("Rope-walk"))
                            .build())
                    .orThrow();
            Files.copy(temp.resolve("new").resolve(Journal.FILE), killed.resolve(Journal.FILE));
        }
        Files.createFile(killed.resolve(Database.FILE));
        try (Workshop workshop = workshops.open(killed).orThrow()) {
            assertThat(workshop.view().all(Kit.TYPE)).hasSize(1);
        }
    }

    @Test
    void isRefusedInOurWords_whenItsFileIsDamaged() throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 0; i < bytes.length; i += 7) {
            bytes[i] ^= 0x5a;
        }
        Files.write(file, bytes);
        assertThat(refusal())
                .isEqualTo("The database of this workshop is damaged and can't be read. Nothing was changed; keep a"
                        + " copy of the folder, and restore a backup into a new one.");
    }
}
