package org.glintery.api.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file has its name once it is whole, however its writing ends. */
class NewFileTest {
    @TempDir
    Path temp;

    /** A process of its own that dies in the middle of writing, as on a power cut. */
    static final class Dying {
        public static void main(String[] arguments) {
            NewFile.write(Path.of(arguments[0]), out -> {
                out.write(new byte[1 << 20]);
                out.flush();
                Runtime.getRuntime().halt(7);
                return Result.ok("never");
            });
        }
    }

    @Test
    void hasNoNameYet_whenTheProcessDiesInTheMiddle() throws Exception {
        Path file = temp.resolve("workshop.json");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Dying.class.getName(),
                        file.toString())
                .inheritIO()
                .start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as("died while it wrote").isEqualTo(7);
        assertThat(names())
                .as("what it had written")
                .singleElement()
                .satisfies(part -> assertThat(part).startsWith("workshop.json.").endsWith(".part"));
        assertThat(file).doesNotExist();
        assertThat(NewFile.write(file, out -> Result.ok("again"))).isInstanceOf(Result.Ok.class);
    }

    @Test
    void leavesNothing_andTouchesNobodyElsesFile_whenWritingFails() throws IOException {
        Path file = temp.resolve("backup.zip");
        Files.writeString(temp.resolve("backup.zip.part"), "somebody's own");
        Result<String> failed = NewFile.write(file, out -> {
            out.write(1);
            assertThat(file).as("while it is written").doesNotExist();
            throw new IOException("No space left on device");
        });
        assertThat(failed)
                .isInstanceOfSatisfying(
                        Result.Refused.class,
                        refused -> assertThat(refused.refusal().code()).isEqualTo("disk-full"));
        assertThat(names()).containsExactly("backup.zip.part");
        assertThat(temp.resolve("backup.zip.part")).hasContent("somebody's own");
    }

    @Test
    void keepsTheOldFileUntilTheNewOneIsWhole() throws IOException {
        Path file = Files.writeString(temp.resolve("chart.json"), "old");
        Files.writeString(temp.resolve("chart.json.new"), "somebody's own");
        Result<String> failed = NewFile.replace(file, out -> {
            out.write(1);
            out.flush();
            throw new IOException("No space left on device");
        });
        assertThat(failed).isInstanceOf(Result.Refused.class);
        assertThat(file).hasContent("old");
        NewFile.replace(file, out -> {
                    out.write("new".getBytes(StandardCharsets.UTF_8));
                    assertThat(file).as("while it is written").hasContent("old");
                    return Result.ok("done");
                })
                .orThrow();
        assertThat(file).hasContent("new");
        assertThat(names()).containsExactlyInAnyOrder("chart.json", "chart.json.new");
        assertThat(temp.resolve("chart.json.new")).hasContent("somebody's own");
    }

    @Test
    void leavesAFolderThatHasTheName() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("charts"));
        assertThat(NewFile.replace(folder, out -> Result.ok("never")))
                .isEqualTo(Result.refused(
                        "is-folder", folder + " is a folder. Nothing was written; choose another name."));
        assertThat(names()).containsExactly("charts");
    }

    @Test
    void namesTheFolderThatIsNotThere() {
        for (Path folder : List.of(temp.resolve("nowhere"), temp.resolve("a").resolve("b"))) {
            assertThat(NewFile.write(folder.resolve("x.zip"), out -> Result.ok("never")))
                    .isEqualTo(Result.refused(
                            "no-folder",
                            "There is no folder " + folder + ". Nothing was written; choose another place."));
        }
    }

    @Test
    void keepsTheNameItHadWhileItWasWrittenToItself() throws IOException {
        Path file = temp.resolve("x".repeat(240));
        Result<String> failed = NewFile.write(file, out -> Result.ok("too long a name with what is added to it"));
        assertThat(failed)
                .isInstanceOfSatisfying(
                        Result.Refused.class,
                        refused -> assertThat(refused.refusal().text()).doesNotContain(".part"));
        assertThat(names()).isEmpty();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(temp)) {
            return files.map(path -> path.getFileName().toString()).toList();
        }
    }
}
