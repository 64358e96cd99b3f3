package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills the Java process while it books movements: whatever it printed is there afterwards, once, and nothing else. */
@Order(3)
class KillTest {

    private static final int ROUNDS = 10;
    private static final int LEAST_IDS = 50;
    private static final int MORE_IDS = 400;
    private static final int SENT_A_ROUND = 20_000;

    @TempDir
    Path folder;

    /** Id to count of all that was ever handed to the process, and the ids it printed. */
    private final Map<String, Integer> sent = new HashMap<>();

    private final Set<String> printed = new HashSet<>();

    @Test
    void keepsEveryPrintedMovementOnce_whenItsProcessIsKilled() throws Exception {
        long seed = new Random().nextLong();
        Random random = new Random(seed);
        GlinteryDo glinteryDo = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "workshop");
        glinteryDo.run("workshop", "new").done();
        for (int round = 1; round <= ROUNDS; round++) {
            String where = "round " + round + ", seed " + seed;
            killWhilePosting(glinteryDo, LEAST_IDS + random.nextInt(MORE_IDS), random, where);
            verify(glinteryDo, where);
        }
    }

    private void killWhilePosting(GlinteryDo glinteryDo, int killAfter, Random random, String where) throws Exception {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < SENT_A_ROUND; i++) {
            UUID id = new UUID(random.nextLong(), random.nextLong());
            sent.put(id.toString(), 1 + i);
            lines.add(Posts.line(id, 1 + i));
        }
        Process launcher = glinteryDo.start("drills", "post", "-");
        CompletableFuture<Void> feeding = CompletableFuture.runAsync(() -> feed(launcher, lines), GlinteryDo.THREADS);
        var out = new BufferedReader(new InputStreamReader(launcher.getInputStream(), StandardCharsets.UTF_8));
        int printedNow = 0;
        for (; printedNow < killAfter; printedNow++) {
            printed.add(read(out, where));
        }
        ProcessHandle java = Posts.java(launcher);
        assertThat(java.isAlive()).as("alive before, %s", where).isTrue();
        assertThat(java.destroyForcibly()).as("killed, %s", where).isTrue();
        java.onExit().get(30, TimeUnit.SECONDS);
        assertThat(ProcessHandle.of(java.pid()).filter(ProcessHandle::isAlive))
                .as("gone after, %s", where)
                .isEmpty();
        // what it had printed into the pipe counts too, but for a line cut off
        StringBuilder rest = new StringBuilder();
        for (int c = out.read(); c >= 0; c = out.read()) {
            rest.append((char) c);
        }
        rest.substring(0, rest.lastIndexOf("\n") + 1).lines().forEach(printed::add);
        feeding.get(30, TimeUnit.SECONDS);
        assertThat(launcher.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(launcher.exitValue())
                .as("the launcher tells the kill, %s", where)
                .isEqualTo(137);
        assertThat(rest.toString().lines().count() + printedNow)
                .as("lines were left unread, %s", where)
                .isLessThan(SENT_A_ROUND);
    }

    private void verify(GlinteryDo glinteryDo, String where) {
        Ran check = glinteryDo.run("workshop", "check", "--json").done();
        assertThat(check.json().get("problems")).as(where).isEmpty();
        assertThat(check.err()).as("no repair, %s", where).isEmpty();
        Map<String, Integer> booked = new HashMap<>();
        for (JsonNode entry :
                glinteryDo.run("drills", "ledger", "--json").done().json().get("movements")) {
            String id = entry.get("id").textValue();
            assertThat(booked.put(id, entry.get("count").intValue()))
                    .as("%s once, %s", id, where)
                    .isNull();
        }
        assertThat(booked.keySet()).as("printed ids, %s", where).containsAll(printed);
        booked.forEach((id, count) ->
                assertThat(sent.get(id)).as("%s as sent, %s", id, where).isEqualTo(count));
        assertThat(check.json().get("movements").intValue()).as(where).isEqualTo(booked.size());
    }

    private static String read(BufferedReader out, String where) throws IOException {
        String line = out.readLine();
        assertThat(line).as("an id, %s", where).isNotNull();
        assertThat(UUID.fromString(line)).isNotNull();
        return line;
    }

    private static void feed(Process launcher, List<String> lines) {
        try (OutputStream in = launcher.getOutputStream()) {
            for (String line : lines) {
                in.write(line.getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            // the pipe breaks when its reader is killed: that is the point
        }
    }
}
