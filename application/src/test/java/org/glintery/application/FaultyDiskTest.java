package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that can't be written and a disk that is full. Each test proves first that its fault is real. */
class FaultyDiskTest {

    private static final String[] AS_NOBODY = {"setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", "--"};

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
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        GlinteryDo nobody = glinteryDo
                .with("HOME", scratch.toString())
                .with("TMPDIR", scratch.toString())
                .by(AS_NOBODY);
        assumeTrue(shell(AS_NOBODY, "test", "-x", GlinteryDo.LAUNCHER.toString()), "no second user who may run this");
        glinteryDo.run("workshop", "new").done();
        assertThat(shell(AS_NOBODY, "touch", folder.resolve("workshop/x").toString()))
                .as("the folder is read-only for that user")
                .isFalse();
        List<Path> asItWas = files("workshop");
        nobody.run("kit", "list").refused(1, "can't be written to");
        nobody.run("workshop", "new", "--workshop", "other").refused(1, "can't be written to");
        assertThat(files("workshop")).isEqualTo(asItWas);
        assertThat(folder.resolve("other")).doesNotExist();
        Ran backup = glinteryDo.run("workshop", "backup", "nowhere/backup.zip");
        backup.refused(1);
    }

    @Test
    void losesNothing_whenTheDiskIsFull() throws IOException {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(
                shell(new String[] {}, "mount", "-t", "tmpfs", "-o", "size=4m", "none", disk.toString()),
                "no right to mount a small disk");
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
