package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.TimeUnit;
import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkshopLockTest {
    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();

    /** Run in a process of its own: exit code 0 when the lock could be had there, 7 when not. */
    static final class Other {
        public static void main(String[] arguments) throws IOException {
            try (FileChannel channel = FileChannel.open(Path.of(arguments[0]), StandardOpenOption.WRITE)) {
                Runtime.getRuntime().halt(channel.tryLock() == null ? 7 : 0);
            }
        }
    }

    private int tryFromAnotherProcess() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Other.class.getName(),
                        temp.resolve("w").resolve("workshop.lock").toString())
                .inheritIO()
                .start();
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return process.exitValue();
    }

    private static String code(Result<?> result) {
        return result instanceof Result.Refused<?> refused ? refused.refusal().code() : "ok";
    }

    @Test
    void keepsOtherProcessesOut_alsoAfterASecondOpenerInThisOneWasRefused() throws Exception {
        try (Workshop workshop = workshops.create(temp.resolve("w")).orThrow()) {
            assertThat(tryFromAnotherProcess()).isEqualTo(7);
            assertThat(code(workshops.open(temp.resolve("w")))).isEqualTo("in-use");
            assertThat(code(workshops.open(temp.resolve("w").resolve("..").resolve("w"))))
                    .isEqualTo("in-use");
            assertThat(tryFromAnotherProcess()).isEqualTo(7);
            assertThat(workshop.view().revision()).isZero();
        }
        assertThat(tryFromAnotherProcess()).isZero();
        workshops.open(temp.resolve("w")).orThrow().close();
    }

    @Test
    void opens_whenTheLastOwnerLeftItsNameButNoLock() throws Exception {
        workshops.create(temp.resolve("w")).orThrow().close();
        Files.writeString(temp.resolve("w").resolve("workshop.owner"), "process 1 on elsewhere, since long ago");
        workshops.open(temp.resolve("w")).orThrow().close();
    }

    @Test
    void refusesAFolderThatIsNotEmpty_andOneWithoutAWorkshop() throws Exception {
        Files.writeString(temp.resolve("letter.txt"), "dear");
        assertThat(code(workshops.create(temp))).isEqualTo("not-empty");
        assertThat(code(workshops.open(temp))).isEqualTo("no-workshop");
        assertThat(temp.resolve("letter.txt")).hasContent("dear");
        Files.write(temp.resolve(Database.FILE), new byte[5_000]);
        assertThat(code(workshops.open(temp))).isEqualTo("unreadable");
    }
}
