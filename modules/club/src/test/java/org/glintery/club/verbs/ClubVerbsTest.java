package org.glintery.club.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.glintery.api.Json;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.club.Club;
import org.glintery.club.DocKey;
import org.glintery.club.RoomCopy;
import org.glintery.testkit.FakeCall;
import org.glintery.testkit.MemoryWorkshop;
import org.glintery.testkit.PlainCodec;
import org.glintery.testkit.guard.Guarded;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two members with a workshop each, and the folder between them. */
@Guarded
class ClubVerbsTest {
    private static final String KEYS = "glintery.keys";

    @TempDir
    Path place;

    private final MemoryWorkshop ann = new MemoryWorkshop();
    private final MemoryWorkshop bea = new MemoryWorkshop();
    private Path room;
    private String code;

    @BeforeEach
    void startAClub() throws Exception {
        System.setProperty(KEYS, place.resolve("keys").toString());
        room = Files.createDirectory(place.resolve("room"));
        code = ((Entered) answer(
                        new ClubNewVerb(), call(ann).with("name", "Ferry town").with("as", "Ann")))
                .club();
    }

    @AfterEach
    void close() {
        System.clearProperty(KEYS);
        ann.close();
        bea.close();
    }

    private FakeCall call(MemoryWorkshop workshop) {
        return new FakeCall(workshop).with("room", room.toString());
    }

    private static Record answer(Verb verb, FakeCall call) throws Exception {
        VerbResult result = verb.run(call);
        assertThat(result).isInstanceOf(VerbResult.Said.class);
        VerbResult.Said said = (VerbResult.Said) result;
        assertThat(said.answer()).isInstanceOf(verb.answers());
        assertThat(said.text()).isNotBlank();
        PlainCodec codec = new PlainCodec();
        Json json = codec.toJson(said.answer());
        assertThat(codec.parse(codec.compact(json))).isEqualTo(json);
        assertThat(faults(verb, codec.compact(json))).isEmpty();
        assertThat(faults(verb, "{\"club\":1}")).isNotEmpty();
        return said.answer();
    }

