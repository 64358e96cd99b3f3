package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.LedgerWork;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workshop of an older program, brought up to date by one whose schema has a step more. */
class WorkshopUpdateTest {
    private static final UUID KIT = new UUID(6, 1);

    @TempDir
    Path temp;

    private Path folder;
    private String content;

    private static H2Workshops newer(String... steps) {
        var migrations = new ArrayList<>(Schema.OURS.migrations());
        migrations.add(List.of(steps));
        return new H2Workshops(Clock.systemUTC(), ChangeMaking.StepWatch.NONE, new Schema(migrations));
    }

    @BeforeEach
    void make() {
        folder = temp.resolve("w");
        try (Workshop workshop = new H2Workshops().create(folder).orThrow()) {
            workshop.apply(ChangeSet.named("Shelve")
                            .create(Kit.TYPE, KIT, Kit.titled("Net loft"))
                            .blob(Blob.of("image/png", new byte[] {1, 2, 3}))
                            .post(LedgerAction.Movement.of(
                                    UUID.randomUUID(),
                                    LedgerWork.DRILLS.get(0),
                                    Spot.SUPPLIER,
                                    LedgerWork.SPOTS.get(0),
                                    Amount.counted(40),
                                    "bought"))
                            .build())
                    .orThrow();
            content = workshop.view().contentDigest();
        }
    }

    private List<Path> backups() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> path.getFileName().toString().startsWith("before-update-1-"))
                    .toList();
        }
    }

    private static Refusal refusal(Result<Workshop> result) {
        assertThat(result).isInstanceOf(Result.Refused.class);
        return ((Result.Refused<Workshop>) result).refusal();
    }

    private int schemaVersion() throws SQLException {
        Database database = Database.open(folder);
        try {
            return Schema.version(database.connection());
        } finally {
            database.close();
        }
    }

    @Test
    void keepsEverything_andLeavesABackupThatTheOlderProgramRestores() throws Exception {
        try (Workshop workshop = newer("create table shade(no int primary key)", "insert into shade values(7)")
                .open(folder)
                .orThrow()) {
            assertThat(workshop.view().contentDigest()).isEqualTo(content);
            assertThat(workshop.check().problems()).isEmpty();
            workshop.undo().orThrow();
            workshop.redo().orThrow();
        }
        assertThat(schemaVersion()).isEqualTo(2);
        Database database = Database.open(folder);
        try (Statement sql = database.connection().createStatement();
                ResultSet rows = sql.executeQuery("select no from shade")) {
            assertThat(rows.next()).isTrue();
            assertThat(rows.getInt(1)).isEqualTo(7);
        } finally {
            database.close();
        }
        assertThat(folder.resolve("update-in-the-making")).doesNotExist();
        assertThat(backups()).hasSize(1);
        try (var zip = new ZipFile(backups().get(0).toFile())) {
            assertThat(zip.stream().map(entry -> entry.getName()))
                    .contains("README.txt", "workshop.json", "manifest.json", "database/" + Database.FILE);
        }
        Path restored = temp.resolve("restored");
        new H2Workshops().restore(backups().get(0), restored).orThrow();
        try (Workshop workshop = new H2Workshops().open(restored).orThrow()) {
            assertThat(workshop.view().contentDigest()).isEqualTo(content);
            assertThat(workshop.undoable()).contains("Shelve");
        }
    }

    @Test
    void bringsChangesAlongThatStandInTheJournalAlone() throws Exception {
        Path killed = temp.resolve("killed");
        String before;
        try (Workshop workshop = new H2Workshops().open(folder).orThrow()) {
            workshop.apply(ChangeSet.named("Second")
                            .create(Kit.TYPE, new UUID(6, 2), Kit.titled("Rope-walk"))
                            .build())
                    .orThrow();
            before = workshop.view().contentDigest();
            copy(folder, killed); // as a killed process leaves it
        }
        assertThat(Files.size(killed.resolve(Journal.FILE))).isPositive();
        try (Workshop workshop =
                newer("create table shade(no int primary key)").open(killed).orThrow()) {
            assertThat(workshop.view().contentDigest()).isEqualTo(before);
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path one : all.toList()) {
                if (!one.getFileName().toString().endsWith(".lock")) {
                    Files.copy(one, to.resolve(from.relativize(one)));
                }
            }
        }
    }

    @Test
    void leavesTheWorkshopToTheOlderProgram_whenAStepFailsHalfWay() throws Exception {
        Refusal refusal = refusal(newer("create table shade(no int primary key)", "this is no statement")
                .open(folder));
        assertThat(refusal.code()).isEqualTo("update-failed");
        assertThat(refusal.text())
                .startsWith("This workshop comes from an older Glintery and could not be brought up to date (")
                .endsWith("). Nothing was changed; the older Glintery can still open it.");
        assertThat(schemaVersion()).isEqualTo(1);
        assertThat(backups()).isEmpty();
        assertThat(folder.resolve("update-in-the-making")).doesNotExist();
        try (Workshop workshop = new H2Workshops().open(folder).orThrow()) {
            assertThat(workshop.view().contentDigest()).isEqualTo(content);
        }
    }

    @Test
    void leavesItAlone_whenAStepSpoilsWhatIsThere() throws Exception {
        Refusal refusal = refusal(newer("update movement set quantity = -1").open(folder));
        assertThat(refusal.code()).isEqualTo("update-failed");
        assertThat(schemaVersion()).isEqualTo(1);
        assertThat(backups()).isEmpty();
    }

    @Test
    void isRefusedByTheOlderProgram_onceItIsUpToDate() {
        newer("create table shade(no int primary key)").open(folder).orThrow().close();
        assertThat(refusal(new H2Workshops().open(folder)).code()).isEqualTo("newer");
    }
}
