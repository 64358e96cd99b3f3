package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.LedgerWork;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An import brings all or nothing, and leaves no picture behind that belongs to nothing. */
class JsonImportTest {
    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();
    private Workshop target;
    private String good;

    @BeforeEach
    void exportOne() throws IOException {
        try (Workshop source = workshops.create(temp.resolve("source")).orThrow()) {
            var work = new LedgerWork(11);
            source.apply(ChangeSet.named("a")
                            .create(Kit.TYPE, UUID.randomUUID(), Kit.titled("Rope-walk"))
                            .blob(Blob.of("image/png", new byte[] {1, 2, 3}))
                            .blob(Blob.of("image/jpeg", new byte[] {4, 5}))
                            .post(LedgerAction.Movement.of(
                                    new UUID(1, 1),
                                    LedgerWork.DRILLS.get(0),
                                    Spot.SUPPLIER,
                                    LedgerWork.SPOTS.get(0),
                                    Amount.counted(20),
                                    "bought"))
                            .build())
                    .orThrow();
            source.undo().orThrow();
            source.redo().orThrow();
            while (work.actions() < 100) {
                source.apply(work.next(LocalDate.of(2026, 1, 1)));
            }
            source.exportJson(temp.resolve("good.json")).orThrow();
        }
        good = Files.readString(temp.resolve("good.json"));
        target = workshops.create(temp.resolve("target")).orThrow();
    }

    @AfterEach
    void close() {
        target.close();
    }

    @Test
    void refusesWhatItRead_whenOthersWentOnMeanwhile() {
        target.apply(ChangeSet.named("meanwhile")
                        .create(Kit.TYPE, UUID.randomUUID(), Kit.titled("Net loft"))
                        .build())
                .orThrow();
        var read = new PreparedChange(UUID.randomUUID(), "Import", List.of(), List.of(), true);

        assertThat(((H2Workshop) target).apply(read))
                .isInstanceOfSatisfying(
                        Result.Refused.class,
                        no -> assertThat(no.refusal().code()).isEqualTo("not-empty"));
    }

    @Test
    void saysWhatIsWrongWithAFile_inPlainWords() throws IOException {
        Map.of(
                        "[]", "it does not begin as one",
                        "{}", "it does not say that it is one",
                        "{\"documents\":7}", "a list is missing",
                        "{\"documents\":[7]}", "an item of a list is not written as one",
                        "{\"format\":\"glintery-workshop\"} 7", "something follows its end")
                .forEach((text, words) -> assertThat(unchecked(text))
                        .isEqualTo("This is not an export of a workshop: " + words + ". Nothing was imported."));
    }

