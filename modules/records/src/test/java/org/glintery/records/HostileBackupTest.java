package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
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
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups that are whole restore; any other is refused and leaves nothing, inside or outside the folder. */
class HostileBackupTest {
    @TempDir
    Path temp;

    @TempDir
    Path elsewhere;

    private final H2Workshops workshops = new H2Workshops();
    private final JacksonCodec codec = new JacksonCodec();
    private Map<String, byte[]> parts;
    private String digest;
    private Refusal refusal;

    @BeforeEach
    void backUp() throws IOException {
        Path backup = temp.resolve("good.zip");
        try (Workshop workshop = workshops.create(temp.resolve("w")).orThrow()) {
            workshop.apply(ChangeSet.named("a")
                            .create(Kit.TYPE, UUID.randomUUID(), Kit.titled("Rope-walk"))
                            .blob(Blob.of("image/png", new byte[] {1, 2, 3}))
                            .post(LedgerAction.Movement.of(
                                    UUID.randomUUID(),
                                    LedgerWork.DRILLS.get(0),
                                    Spot.SUPPLIER,
                                    LedgerWork.SPOTS.get(0),
                                    Amount.counted(20),
                                    "bought"))
                            .build())
                    .orThrow();
            digest = workshop.view().contentDigest();
            workshop.backup(backup).orThrow();
            assertThat(code(workshop.backup(backup))).isEqualTo("file-exists");
        }
        parts = new LinkedHashMap<>();
        try (var zip = new ZipInputStream(Files.newInputStream(backup))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
    }

    private static String code(Result<?> result) {
        return result instanceof Result.Refused<?> refused ? refused.refusal().code() : "ok";
    }

    private BackupManifest manifest() {
        return codec.fromJson(
                codec.parse(new String(parts.get(BackupManifest.NAME), StandardCharsets.UTF_8)), BackupManifest.class);
    }

    private void manifest(UnaryOperator<List<BackupManifest.Part>> change) {
        BackupManifest old = manifest();
        var changed = new BackupManifest(
                old.format(), old.version(), old.schema(), change.apply(new ArrayList<>(old.parts())), old.lost());
        parts.put(BackupManifest.NAME, codec.compact(codec.toJson(changed)).getBytes(StandardCharsets.UTF_8));
    }

    private byte[] zip() throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (var part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private String restored(byte[] zip) throws IOException {
        Path file = temp.resolve("try.zip");
        Files.write(file, zip);
        Path folder = temp.resolve("restored");
        Result<?> result = workshops.restore(file, folder);
        refusal = result instanceof Result.Refused<?> no ? no.refusal() : null;
        String code = code(result);
        if (code.equals("ok")) {
            try (Workshop workshop = workshops.open(folder).orThrow()) {
                assertThat(workshop.view().contentDigest()).isEqualTo(digest);
            }
        } else {
            assertThat(folder).doesNotExist();
            try (var files = Files.list(temp)) {
                assertThat(files.map(path -> path.getFileName().toString()))
                        .containsExactlyInAnyOrder("w", "good.zip", "try.zip");
            }
        }
        return code;
    }

    private BackupManifest.Part part(String name, byte[] bytes) {
        return new BackupManifest.Part(name, bytes.length, Blob.hash(bytes));
    }

    @Test
    void restoresWhatIsWhole_andHoldsWhatAnyoneCanRead() throws IOException {
        assertThat(parts).containsKeys("README.txt", "workshop.json", "database/" + Database.FILE, "manifest.json");
        assertThat(new String(parts.get("workshop.json"), StandardCharsets.UTF_8))
                .contains("Rope-walk");
        assertThat(restored(zip())).isEqualTo("ok");
    }

    @Test
    void hasNoDatabaseByItsName_beforeAllElseIsLaidOut() throws Exception {
        byte[] picture = {5};
        String name = BackupManifest.PICTURES + Blob.hash(picture);
        parts.put(name, new byte[] {6});
        manifest(list -> {
            list.add(part(name, picture));
            return list;
        });
        Path file = Files.write(temp.resolve("torn.zip"), zip());
        Path folder = Files.createDirectory(temp.resolve("torn"));
        assertThatThrownBy(() -> new RestoreFolder(folder, codec, Schema.OURS).layOut(file))
                .isInstanceOf(RestoreFolder.NotRestored.class);
        assertThat(folder.resolve(Database.FILE + ".part"))
                .as("was laid out before")
                .isNotEmptyFile();
        assertThat(folder.resolve(Database.FILE)).doesNotExist();
        assertThat(workshops.isWorkshop(folder)).isFalse();
    }

    @Test
    void refusesPathsThatLeadElsewhere() throws IOException {
        byte[] bytes = {1};
        for (String name : List.of(
                "../outside", "pictures/../../outside", "/elsewhere/outside", "pictures/..\\outside", "other")) {
            Map<String, byte[]> before = new LinkedHashMap<>(parts);
            parts.put(name, bytes);
            manifest(list -> {
                list.add(part(name, bytes));
                return list;
            });
            assertThat(restored(zip())).as(name).isEqualTo("damaged");
            parts = before;
        }
    }

    @Test
    void refusesAPartThatUnpacksToMoreThanItSays_andOneThatSaysMoreThanCanBe() throws IOException {
        byte[] bomb = new byte[8 << 20];
        String name = "pictures/" + "a".repeat(64);
        Map<String, byte[]> before = new LinkedHashMap<>(parts);
        parts.put(name, bomb);
        manifest(list -> {
            list.add(new BackupManifest.Part(name, 10, Blob.hash(bomb)));
            return list;
        });
        assertThat(restored(zip())).isEqualTo("damaged");
        for (long size : List.of(1L << 40, Long.MAX_VALUE, -1L)) {
            parts = new LinkedHashMap<>(before);
            parts.put(name, bomb);
            manifest(list -> {
                list.add(new BackupManifest.Part(name, size, Blob.hash(bomb)));
                return list;
            });
            assertThat(restored(zip())).as("%d bytes", size).isEqualTo("damaged");
        }
    }

    @Test
    void refusesAPictureThatClaimsToBeHuge() throws IOException {
        byte[] huge = TestPictures.claiming(60_000, 60_000);
        String name = BackupManifest.PICTURES + Blob.hash(huge);
        parts.put(name, huge);
        manifest(list -> {
            list.add(part(name, huge));
            return list;
        });
        assertThat(restored(zip())).isEqualTo("picture-too-large");
    }

    @Test
    void refusesWhatIsCutShort_changedOrMissing() throws IOException {
        byte[] good = zip();
        for (int length : List.of(0, 10, good.length / 2, good.length - 1)) {
            assertThat(restored(Arrays.copyOf(good, length)))
                    .as("%d bytes", length)
                    .isIn("damaged", "not-a-backup");
        }
        Map<String, byte[]> before = new LinkedHashMap<>(parts);
        for (String name : before.keySet()) {
            parts = new LinkedHashMap<>(before);
            parts.remove(name);
            assertThat(restored(zip())).as("without " + name).isIn("damaged", "not-a-backup");
            parts = new LinkedHashMap<>(before);
            byte[] changed = parts.get(name).clone();
            changed[changed.length / 2] ^= 1;
            parts.put(name, changed);
            assertThat(restored(zip())).as("changed " + name).isIn("damaged", "not-a-backup");
        }
    }

    @Test
    void refusesADatabaseThatIsNone_thoughItsHashIsRight() throws IOException {
        byte[] nonsense = "not a database".repeat(1000).getBytes(StandardCharsets.UTF_8);
        parts.put(BackupManifest.DATABASE, nonsense);
        manifest(list -> list.stream()
                .map(part -> part.name().equals(BackupManifest.DATABASE) ? part(part.name(), nonsense) : part)
                .toList());
        assertThat(restored(zip())).isIn("damaged", "unreadable");
    }

    @Test
    void refusesADatabaseWhoseDocumentsOrMovementsCannotBe() throws Exception {
        Map<String, String> hostile = Map.of(
                "update document set type_version = -5",
                "it says version -5",
                "update text set body = 'evil/../x' where body = 'stash'",
                "evil/../x/kit/",
                "insert into document select 99, owner, type, id_high, id_low, type_version, version, body from document",
                "is there twice",
                "insert into movement select 2, id_high, id_low, kind, drill, from_spot, to_spot, quantity,"
                        + " from_variance, from_uncounted, to_variance, to_uncounted, lot, basis, said,"
                        + " uncertainty, reason, happened, recorded, reverses, change from movement",
                "Bookings: 2, ids among them: 1.");
        byte[] database = parts.get(BackupManifest.DATABASE);
        for (Map.Entry<String, String> one : hostile.entrySet()) {
            byte[] changed = changed(database, one.getKey());
            parts.put(BackupManifest.DATABASE, changed);
            manifest(list -> list.stream()
                    .map(part -> part.name().equals(BackupManifest.DATABASE) ? part(part.name(), changed) : part)
                    .toList());
            assertThat(restored(zip())).as(one.getKey()).isEqualTo("damaged");
            assertThat(refusal.text()).contains(one.getValue()).endsWith("Nothing was kept; try an older backup.");
        }
    }

    private byte[] changed(byte[] database, String sql) throws Exception {
        Path file = elsewhere.resolve(Database.FILE);
        Files.write(file, database);
        String url = "jdbc:h2:file:" + elsewhere.resolve("glintery").toAbsolutePath();
        try (var connection = DriverManager.getConnection(url, "sa", "");
                var statement = connection.createStatement()) {
            assertThat(statement.executeUpdate(sql)).isEqualTo(1);
        }
        return Files.readAllBytes(file);
    }

    @Test
    void refusesOtherFiles_andBackupsOfANewerProgram() throws IOException {
        assertThat(restored("hello".getBytes(StandardCharsets.UTF_8))).isEqualTo("not-a-backup");
        BackupManifest old = manifest();
        var newer = new BackupManifest(old.format(), old.version() + 1, old.schema(), old.parts(), old.lost());
        parts.put(BackupManifest.NAME, codec.compact(codec.toJson(newer)).getBytes(StandardCharsets.UTF_8));
        assertThat(restored(zip())).isEqualTo("newer");
        assertThat(code(workshops.restore(temp.resolve("nowhere.zip"), temp.resolve("r"))))
                .isEqualTo("not-a-backup");
    }

    @Test
    void leavesANewerWorkshopAlone() throws Exception {
        String url = "jdbc:h2:file:" + temp.resolve("w").resolve("glintery").toAbsolutePath();
        try (var connection = DriverManager.getConnection(url, "sa", "");
                var statement = connection.createStatement()) {
            assertThat(statement.executeUpdate("update meta set content = '99' where name = 'schema'"))
                    .isEqualTo(1);
        }
        assertThat(code(workshops.open(temp.resolve("w")))).isEqualTo("newer");
        try (var files = Files.list(temp.resolve("w"))) {
            assertThat(files.map(path -> path.getFileName().toString()))
                    .contains(Database.FILE)
                    .noneMatch(name -> name.startsWith("before-update"));
        }
    }
}
