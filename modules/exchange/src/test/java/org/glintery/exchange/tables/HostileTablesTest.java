package org.glintery.exchange.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.exchange.TestWorkshops.refusal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Blob;
import org.glintery.exchange.WholeWorkshop;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables that are spoilt or meant to harm: each a sentence, and nothing is taken in. */
class HostileTablesTest extends TablesFixture {
    private void assertUntouched(Refusal refusal, String code) {
        assertThat(refusal.code()).as(refusal.text()).isEqualTo(code);
        assertThat(refusal.text()).contains("Nothing was imported");
        assertThat(second.view().documents()).isEmpty();
        assertThat(second.history(5)).isEmpty();
        assertThat(second.folder().toFile().list()).noneMatch(name -> name.startsWith("import"));
    }

    @Test
    void refusesWhatIsNoZip() throws IOException {
        assertUntouched(refusal(in().importTables(temp.resolve("gone.zip"))), "unreadable");
        Files.write(zip, new byte[] {1, 2, 3});
        assertUntouched(refusal(in().importTables(zip)), "not-tables");
        try (var other = new ZipOutputStream(Files.newOutputStream(zip))) {
            other.putNextEntry(new ZipEntry("letter.txt"));
        }
        assertUntouched(refusal(in().importTables(zip)), "damaged");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../evil.csv", "pictures/../../evil", "/etc/evil", "C:\\evil", "a\\..\\evil"})
    void refusesNames_thatLeadOutOfTheZip(String name) throws IOException {
        try (var evil = new ZipOutputStream(Files.newOutputStream(zip))) {
            evil.putNextEntry(new ZipEntry(name));
        }
        assertUntouched(refusal(in().importTables(zip)), "unsafe-names");
    }

    @Test
    void refusesAZipBomb() throws IOException {
        WholeWorkshop.fill(first);
        out().exportTables(zip).orThrow();
        byte[] whole = Files.readAllBytes(zip);
        byte[] blanks = "\r\n".repeat(20_000_000).getBytes(StandardCharsets.UTF_8);
        for (String victim : List.of("stash.kit.csv", "columns.csv", "movements.csv")) {
            Files.write(zip, whole);
            rewrite((name, bytes) -> name.equals(victim) ? joined(bytes, blanks) : bytes);
            assertThat(Files.size(zip)).isLessThan(200_000);
            assertUntouched(refusal(in().importTables(zip)), victim.equals("columns.csv") ? "damaged" : "too-large");
        }
        Files.write(zip, whole);
        byte[] zeros = new byte[65 << 20];
        rewrite((name, bytes) -> name.startsWith("pictures/") ? zeros : bytes);
        assertUntouched(refusal(in().importTables(zip)), "too-large");
    }

    private static byte[] joined(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    @Test
    void refusesAPictureThatClaimsToBeHuge() throws IOException {
        WholeWorkshop.fill(first);
        out().exportTables(zip).orThrow();
        byte[] huge = TestPictures.claiming(60_000, 60_000);
        String old = first.view().blobs().entrySet().stream()
                .filter(blob -> blob.getValue().equals("image/png"))
                .findFirst()
                .orElseThrow()
                .getKey();
        spoil("blobs.csv", text -> text.replace(old, Blob.hash(huge)));
        Map<String, byte[]> parts = new LinkedHashMap<>();
        rewrite((name, bytes) -> {
            if (name.contains(old)) {
                parts.put(name.replace(old, Blob.hash(huge)), huge);
                return null;
            }
            parts.put(name, bytes);
            return bytes;
        });
        try (var made = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                made.putNextEntry(new ZipEntry(part.getKey()));
                made.write(part.getValue());
            }
        }
        assertUntouched(refusal(in().importTables(zip)), "picture-too-large");
    }

    @Test
    void namesThePlace_whereTablesAreWrong() throws IOException {
        WholeWorkshop.fill(first);
        out().exportTables(zip).orThrow();
        byte[] whole = Files.readAllBytes(zip);
        spoil("stash.kit.csv", text -> text.replaceFirst("3\\.50|\\d+\\.50", "dear"));
        assertThat(refusal(in().importTables(zip)).text())
                .contains("stash.kit.csv, line 2")
                .contains("'dear' is not a number");
        Files.write(zip, whole);
        spoil("columns.csv", text -> text.replaceFirst("stash\\.kit,", "sta%zz.kit,"));
        assertThat(refusal(in().importTables(zip)).text()).contains("columns.csv, line ", "is not as it should be");
        Files.write(zip, whole);
        spoil("stash.piece.pictures.csv", text -> text.substring(0, text.lastIndexOf("\r\n", text.length() - 3) + 2));
        assertThat(refusal(in().importTables(zip)).text())
                .contains("stash.piece.pictures.csv does not hold as many rows");
        Files.write(zip, whole);
        spoil("movements.csv", text -> {
            String[] rows = text.split("(?<=\r\n)(?=[0-9])");
            return rows[0] + rows[2] + rows[1];
        });
        assertThat(refusal(in().importTables(zip)).text()).contains("movements.csv is not in its order");
        Files.write(zip, whole);
        rewrite((name, bytes) -> name.startsWith("pictures/") ? null : bytes);
        assertThat(refusal(in().importTables(zip)).text()).contains("is missing from this zip");
        Files.write(zip, whole);
        rewrite((name, bytes) -> name.startsWith("pictures/") ? new byte[] {5} : bytes);
        assertUntouched(refusal(in().importTables(zip)), "damaged");
    }

    @Test
    void answersSpoiltTables_withoutAnException() throws IOException {
        long seed = 99;
        var random = new Random(seed);
        WholeWorkshop.fill(first);
        out().exportTables(zip).orThrow();
        byte[] whole = Files.readAllBytes(zip);
        int refused = 0;
        for (int round = 0; round < 60 && second.view().documents().findAny().isEmpty(); round++) {
            Files.write(zip, whole);
            rewrite((name, bytes) -> {
                for (int i = 0; i < bytes.length / 200 + 1 && !name.equals("README.txt"); i++) {
                    bytes[random.nextInt(bytes.length)] = (byte) ",\"\n~'9z%".charAt(random.nextInt(8));
                }
                return bytes;
            });
            byte[] spoilt = Files.readAllBytes(zip);
            Files.write(zip, round % 4 == 0 ? Arrays.copyOf(spoilt, random.nextInt(spoilt.length)) : spoilt);
            try {
                refused += in().importTables(zip) instanceof Result.Refused ? 1 : 0;
            } catch (RuntimeException e) {
                throw new AssertionError("seed " + seed + ", round " + round, e);
            }
        }
        assertThat(refused).isGreaterThan(50);
    }
}
