package org.glintery.exchange.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.exchange.TestWorkshops.refusal;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Workshop;
import org.glintery.exchange.TestWorkshops;
import org.glintery.exchange.WholeWorkshop;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openide.util.Lookup;

class TableFilesTest {
    @TempDir
    Path temp;

    private final JsonCodec codec = Lookup.getDefault().lookup(JsonCodec.class);
    private Workshop first;
    private Workshop second;
    private Path zip;

    @BeforeEach
    void open() {
        first = TestWorkshops.create(temp.resolve("first"));
        second = TestWorkshops.create(temp.resolve("second"));
        zip = temp.resolve("tables.zip");
    }

    @AfterEach
    void close() {
        first.close();
        second.close();
    }

    private TableFiles out() {
        return first.find(TableFiles.class).orElseThrow();
    }

    private TableFiles in() {
        return second.find(TableFiles.class).orElseThrow();
    }

    private void put(String owner, String type, Json... bodies) {
        ChangeSet.Builder change = ChangeSet.named("Put");
        for (int i = 0; i < bodies.length; i++) {
            change.add(new Operation.PutRaw(
                    new RawDocument(new DocRef(owner, type, new UUID(1, i)), 3, (Json.Obj) bodies[i])));
        }
        first.apply(change.build()).orThrow();
    }

    private Json json(String text) {
        return codec.parse(text.replace('\'', '"'));
    }

    private String table(String name) throws IOException {
        try (var file = new ZipFile(zip.toFile())) {
            return new String(file.getInputStream(file.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private void rewrite(BiFunction<String, byte[], byte[]> change) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (var file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().map(ZipEntry.class::cast).toList()) {
                entries.put(entry.getName(), file.getInputStream(entry).readAllBytes());
            }
        }
        try (var made = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                byte[] bytes = change.apply(entry.getKey(), entry.getValue());
                if (bytes != null) {
                    made.putNextEntry(new ZipEntry(entry.getKey()));
                    made.write(bytes);
                }
            }
        }
    }

    private void assertUntouched(Refusal refusal, String code) {
        assertThat(refusal.code()).as(refusal.text()).isEqualTo(code);
        assertThat(refusal.text()).contains("Nothing was imported");
        assertThat(second.view().documents()).isEmpty();
        assertThat(second.history(5)).isEmpty();
        assertThat(second.folder().toFile().list()).noneMatch(name -> name.startsWith("import"));
    }

    @Test
    void bringsBackDocumentsOfAddOns_whateverTheyHold() {
        put(
                "club/../x",
                "péal.1",
                json(
                        "{'b':'','a':null,'n':1.50,'list':[],'map':{},'deep':{'deeper':{}},'t':'~x','q':'=1+1','neg':-0.0}"),
                json(
                        "{'a':'x','b':7,'list':[1,'two',null,[3,[]],{'k':[true]}],'map':{'':1,'a.b':{'z':2}},'deep':{'x':1}}"),
                json("{'list':'not a list','map':[1],'deep':'text','n':'text','1 odd key':{'..':0}}"),
                json("{'deep':{'y':1,'x':2}}"),
                json("{'deep':{'x':1,'y':2}}"),
                json("{}"));
        out().exportTables(zip).orThrow();
        in().importTables(zip).orThrow();
        WholeWorkshop.assertEqual(first, second);
    }

    @Test
    void bringsBackRandomDocuments() {
        long seed = 20_260_118;
        var random = new Random(seed);
        for (int kind = 0; kind < 12; kind++) {
            Json[] bodies = new Json[1 + random.nextInt(15)];
            Arrays.setAll(bodies, i -> object(random, 4));
            put("addon", "kind" + kind, bodies);
        }
        out().exportTables(zip).orThrow();
        try {
            in().importTables(zip).orThrow();
            WholeWorkshop.assertEqual(first, second);
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError("seed " + seed, e);
        }
    }

    private static Json object(Random random, int depth) {
        List<String> keys = List.of(
                "a", "b", "name", "size", "at", "key", "value", "document", "A", "x.y", "%", "(value)", "item", "");
        Map<String, Json> fields = new LinkedHashMap<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            fields.put(keys.get(random.nextInt(random.nextInt(4) == 0 ? keys.size() : 8)), value(random, depth - 1));
        }
        return new Json.Obj(fields);
    }

    private static Json value(Random random, int depth) {
        List<String> texts = List.of(
                "", "'", "~", "=A1", "-5", " blank ", "a,b;c", "\"", "\r\n", "\n", "é✓😀", "null", "0", "\t", "'=x",
                "\u0000");
        int kind = random.nextInt(depth > 0 ? 9 : 6);
        if (kind >= 7) {
            return object(random, depth);
        }
        if (kind == 6) {
            Json[] items = new Json[random.nextInt(4)];
            Arrays.setAll(items, i -> value(random, depth - 1));
            return new Json.Arr(List.of(items));
        }
        return switch (kind) {
            case 0 -> Json.NULL;
            case 1 -> new Json.Flag(random.nextBoolean());
            case 2 -> new Json.Num(BigDecimal.valueOf(random.nextInt(100_000) - 50_000, random.nextInt(4)));
            default -> new Json.Text(texts.get(random.nextInt(texts.size())));
        };
    }

