package org.glintery.club;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.stream.Stream;
import org.glintery.api.Json;
import org.glintery.club.signing.MemberKey;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a member finds who shares a folder with someone who does as they like in it. */
class RoomFolderTest {
    private final MemberKey ann = MemberKey.made(new SecureRandom());
    private final MemberKey bea = MemberKey.made(new SecureRandom());
    private final MemberKey mal = MemberKey.made(new SecureRandom());
    private final String club = ann.publicKey().memberId();

    @TempDir
    Path folder;

    private Peer first;
    private Peer second;

    @BeforeEach
    void twoMembersShareARoom() {
        first = new Peer(RoomCopy.empty(club), ann, new RoomFolder(folder));
        second = new Peer(RoomCopy.empty(club), bea, new RoomFolder(folder));
        first.write(
                "roll",
                "roll",
                Json.EMPTY.with(
                        "members",
                        new Json.Arr(List.of(new Json.Text(bea.publicKey().memberId())))));
        first.write("offer", "blue", body("20 packets"));
        first.sync();
        second.write("offer", "red", body("5 packets"));
        assertThat(second.sync()).isEmpty();
        assertThat(first.sync()).isEmpty();
        assertThat(first.texts()).isEqualTo(second.texts()).hasSize(3);
    }

    private static Json.Obj body(String words) {
        return Json.EMPTY.with("words", new Json.Text(words));
    }

    private Path file(String part) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().contains(part))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** What the second member finds; nothing that counts has changed, and afterwards the room is whole again. */
    private void assertFoundAndMended(Fault... faults) {
        List<String> before = second.texts();
        assertThat(second.sync()).extracting(Finding::fault).containsExactlyInAnyOrder(faults);
        assertThat(second.texts()).isEqualTo(before);
        first.sync();
        assertThat(first.texts()).isEqualTo(before);
        Peer newcomer = new Peer(RoomCopy.empty(club), bea, new RoomFolder(folder));
        newcomer.sync();
        assertThat(newcomer.texts()).isEqualTo(before);
    }

    @Test
    void noticesAnEdit() throws IOException {
        Path blue = file("blue");
        Files.writeString(blue, Files.readString(blue).replace("20 packets", "90 packets"));
        assertFoundAndMended(Fault.FORGED, Fault.MISSING);
    }

    @Test
    void noticesABlankAddedAtTheEnd() throws IOException {
        Path blue = file("blue");
        Files.writeString(blue, Files.readString(blue) + "\n");
        assertFoundAndMended(Fault.FORGED, Fault.MISSING);
    }

    @Test
    void noticesADeletion() throws IOException {
        Files.delete(file("blue"));
        assertFoundAndMended(Fault.MISSING);
    }

    @Test
    void noticesAnotherName() throws IOException {
        Files.move(file("blue"), folder.resolve("mine.json"));
        assertFoundAndMended(Fault.RENAMED, Fault.MISSING);
        assertThat(folder.resolve("mine.json")).as("tidied by its owner").doesNotExist();
    }

    @Test
    void noticesHalfAFile() throws IOException {
        Path blue = file("blue");
        String text = Files.readString(blue);
        Files.writeString(blue, text.substring(0, text.length() / 2));
        assertFoundAndMended(Fault.UNFINISHED, Fault.MISSING);
    }

    @Test
    void refusesAnOlderVersionThatIsPutBack() throws IOException {
        Path old = file("blue");
        String text = Files.readString(old);
        first.write("offer", "blue", body("10 packets"));
        first.sync();
        assertThat(old).as("tidied by its owner").doesNotExist();
        second.sync();
        Files.writeString(old, text);
        assertFoundAndMended(Fault.REPLAYED);
    }

    @Test
    void refusesADocumentThatWasTakenBack_alsoWhenItIsPutBack() throws IOException {
        Path old = file("blue");
        String text = Files.readString(old);
        first.remove("offer", "blue");
        first.sync();
        first.sync();
        second.sync();
        assertThat(second.texts()).hasSize(2);
        Files.writeString(old, text);
        assertFoundAndMended(Fault.REPLAYED);
    }

    @Test
    void refusesWhatAStrangerSigns_inTheirOwnNameOrAnothers() throws IOException {
        DocKey own = new DocKey(mal.publicKey().memberId(), "offer", "gold");
        DocKey stolen = new DocKey(club, "offer", "blue");
        Files.writeString(
                folder.resolve("a.json"),
                SignedDocument.signed(club, own, 1, false, body("all"), mal).text());
        Files.writeString(
                folder.resolve("b.json"),
                SignedDocument.signed(club, stolen, 9, false, body("none"), mal).text());
        assertFoundAndMended(Fault.FOREIGN_SIGNED, Fault.FOREIGN_SIGNED);
    }

    @Test
    void refusesWhatBelongsToAnotherClub() throws IOException {
        DocKey id = new DocKey(club, "offer", "blue");
        Files.writeString(
                folder.resolve("a.json"),
                SignedDocument.signed(mal.publicKey().memberId(), id, 9, false, body("none"), ann)
                        .text());
        assertFoundAndMended(Fault.OTHER_CLUB);
    }

    @Test
    void refusesWhatIsTooLarge_tooDeep_orNoDocument() throws IOException {
        Files.writeString(folder.resolve("a.json"), "{" + "\"a\":1,".repeat(1_000_000) + "\"b\":1}");
        Files.writeString(folder.resolve("b.json"), "[".repeat(50_000));
        Files.writeString(folder.resolve("c.json"), "[" + "1,".repeat(20_000) + "1]");
        Files.writeString(folder.resolve("d.json"), "{}");
        String text = Files.readString(file("blue"));
        Files.writeString(folder.resolve("e.json"), text.replace("\"name\":\"blue\"", "\"name\":\"../../blue\""));
        Files.write(folder.resolve("f.json"), new byte[] {(byte) 0xff, 0});
        Files.createDirectory(folder.resolve("g.json"));
        Files.createSymbolicLink(folder.resolve("h.json"), file("blue"));
        assertFoundAndMended(
                Fault.TOO_LARGE,
                Fault.TOO_DEEP,
                Fault.TOO_MANY,
                Fault.NOT_A_DOCUMENT,
                Fault.NOT_A_DOCUMENT,
                Fault.UNFINISHED,
                Fault.UNREADABLE,
                Fault.UNREADABLE);
    }

    @Test
    void takesOneOfTwoVersionsWithOneNumber_everywhereTheSame() {
        RoomCopy before = first.copy();
        first.write("offer", "blue", body("one thing"));
        first.sync();
        Peer twice = new Peer(before, ann, new RoomFolder(folder));
        twice.write("offer", "blue", body("another"));
        assertThat(twice.sync()).extracting(Finding::fault).contains(Fault.TWO_OF_ONE);
        second.sync();
        first.sync();
        assertThat(second.texts()).isEqualTo(first.texts()).isEqualTo(twice.texts());
    }

    @Test
    void showsMarkupInANameAsItStands() {
        second.write("member", "member", Json.EMPTY.with("name", new Json.Text("<html><b>../../x\u0007")));
        assertThat(second.copy().members()).extracting(Member::name).containsExactly("<html><b>../../x");
    }
}
