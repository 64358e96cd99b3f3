package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import java.util.UUID;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** Bad input at the verbs: the right exit code, a clear sentence, no trace of our insides, and nothing changed. */
@TestInstance(Lifecycle.PER_CLASS)
@Order(5)
class HostileTest {

    private static final UUID KEPT = UUID.fromString("6b1f0c9e-30b3-4ed3-9d2c-5f8f4b1a7d10");

    private Path folder;
    private GlinteryDo glinteryDo;
    private JsonNode before;

    @BeforeAll
    void makeAWorkshop(@TempDir Path scratch) {
        folder = scratch;
        glinteryDo = GlinteryDo.in(folder).with("GLINTERY_WORKSHOP", "workshop");
        glinteryDo.run("workshop", "new").done();
        glinteryDo.withInput(Posts.line(KEPT, 12), "drills", "post", "-").done();
        before = history();
    }

    @AfterAll
    void nothingWasChanged() {
        assertThat(history()).isEqualTo(before);
        glinteryDo.run("workshop", "check").done();
    }

    @Test
    void refusesCountsThatCannotBe() {
        move("-5").refused(2, "--count", "-5", "'glintery-do drills move --help' tells more.");
        move("99999999999999999999").refused(2, "--count");
        move("13").refused(1, "12", "13");
        move("lots").refused(2, "lots");
    }

    @Test
    void answersEveryBadLineOfAStream_andBooksNone() {
        String good = Posts.line(UUID.randomUUID(), 7).strip();
        List<String> bad = List.of(
                "{",
                "nonsense",
                "[]",
                "null",
                good.replace("\"count\":7", "\"count\":-7"),
                good.replace("\"count\":7", "\"count\":7.5"),
                good.replace("\"count\":7", "\"count\":9223372036854775808"),
                good.replace("\"count\":7", "\"count\":\"7\""),
                good.replace("\"supplier\"", "\"nowhere\""),
                good.replace("\"supplier\"", "\"bag:empty\""),
                good.replace("\"round\"", "\"oblong\""),
                good.replaceFirst("\"id\":\"[^\"]*\"", "\"id\":\"7\""),
                Posts.line(KEPT, 13).strip(),
                "[" + good + "," + good.replace("\"supplier\"", "\"nowhere\"") + "]",
                "[".repeat(5000));
        Ran ran = glinteryDo.withInput(String.join("\n", bad) + "\n", "drills", "post", "-", "--json");
        ran.refused(1);
        List<JsonNode> answers = ran.lines();
        assertThat(answers).hasSameSizeAs(bad);
        for (int i = 0; i < bad.size(); i++) {
            assertThat(answers.get(i).get("line").intValue()).isEqualTo(i + 1);
            assertThat(answers.get(i).at("/refused/text").asText())
                    .as(bad.get(i))
                    .isNotBlank();
        }
    }

    @Test
    void refusesPicturesThatAreNone_orTooLarge() throws IOException {
        glinteryDo.file("letter.png", "Dear reader");
        addWithCover("letter.png").refused(1, "not a picture");
        Files.write(folder.resolve("vast.png"), pngThatClaims(60_000, 60_000));
        addWithCover("vast.png").refused(1, "60");
        addWithCover("missing.png").refused(1, "missing.png");
        Files.write(folder.resolve("cut.jpg"), TestPictures.jpegThatBreaksOff());
        addWithCover("cut.jpg").refused(1, "cut.jpg", "not a picture");
    }

    @Test
    void takesAPictureOfAKindThatNeedsAPlugIn() throws IOException {
        Files.write(folder.resolve("cover.webp"), TestPictures.webp());
        GlinteryDo another = glinteryDo.with("GLINTERY_WORKSHOP", "pictures");
        another.run("workshop", "new").done();
        another.run("kit", "add", "--title", "Net loft", "--cover", "cover.webp")
                .done();
    }