    @Test
    void readsWellInASpreadsheet() throws IOException {
        WholeWorkshop.fill(first);
        out().exportTables(zip).orThrow();
        assertThat(table("stash.piece.csv"))
                .startsWith("\uFEFFdocument,version,order,title,kit,")
                .contains(",canvas.drilledWidthMm,")
                .contains(",pictures,");
        assertThat(table("stash.piece.pictures.csv")).startsWith("\uFEFFdocument,at,hash,mediaType,caption\r\n");
        assertThat(table("stash.legend.lines.csv")).contains("drill.shape,drill.sizeHundredths");
        assertThat(table("stash.legend.lines.extras.csv")).startsWith("\uFEFFdocument,at,at2,key,(value)\r\n");
        assertThat(table("movements.csv")).startsWith("\uFEFFsequence,").contains("recordedAt");
        assertThat(table("columns.csv")).contains("stash.piece,pictures,list\r\n");
        assertThat(table("README.txt")).startsWith("This zip holds a whole workshop");
        try (var file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().map(ZipEntry.class::cast).toList()) {
                if (entry.getName().endsWith(".csv")) {
                    assertThat(table(entry.getName()).substring(1).split("[,\n]\"?"))
                            .as(entry.getName())
                            .noneMatch(cell -> cell.startsWith("=") || cell.startsWith("+") || cell.startsWith("@"));
                }
            }
        }
    }

    @Test
    void takesTablesBack_thatASpreadsheetHasSavedAgain() throws IOException {
        put(
                "addon",
                "thing",
                json("{'flag':true,'size':2.5,'names':['one','two']}"),
                json("{'flag':false,'names':[]}"));
        out().exportTables(zip).orThrow();
        rewrite((name, bytes) -> {
            String text = new String(bytes, StandardCharsets.UTF_8);
            if (name.equals("addon.thing.csv")) {
                text = text.replace("\uFEFF", "")
                                .replace("true", "TRUE")
                                .replace("2.5", "\"2,5\"")
                                .replace("\r\n", "\n")
                        + ",,,,,\n";
            } else if (name.equals("addon.thing.names.csv")) {
                String[] rows = text.split("\r\n");
                text = rows[0] + "\n" + rows[2] + "\n" + rows[1] + "\n";
            }
            return text.getBytes(StandardCharsets.UTF_8);
        });
        in().importTables(zip).orThrow();
        WholeWorkshop.assertEqual(first, second);
    }

    @Test
    void keepsTheOrderInWhichThingsCame_overAllTablesAndHoweverTheirRowsWereSorted() throws IOException {
        for (int i = 0; i < 6; i++) {
            DocRef ref = new DocRef("addon", "kind" + i % 2, new UUID(7, 100 - i));
            first.apply(ChangeSet.named("Put")
                            .add(new Operation.PutRaw(new RawDocument(ref, 1, (Json.Obj) json("{'a':" + i + "}"))))
                            .build())
                    .orThrow();
        }
        List<DocRef> order = first.view().putOrder();
        out().exportTables(zip).orThrow();
        DocRef byHand = new DocRef("addon", "kind0", new UUID(7, 1));
        spoil("addon.kind0.csv", text -> {
            String[] rows = text.split("\r\n");
            return String.join("\n", rows[0], byHand.id() + ",1,,9", rows[3], rows[1], rows[2]);
        });
        in().importTables(zip).orThrow();
        assertThat(second.view().putOrder())
                .startsWith(order.toArray(DocRef[]::new))
                .endsWith(byHand);
    }

    @Test
    void refusesAWorkshop_thatIsNotEmpty() {
        out().exportTables(zip).orThrow();
        second.apply(ChangeSet.named("Shelve")
                        .create(Kit.TYPE, new UUID(1, 1), Kit.titled("Crane"))
                        .build())
                .orThrow();
        assertThat(refusal(in().importTables(zip)).code()).isEqualTo("not-empty");
    }

    @Test
    void neverWritesOverAFile() throws IOException {
        Files.writeString(zip, "precious");
        assertThat(refusal(out().exportTables(zip)).code()).isEqualTo("file-exists");
        assertThat(Files.readString(zip)).isEqualTo("precious");
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

    private void spoil(String table, UnaryOperator<String> change) throws IOException {
        rewrite((name, bytes) -> name.equals(table)
                ? change.apply(new String(bytes, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8)
                : bytes);
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
