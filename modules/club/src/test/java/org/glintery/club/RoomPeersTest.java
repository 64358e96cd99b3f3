package org.glintery.club;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.glintery.club.signing.MemberKey;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Three processes with a folder each. What lies in one is copied to another file by file, in any order, some files only by
 * half, under any time; deletions do not travel. In the end all three hold the same.
 */
@Timeout(120)
class RoomPeersTest {
    private static final int ROUNDS = 40;

    @TempDir
    Path place;

    private final List<Process> processes = new ArrayList<>();
    private final List<PrintStream> orders = new ArrayList<>();
    private final List<BufferedReader> answers = new ArrayList<>();

    @AfterEach
    void end() {
        processes.forEach(Process::destroy);
    }

    @Test
    void convergeWhateverTheCopyingDoes() throws IOException {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        List<MemberKey> keys = Stream.of(1, 2, 3)
                .map(n -> {
                    byte[] bytes = new byte[MemberKey.SEED_BYTES];
                    Arrays.fill(bytes, n.byteValue());
                    return MemberKey.ofSeed(bytes);
                })
                .toList();
        for (MemberKey key : keys) {
            start(keys.get(0).publicKey().memberId(), key);
        }
        ask(
                0,
                "roll " + keys.get(1).publicKey().memberId() + " "
                        + keys.get(2).publicKey().memberId());
        int halves = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int member = random.nextInt(3);
            String name = "o" + random.nextInt(4);
            ask(member, random.nextInt(5) == 0 ? "remove " + name : "write " + name + " w" + round);
            ask(member, "sync");
            halves += copy(random, folder(random.nextInt(3)), folder(random.nextInt(3)), true);
            ask(random.nextInt(3), "sync");
        }
        assertThat(halves).as("files cut short, seed %d", seed).isPositive();
        for (int member = 0; member < 3; member++) {
            ask(member, "write last w" + member);
            ask(member, "sync");
        }
        for (int round = 0; round < 4; round++) {
            for (int from = 0; from < 3; from++) {
                for (int to = 0; to < 3; to++) {
                    copy(random, folder(from), folder(to), false);
                    ask(to, "sync");
                }
            }
        }
        String first = ask(0, "print");
        assertThat(first).as("seed %d", seed).contains("w0", "w1", "w2");
        assertThat(keys)
                .allSatisfy(key -> assertThat(first).contains(key.publicKey().memberId()));
        assertThat(ask(1, "print")).as("seed %d", seed).isEqualTo(first);
        assertThat(ask(2, "print")).as("seed %d", seed).isEqualTo(first);
    }

    private Path folder(int member) {
        return place.resolve("m" + member);
    }

    private void start(String club, MemberKey key) throws IOException {
        Path folder = Files.createDirectory(folder(processes.size()));
        String classes = Optional.ofNullable(System.getProperty("surefire.test.class.path"))
                .orElse(System.getProperty("java.class.path"));
        Process process = new ProcessBuilder(
                        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                        "-cp",
                        classes,
                        PeerProcess.class.getName(),
                        club,
                        HexFormat.of().formatHex(key.seed()),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        processes.add(process);
        orders.add(new PrintStream(process.getOutputStream(), true, StandardCharsets.UTF_8));
        answers.add(new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)));
    }

    private String ask(int member, String order) throws IOException {
        orders.get(member).println(order);
        String answer = answers.get(member).readLine();
        assertThat(answer).as("answer of member %d to %s", member, order).isNotNull();
        return answer;
    }

    /** How many files were cut short. Files that are not whole where they come from are copied as they are. */
    private static int copy(Random random, Path from, Path to, boolean badly) throws IOException {
        if (from.equals(to)) {
            return 0;
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(from)) {
            files = new ArrayList<>(all.sorted().toList());
        }
        Collections.shuffle(files, random);
        int halves = 0;
        for (Path file : files.subList(0, badly ? random.nextInt(files.size() + 1) : files.size())) {
            Path copy = to.resolve(file.getFileName());
            if (badly && random.nextInt(4) == 0) {
                byte[] bytes = Files.readAllBytes(file);
                Files.write(copy, Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)));
                halves++;
            } else {
                Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
            }
            Files.setLastModifiedTime(copy, FileTime.fromMillis(random.nextLong() >>> 20));
        }
        return halves;
    }
}
