package org.glintery.exchange.legend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the bytes: an answer, no exception, in bounded time. */
class LegendFuzzTest {
    private static final long SEED = 20_260_117;
    private static final Assumed ASSUMED = new Assumed("own", Optional.empty());
    private static final List<String> FIXTURES = List.of(
            "utf8.csv",
            "utf16-little-mark-tabs.csv",
            "utf16-big.csv",
            "latin1-bars.csv",
            "quotes.csv",
            "bad-rows.csv",
            "no-header.csv");
    private static final String SIGNS = "\",;\t|\n\r'#=-+.0123456789 aAé\u0000\uD83D\u00a0";

    @TempDir
    Path temp;

    private final LegendReader reader = (LegendReader) new LegendReading().create(null);
    private int readings;
    private int refusals;

    private void answers(byte[] bytes, String what) throws IOException {
        Path file = Files.write(temp.resolve("fuzz.csv"), bytes);
        count(what, () -> reader.read(file, ASSUMED));
    }

    private void count(String what, java.util.function.Supplier<Result<Reading>> work) {
        long start = System.nanoTime();
        Result<Reading> result;
        try {
            result = work.get();
        } catch (RuntimeException e) {
            throw new AssertionError(what + ", seed " + SEED, e);
        }
        assertThat(Duration.ofNanos(System.nanoTime() - start))
                .as(what + ", seed " + SEED)
                .isLessThan(Duration.ofSeconds(5));
        if (result instanceof Result.Ok<Reading>) {
            readings++;
        } else {
            refusals++;
        }
    }

    @Test
    void answersAnything_withoutAnException() throws IOException {
        var random = new Random(SEED);
        for (String name : FIXTURES) {
            byte[] whole = getClass().getResourceAsStream(name).readAllBytes();
            for (int length = 0; length < whole.length; length++) {
                answers(Arrays.copyOf(whole, length), name + " cut to " + length);
            }
            for (int round = 0; round < 400; round++) {
                byte[] spoilt = whole.clone();
                for (int i = random.nextInt(8); i >= 0; i--) {
                    spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
                }
                answers(spoilt, name + " spoilt in round " + round);
            }
        }
        for (int round = 0; round < 500; round++) {
            byte[] bytes = new byte[random.nextInt(3_000)];
            random.nextBytes(bytes);
            answers(bytes, "random bytes in round " + round);
        }
        for (int round = 0; round < 3_000; round++) {
            var text = new StringBuilder(round % 2 == 0 ? "symbol,code,needed\n" : "");
            for (int i = random.nextInt(200); i >= 0; i--) {
                text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
            }
            count("random signs in round " + round, () -> reader.readText(text.toString(), ASSUMED));
            answers(text.toString().getBytes(StandardCharsets.UTF_8), "random signs as UTF-8 in round " + round);
        }
        assertThat(readings).as("some were read").isGreaterThan(1_000);
        assertThat(refusals).as("some were refused").isGreaterThan(500);
    }
}