    private String unchecked(String text) {
        try {
            return words(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String imported(String text) throws IOException {
        return refusal(text).map(Refusal::code).orElse("ok");
    }

    private String words(String text) throws IOException {
        return refusal(text).map(Refusal::text).orElse("ok");
    }

    private Optional<Refusal> refusal(String text) throws IOException {
        Path file = Files.writeString(temp.resolve("try.json"), text);
        Result<?> result = target.importJson(file);
        if (!(result instanceof Result.Refused<?> refused)) {
            return Optional.empty();
        }
        assertThat(target.view().revision()).isZero();
        Path pictures = temp.resolve("target").resolve(BlobFolder.NAME);
        if (Files.exists(pictures)) {
            try (Stream<Path> files = Files.list(pictures)) {
                assertThat(files).isEmpty();
            }
        }
        return Optional.of(refused.refusal());
    }

    private String withDocument(String owner, String type, String id, String version) {
        String one = "{\"owner\":\"" + owner + "\",\"type\":\"" + type + "\",\"id\":\"" + id + "\",\"typeVersion\":"
                + version + ",\"body\":{\"title\":\"x\"}}";
        String text = good.replace("\"documents\" : [", "\"documents\" : [" + one + ",");
        assertThat(text).isNotEqualTo(good);
        return text;
    }

    @Test
    void refusesAPictureThatClaimsToBeHuge_inAnImportAndInAChange() throws IOException {
        Blob huge = Blob.of("image/png", TestPictures.claiming(60_000, 60_000));
        String item = "{\"hash\":\"" + huge.hash() + "\",\"mediaType\":\"image/png\",\"bytes\":\""
                + Base64.getEncoder().encodeToString(huge.bytes()) + "\"}";
        String hostile = good.replaceFirst("\"blobs\" : \\[", "\"blobs\" : [" + item + ",");
        assertThat(hostile).isNotEqualTo(good);
        assertThat(imported(hostile)).isEqualTo("picture-too-large");
        Result<?> applied = target.apply(ChangeSet.named("a").blob(huge).build());
        assertThat(((Result.Refused<?>) applied).refusal().text())
                .isEqualTo("A picture says it is 60\u2009000 x 60\u2009000 pixels, which is too large to open. "
                        + "Nothing was changed; save it smaller.");
        assertThat(target.view().blobs()).isEmpty();
    }

    @Test
    void refusesWhatIsNotWholeOrNotAnExport() throws IOException {
        for (int length : List.of(0, 1, good.length() / 3, good.length() / 2, good.length() - 3)) {
            assertThat(imported(good.substring(0, length)))
                    .as("%d characters", length)
                    .isEqualTo("unreadable");
        }
        for (String text : List.of("[]", "{}", "null", "{\"format\":\"other\",\"version\":1}", good + good)) {
            assertThat(imported(text))
                    .as(text.substring(0, Math.min(40, text.length())))
                    .isEqualTo("unreadable");
        }
    }

    @Test
    void refusesPartsThatCannotBe_andBringsNothing() throws IOException {
        String hash = Blob.hash(new byte[] {1, 2, 3});
        assertThat(good)
                .contains(hash)
                .contains("\"AQID\"")
                .contains("\"sides\"")
                .contains("\"Rope-walk\"");
        assertThat(imported(good.replace(hash, "0".repeat(64)))).isEqualTo("malformed");
        assertThat(imported(good.replace("\"AQID\"", "\"A!!\""))).isEqualTo("unreadable");
        assertThat(imported(good.replace("\"version\" : 1,", "\"version\" : 2,")))
                .isEqualTo("newer");
        assertThat(imported(good.replaceFirst("\"typeVersion\" : 1", "\"typeVersion\" : 1.5")))
                .isEqualTo("unreadable");
        assertThat(imported(
                        good.replaceFirst("\"from\" : \"supplier\"", "\"from\" : \"" + LedgerWork.SPOTS.get(4) + "\"")))
                .isEqualTo("not-enough");
        assertThat(imported(good.replaceFirst("\"fromVariance\" : -?[0-9]+", "\"fromVariance\" : -9000000000")))
                .isIn("malformed", "overflow");
    }

    @Test
    void saysInItsOwnWords_whichPartCannotBe() throws IOException {
        String hash = Blob.hash(new byte[] {1, 2, 3});
        assertThat(words(good.replace("\"AQID\"", "\"A!!\"")))
                .contains("the bytes of the picture " + hash + " are damaged")
                .doesNotContain("base64");
        assertThat(words(good.replaceFirst("\"typeVersion\" : 1", "\"typeVersion\" : 1.5")))
                .contains("the typeVersion of the document stash/")
                .endsWith(" is not a whole number. Nothing was imported.");
        assertThat(words(good.replaceFirst(
                        "\"documents\" : \\[",
                        "\"documents\" : [{\"owner\":\"stash\",\"type\":\"kit\",\"id\":\"seven\",\"body\":{}},")))
                .contains("'seven' can't be the id of a document of the kind stash/kit");
    }

    @Test
    void refusesADocumentThatDoesNotFitItsRecord_andNamesIt() throws IOException {
        String wrong = good.replace("\"Rope-walk\"", "[17]");
        assertThat(wrong).isNotEqualTo(good);
        assertThat(imported(wrong)).isEqualTo("unreadable");
        assertThat(target.view().documents()).isEmpty();
    }

    @Test
    void refusesADocumentThatIsNotNamedAsDocumentsAre_andSaysWhichOne() throws IOException {
        String id = new UUID(3, 3).toString();
        for (String owner : List.of("evil/../x", "..", "a..b", "", "two words", "esc\\u001b[31m", "line\\nbreak")) {
            assertThat(words(withDocument(owner, "piece", id, "1")))
                    .as(owner)
                    .contains(owner.replace("\\u001b", "").replace("\\n", " ") + "/piece/" + id)
                    .contains("does not fit")
                    .endsWith("Nothing was imported.");
            assertThat(imported(withDocument("piece", owner, id, "1"))).isEqualTo("unreadable");
        }
        for (String version : List.of("0", "-5")) {
            assertThat(words(withDocument("an-add-on", "piece", id, version)))
                    .contains("an-add-on/piece/" + id)
                    .contains("version " + version)
                    .endsWith("Nothing was imported.");
        }
        assertThat(words(withDocument("an-add-on", "piece", "1-1-1-1-1", "1")))
                .contains("'1-1-1-1-1' can't be the id of a document of the kind an-add-on/piece");
        assertThat(target.view().documents()).isEmpty();
        assertThat(imported(withDocument("an-add-on", "piece_2.old", id, "9"))).isEqualTo("ok");
    }

    @Test
    void refusesADocumentOrMovementThatIsThereTwice_andSaysWhichOne() throws IOException {
        String id = new UUID(3, 3).toString();
        good = withDocument("an-add-on", "piece", id, "1");
        assertThat(words(withDocument("an-add-on", "piece", id, "2")))
                .contains("the document an-add-on/piece/" + id + " is there twice")
                .endsWith("Nothing was imported.");
        int from = good.indexOf('{', good.indexOf("\"ledger\" : ["));
        String first = good.substring(from, good.indexOf('}', good.indexOf("\"recordedAt\"", from)) + 1);
        String twice = good.substring(0, from) + first + "," + good.substring(from);
        assertThat(words(twice))
                .contains("the movement " + new UUID(1, 1) + " is there twice")
                .endsWith("Nothing was imported.");
        assertThat(imported(good)).isEqualTo("ok");
    }

    @Test
    void takesControlCharactersOutOfOurOwnDocuments() throws IOException {
        assertThat(imported(good.replace("\"Rope-walk\"", "\"Rope\\u001b[31m-walk\\u0007\\u009b\"")))
                .isEqualTo("ok");
        assertThat(target.view().all(Kit.TYPE).get(0).value().title()).isEqualTo("Rope[31m-walk");
        target.exportJson(temp.resolve("again.json")).orThrow();
        assertThat(Files.readString(temp.resolve("again.json")))
                .contains("\"Rope[31m-walk\"")
                .doesNotContain("\\u001b")
                .doesNotContain("\u009b");
    }

    @Test
    void takesDocumentsOfAddOnsAsTheyAre() throws IOException {
        String foreign = "{\"owner\":\"an-add-on\",\"type\":\"piece\",\"id\":\"" + new UUID(3, 3)
                + "\",\"typeVersion\":9,\"body\":{\"title\":[17]}}";
        assertThat(imported(good.replaceFirst("\"documents\" : \\[", "\"documents\" : [" + foreign + ",")))
                .isEqualTo("ok");
        assertThat(target.view().documents()).anyMatch(one -> one.ref().owner().equals("an-add-on"));
    }

    @Test
    void isOneChange_andIsTakenBackAsOne() throws IOException {
        String empty = target.view().contentDigest();
        assertThat(imported(good)).isEqualTo("ok");
        assertThat(target.view().revision()).isEqualTo(1);
        assertThat(target.view().blobs()).hasSize(2);
        assertThat(target.check().problems()).isEmpty();
        String full = target.view().contentDigest();
        target.undo().orThrow();
        assertThat(target.view().contentDigest()).isEqualTo(empty);
        target.redo().orThrow();
        assertThat(target.view().contentDigest()).isEqualTo(full);
    }
}
