package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.glintery.testkit.LeftOut;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that can't be written and a disk that is full. Each test proves first that its fault is real. */
class FaultyDiskTest {

    /** Root writes into read-only folders, so somebody else has to meet one; anyone else meets it himself. */
    private static final String[] AS_NOBODY = System.getProperty("user.name").equals("root")
            ? new String[] {"setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", "--"}
            : new String[] {};

    @TempDir
    Path folder;

    private GlinteryDo glinteryDo;

    @BeforeEach
    void open() {
        glinteryDo = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "workshop");
    }

    @Test
    void saysThatAFolderCannotBeWritten() throws IOException {
        Path scratch = Files.createDirectory(folder.resolve("scratch"));
        Files.setPosixFilePermissions(scratch, PosixFilePermissions.fromString("rwxrwxrwx"));
        GlinteryDo nobody = glinteryDo
                .with("HOME", scratch.toString())
                .with("TMPDIR", scratch.toString())
                .by(AS_NOBODY);
        glinteryDo.run("workshop", "new").done();
        glinteryDo.run("workshop", "backup", "copy.zip").done();
        Path closed = Files.createDirectory(folder.resolve("closed"));
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        LeftOut.unless(
                shell(AS_NOBODY, "test", "-x", GlinteryDo.LAUNCHER.toString()),
                "a second user who may run the application, and setpriv of util-linux to be that user");
        List<Path> asItWas = files("workshop");
        lock(true);
        try {
            assertThat(shell(AS_NOBODY, "touch", folder.resolve("workshop/x").toString()))
                    .as("the workshop can be written by whoever is about to try")
                    .isFalse();
            assertThat(shell(AS_NOBODY, "touch", folder.resolve("x").toString()))
                    .as("so can the folder around it")
                    .isFalse();
            nobody.run("kit", "list").refused(1, "can not be opened, not even to look at it");
            nobody.run("workshop", "new", "--workshop", "other").refused(1, "can't be written to");
            nobody.run("workshop", "restore", "copy.zip", "--workshop", "closed")
                    .refused(1, "can't be written to");
        } finally {
            lock(false);
        }
        assertThat(files("workshop")).isEqualTo(asItWas);
        assertThat(folder.resolve("other")).doesNotExist();
        Ran backup = glinteryDo.run("workshop", "backup", "nowhere/backup.zip");
        backup.refused(1);
    }

    /** The workshop with all it holds, and the folder it lies in. */
    private void lock(boolean readOnly) throws IOException {
        List<Path> all = new ArrayList<>(files("workshop"));
        all.add(folder);
        for (Path one : all) {
            String mode = Files.isDirectory(one) ? "rwxr-xr-x" : "rw-r--r--";
            Files.setPosixFilePermissions(
                    one, PosixFilePermissions.fromString(readOnly ? mode.replace('w', '-') : mode));
        }
    }

    @Test
    void losesNothing_whenTheDiskIsFull() throws IOException {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        LeftOut.unless(
                shell(new String[] {}, "mount", "-t", "tmpfs", "-o", "size=4m", "none", disk.toString()),
                "the right to mount a small disk, as root has it");
        try {
            GlinteryDo small = glinteryDo.with(
                    "GLINTERY_WORKSHOP", disk.resolve("workshop").toString());
            small.run("workshop", "new").done();
            List<String> ids = new ArrayList<>(printed(small.withInput(Posts.lines(20), "drills", "post", "-")));
            assertThat(ids).as("printed while there was room").hasSize(20);
            Path ballast = disk.resolve("ballast");
            assertThatThrownBy(() -> fill(ballast)).isInstanceOf(IOException.class);
            Ran posted = small.withInput(Posts.lines(2000), "drills", "post", "-");
            posted.refused(1, "disk");
            ids.addAll(printed(posted));
            Files.delete(ballast);
            small.run("workshop", "check").done();
            List<String> kept = small.run("drills", "ledger", "--json")
                    .done()
                    .json()
                    .get("movements")
                    .findValuesAsText("id");
            assertThat(kept).containsExactlyElementsOf(ids);
        } finally {
            shell(new String[] {}, "umount", disk.toString());
        }
    }

    private static List<String> printed(Ran posted) {
        return posted.out().lines().filter(line -> !line.startsWith("{")).toList();
    }

    private static void fill(Path file) throws IOException {
        byte[] block = new byte[1024];
        try (OutputStream out = Files.newOutputStream(file)) {
            for (int i = 0; i < 8 * 1024; i++) {
                out.write(block);
            }
        }
    }

    private List<Path> files(String name) throws IOException {
        try (Stream<Path> inside = Files.walk(folder.resolve(name))) {
            return inside.sorted().toList();
        }
    }

    private boolean shell(String[] prefix, String... words) {
        List<String> command = new ArrayList<>(List.of(prefix));
        command.addAll(List.of(words));
        try {
            return GlinteryDo.finish(glinteryDo.start(command), "").code() == 0;
        } catch (UncheckedIOException e) {
            return false; // no such command here
        }
    }
}