    /** What the verb's committed schema finds wrong with an answer. */
    private static List<?> faults(Verb verb, String json) throws IOException {
        String schema = verb.name().replace(' ', '-') + ".schema.json";
        try (InputStream in = verb.getClass().getResourceAsStream(schema)) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .validate(json, InputFormat.JSON);
        }
    }

    private static String refusal(Verb verb, FakeCall call) throws Exception {
        VerbResult result = verb.run(call);
        assertThat(result).isInstanceOf(VerbResult.Refused.class);
        assertThat(((VerbResult.Refused) result).refusal().text()).isNotBlank();
        return ((VerbResult.Refused) result).refusal().code();
    }

    private RoomAnswer sync(MemoryWorkshop workshop) throws Exception {
        return (RoomAnswer) answer(new RoomSyncVerb(), call(workshop));
    }

    private ClubMembersVerb.Members members(FakeCall call) throws Exception {
        return (ClubMembersVerb.Members) answer(new ClubMembersVerb(), call);
    }

    private void beaJoins() throws Exception {
        sync(ann);
        answer(new ClubJoinVerb(), call(bea).with("code", code).with("as", "Bea"));
        sync(bea);
        sync(ann);
        members(call(ann).with("admit", "bea"));
        sync(ann);
        sync(bea);
    }

    @Test
    void admitsWhoAsks_andWhatOneWritesReachesTheOther() throws Exception {
        sync(ann);
        answer(new ClubJoinVerb(), call(bea).with("code", code).with("as", "Bea"));
        assertThat(refusal(new ClubMembersVerb(), call(bea).with("admit", "Bea")))
                .isEqualTo("not-organiser");
        sync(bea);
        sync(ann);
        assertThat(members(call(ann)).members())
                .extracting(ClubMembersVerb.Line::name, ClubMembersVerb.Line::admitted)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple("Ann", true),
                        org.assertj.core.api.Assertions.tuple("Bea", false));
        members(call(ann).with("admit", "bea").with("keep", "Cor"));
        sync(ann);
        sync(bea);
        assertThat(members(call(bea)).members())
                .extracting(ClubMembersVerb.Line::name, line -> line.keptBy().isPresent())
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple("Ann", false),
                        org.assertj.core.api.Assertions.tuple("Bea", false),
                        org.assertj.core.api.Assertions.tuple("Cor", true));
        assertThat(members(call(bea)).name()).contains("Ferry town");

        Club club = bea.find(Club.class).orElseThrow();
        bea.apply(club.write(bea.view(), "offer", "blue", Json.EMPTY.with("packets", Json.Num.of(3)))
                        .orThrow())
                .orThrow();
        sync(bea);
        assertThat(sync(ann).received()).isEqualTo(1);
        DocKey key = new DocKey(club.membership(bea.view()).orElseThrow().member(), "offer", "blue");
        RoomCopy copy = ann.find(Club.class).orElseThrow().copy(ann.view());
        assertThat(copy.find(key).orElseThrow().body().number("packets").orElseThrow())
                .isEqualByComparingTo("3");

        members(call(ann).with("remove", "Bea"));
        assertThat(ann.find(Club.class).orElseThrow().copy(ann.view()).find(key))
                .isEmpty();
    }

    @Test
    void namesWhatIsRefused_andACheckChangesNothing() throws Exception {
        beaJoins();
        Path card;
        try (Stream<Path> files = Files.list(room)) {
            card = files.filter(f -> f.getFileName().toString().startsWith(code + ".member"))
                    .findFirst()
                    .orElseThrow();
        }
        Files.writeString(card, Files.readString(card).replace("\"Ann\"", "\"Mal\""));
        String before = bea.view().contentDigest();
        String lying = Files.readString(card);
        RoomAnswer checked = (RoomAnswer) answer(new RoomCheckVerb(), call(bea));
        assertThat(checked.findings())
                .extracting(RoomAnswer.Found::reason)
                .containsExactlyInAnyOrder("forged", "missing");
        assertThat(checked.findings())
                .allSatisfy(found -> assertThat(found.text()).isNotBlank());
        assertThat(bea.view().contentDigest()).isEqualTo(before);
        assertThat(Files.readString(card)).isEqualTo(lying);
        sync(bea);
        assertThat(Files.readString(card)).contains("\"Ann\"");
        assertThat(((RoomAnswer) answer(new RoomCheckVerb(), call(ann))).findings())
                .isEmpty();
    }

    @Test
    void bringsAMemberBack_fromTheirSheet() throws Exception {
        Path sheet = place.resolve("sheet.txt");
        sync(ann);
        answer(
                new ClubJoinVerb(),
                call(bea).with("code", code).with("as", "Bea").with("sheet", sheet.toString()));
        String id = bea.find(Club.class)
                .orElseThrow()
                .membership(bea.view())
                .orElseThrow()
                .member();
        try (Stream<Path> files = Files.list(place.resolve("keys"))) {
            List<Path> keys = files.toList();
            for (Path key : keys) {
                Files.delete(key);
            }
        }
        assertThat(bea.find(Club.class).orElseThrow().key(bea.view()).then(key -> org.glintery.api.Result.ok("found")))
                .isInstanceOf(org.glintery.api.Result.Refused.class);
        try (MemoryWorkshop anew = new MemoryWorkshop()) {
            Entered back = (Entered) answer(
                    new ClubJoinVerb(),
                    call(anew).with("code", code).with("as", "Bea").with("recover", sheet.toString()));
            assertThat(back.member()).isEqualTo(id);
        }
        Files.writeString(sheet, "no key");
        try (MemoryWorkshop other = new MemoryWorkshop()) {
            assertThat(refusal(
                            new ClubJoinVerb(),
                            call(other).with("code", code).with("as", "Bea").with("recover", sheet.toString())))
                    .isEqualTo("no-sheet");
        }
    }

    @Test
    void refusesInWords_whatCantBe() throws Exception {
        assertThat(refusal(new ClubNewVerb(), call(ann).with("name", "Other").with("as", "Ann")))
                .isEqualTo("in-a-club");
        assertThat(refusal(new RoomSyncVerb(), call(bea))).isEqualTo("no-club");
        assertThat(refusal(new RoomCheckVerb(), call(bea))).isEqualTo("no-club");
        assertThat(refusal(new ClubMembersVerb(), call(bea))).isEqualTo("no-club");
        FakeCall nowhere = new FakeCall(bea)
                .with("room", place.resolve("gone").toString())
                .with("name", "Other")
                .with("as", "Bea");
        assertThat(refusal(new ClubNewVerb(), nowhere)).isEqualTo("no-folder");
        assertThat(new ClubJoinVerb().run(call(bea).with("code", "xyz").with("as", "Bea")))
                .isInstanceOf(VerbResult.WrongUsage.class);
        Files.delete(room);
        assertThat(refusal(new RoomSyncVerb(), call(ann))).isEqualTo("no-room");
    }
}