    @Test
    void refusesLegendsThatAreNone_andNamesBadRows() throws IOException {
        Files.write(folder.resolve("junk.csv"), pngThatClaims(10, 10));
        glinteryDo.run("kit", "add", "--legend", "junk.csv").refused(1);
        glinteryDo.file("rows.csv", "Symbol,Code,Count\nA,T1,100\nB,T2,many\nC,T3,-4\n");
        glinteryDo.run("kit", "add", "--legend", "rows.csv").refused(1, "line 3", "line 4");
        glinteryDo.run("kit", "add", "--legend", "gone.csv").refused(1, "gone.csv");
    }

    @Test
    void refusesBackupsThatAreNone_andLeavesNoFolderBehind() throws IOException {
        glinteryDo.file("junk.zip", "PK not really");
        restore("junk.zip").refused(1);
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(folder.resolve("climbing.zip")))) {
            zip.putNextEntry(new ZipEntry("../climbed.txt"));
            zip.write(1);
        }
        restore("climbing.zip").refused(1);
        assertThat(folder.resolve("restored")).doesNotExist();
        assertThat(folder.resolve("climbed.txt")).doesNotExist();
    }

    @Test
    void namesWhoHasTheWorkshop_whenASecondProcessWantsIt() throws IOException {
        Process first = glinteryDo.start("drills", "post", "-");
        try (var out = new BufferedReader(new InputStreamReader(first.getInputStream(), StandardCharsets.UTF_8))) {
            first.getOutputStream().write(Posts.line(KEPT, 12).getBytes(StandardCharsets.UTF_8));
            first.getOutputStream().flush();
            assertThat(out.readLine()).as("said again, it counts once").isEqualTo(KEPT.toString());
            String pid = Long.toString(Posts.java(first).pid());
            Ran second = glinteryDo.run("kit", "list", "--json");
            second.refused(1, pid);
            assertThat(second.json().at("/refused/code").asText()).isEqualTo("in-use");
            Schemas.check("refused", second.out());
            first.getOutputStream().close();
            assertThat(out.readLine()).isNull();
        }
    }

    @Test
    void refusesFoldersThatHoldNoWorkshop_andMakesNone() {
        glinteryDo.run("kit", "list", "--workshop", "nowhere").refused(1, "nowhere");
        glinteryDo.run("workshop", "new", "--workshop", "workshop").refused(1, "workshop");
        assertThat(folder.resolve("nowhere")).doesNotExist();
    }

    @Test
    void refusesAWorkshopOfANewerGlintery() throws Exception {
        glinteryDo.run("workshop", "new", "--workshop", "newer").done();
        String url = "jdbc:h2:file:" + folder.resolve("newer/glintery") + ";user=sa";
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            assertThat(statement.executeUpdate("update meta set content = '999' where name = 'schema'"))
                    .isOne();
        }
        glinteryDo.run("kit", "list", "--workshop", "newer").refused(1, "newer Glintery");
        glinteryDo.run("workshop", "check", "--workshop", "newer").refused(1, "newer Glintery");
    }

    private Ran move(String count) {
        return glinteryDo.run("drills", "move", "T1", "--from", "bag:b1", "--to", "bag:b2", "--count", count);
    }

    private Ran addWithCover(String picture) {
        return glinteryDo.run("kit", "add", "--title", "Net loft", "--cover", picture);
    }

    private Ran restore(String file) {
        return glinteryDo.run("workshop", "restore", file, "--workshop", "restored");
    }

    private JsonNode history() {
        return glinteryDo.run("workshop", "history", "--json").done().json();
    }

    /** A PNG whose header is right and whose pixels are missing. */
    private static byte[] pngThatClaims(int widthPx, int heightPx) throws IOException {
        ByteArrayOutputStream header = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(header);
        data.writeBytes("IHDR");
        data.writeInt(widthPx);
        data.writeInt(heightPx);
        data.write(new byte[] {8, 2, 0, 0, 0});
        CRC32 crc = new CRC32();
        crc.update(header.toByteArray());
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        DataOutputStream file = new DataOutputStream(png);
        file.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        file.writeInt(13);
        file.write(header.toByteArray());
        file.writeInt((int) crc.getValue());
        return png.toByteArray();
    }
}
