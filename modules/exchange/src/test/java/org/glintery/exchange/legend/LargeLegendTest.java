package org.glintery.exchange.legend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LargeLegendTest {
    private static final Assumed ASSUMED = new Assumed("own", Optional.empty());

    @TempDir
    Path temp;

    private final LegendReader reader = (LegendReader) new LegendReading().create(null);

    private Path file(String header, String row, int times) throws IOException {
        Path file = temp.resolve("legend.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(header);
            for (int i = 0; i < times; i++) {
                out.write(row);
            }
        }
        return file;
    }

    private Refusal refusal(Path file) {
        Result<Reading> result = reader.read(file, ASSUMED);
        assertThat(result).isInstanceOf(Result.Refused.class);
        return ((Result.Refused<Reading>) result).refusal();
    }

    @Test
    void refusesAMillionRowsAtOnce_readingNoMoreThanALegendHolds() throws IOException {
        Path file = file("symbol,code,name,needed\n", "A,T1,Rope brown,1234\n", 1_000_000);
        Refusal refusal = assertTimeout(Duration.ofSeconds(2), () -> refusal(file));
        assertThat(refusal.code()).isEqualTo("too-long");
        assertThat(refusal.text()).contains("more than 1\u2009000 rows");
    }

    @Test
    void readsALegendOfAThousandLines_butNotOneMore() throws IOException {
        assertThat(reader.read(file("Rope-walk\nsymbol,code\n", "A,T1\n", 1_000), ASSUMED)
                        .orThrow()
                        .lines())
                .hasSize(1_000);
        assertThat(refusal(file("Rope-walk\nsymbol,code\n", "A,T1\n", 1_001)).code())
                .isEqualTo("too-long");
    }

    @Test
    void readsPastAMillionBlankRows_asSpreadsheetsLeaveThem() throws IOException {
        Path file = file("symbol,code\nA,T1\n", ",\n", 1_000_000);
        Reading reading = assertTimeout(
                Duration.ofSeconds(10), () -> reader.read(file, ASSUMED).orThrow());
        assertThat(reading.lines()).hasSize(1);
    }

    @Test
    void refusesMoreTextThanALegendHolds() throws IOException {
        Path file = file("symbol,code,note\n", "A,T1," + "x".repeat(20_000) + "\n", 100);
        assertThat(refusal(file).code()).isEqualTo("too-large");
    }

    @Test
    void refusesAFileOverTheLimit_withoutReadingIt() throws IOException {
        Path file = temp.resolve("huge.csv");
        try (var sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength((64L << 20) + 1);
        }
        assertThat(refusal(file).code()).isEqualTo("too-large");
    }

    @Test
    void refusesARowOfEndlessColumns_andACellWithoutEnd() throws IOException {
        Path wide = file("symbol,code\n", ",".repeat(5_000_000), 1);
        assertThat(reader.read(wide, ASSUMED).orThrow().badRows()).hasSize(1);
        Path endless = file("symbol,code\nA,\"", "endless ", 1_000_000);
        assertThat(reader.read(endless, ASSUMED).orThrow().badRows()).hasSize(1);
    }

    @Test
    void refusesFilesThatAreNoText() throws IOException {
        Path zip =
                Files.write(temp.resolve("sheet.xlsx"), new byte[] {'P', 'K', 3, 4, 20, 0, 6, 0, 8, 0, 0, 0, 33, 0, 1});
        assertThat(refusal(zip).code()).isEqualTo("not-a-legend");
        Path picture = Files.write(
                temp.resolve("a.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13});
        assertThat(refusal(picture).code()).isEqualTo("not-a-legend");
    }
}
