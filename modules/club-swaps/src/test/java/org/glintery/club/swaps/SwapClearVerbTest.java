package org.glintery.club.swaps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.glintery.api.verb.VerbResult;
import org.glintery.testkit.FakeCall;
import org.glintery.testkit.PlainCodec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwapClearVerbTest {

    /** As in the description of the verb, with someone who has what the first wants. */
    private static final String ROUND = """
            {"packet":1,
             "members":[
               {"id":"Ann","tolerancePackets":0,"offers":[{"kind":"k1","packets":2}],
                "wants":[{"anyOf":["k2","k7"],"packets":2,"priority":1}]},
               {"id":"Bea","tolerancePackets":0,"offers":[{"kind":"k2","packets":1},{"kind":"k7","packets":1}],
                "wants":[{"anyOf":["k1"],"packets":1,"priority":1},{"anyOf":["k1","k9"],"packets":3,"priority":2}]},
               {"id":"Cor","wants":[{"anyOf":["k1"],"packets":1}]}],
             "postage":{"default":2.5}}
            """;

    @TempDir
    Path folder;

    @Test
    void answersWithTransfersAndWhatIsProven() throws IOException {
        Cleared cleared = answer(ROUND);
        assertThat(cleared.transfers())
                .extracting(Cleared.Packets::from, Cleared.Packets::to, Cleared.Packets::kind, Cleared.Packets::packets)
                .containsExactly(
                        tuple("Ann", "Bea", "k1", 2), tuple("Bea", "Ann", "k2", 1), tuple("Bea", "Ann", "k7", 1));
        assertThat(cleared.wantsMet()).isEqualTo(4);
        assertThat(cleared.bound()).isEqualTo(4);
        assertThat(cleared.proven()).isTrue();
        assertThat(cleared.parcels()).isEqualTo(2);
        assertThat(cleared.postage()).isEqualTo(new BigDecimal("5"));
    }

    @Test
    void answersAsItsSchemaSays_toAFileAsItsSchemaSays() throws IOException {
        assertThat(faults("round.schema.json", ROUND)).isEmpty();
        var codec = new PlainCodec();
        String through = ROUND.replace("{\"default\":2.5}", "{\"default\":2.5,\"organiser\":\"Cor\"}");
        for (String round : new String[] {ROUND, through, "{\"members\":[]}"}) {
            String answer = codec.compact(codec.toJson(answer(round)));
            assertThat(faults("swap-clear.schema.json", answer)).as(answer).isEmpty();
        }
        assertThat(faults("swap-clear.schema.json", "{\"transfers\":[],\"wantsMet\":-1}"))
                .isNotEmpty();
        assertThat(faults("round.schema.json", "{\"members\":[{\"offers\":[]}]}"))
                .isNotEmpty();
    }

    private static List<?> faults(String schema, String json) throws IOException {
        try (InputStream in = SwapClearVerb.class.getResourceAsStream(schema)) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .validate(json, InputFormat.JSON);
        }
    }

    @Test
    void tellsEachMemberInWords() throws IOException {
        assertThat(said(ROUND).text()).isEqualTo("""
                        4 of 7 wanted packets change hands; no plan does better.
                        2 parcels, 5 in postage; for the same packets it can't be less.
                        Ann: you send 2 packets to one person, you get 2.
                          to Bea: 2 of k1
                        Bea: you send 2 packets to one person, you get 2.
                          to Ann: 1 of k2, 1 of k7""".stripTrailing());
    }

    @Test
    void tellsOfGiftsAndOfTheOrganiser() throws IOException {
        String text = said("""
                        {"members":[
                          {"id":"Ann","generous":true,"offers":[{"kind":"k1","packets":2}]},
                          {"id":"Bea","generous":true,"offers":[{"kind":"k2","packets":2}]},
                          {"id":"Cor","tolerancePackets":2,"wants":[{"anyOf":["k1"],"packets":1},{"anyOf":["k2"],"packets":1}]},
                          {"id":"Dee","tolerancePackets":2,"wants":[{"anyOf":["k1"],"packets":1},{"anyOf":["k2"],"packets":1}]},
                          {"id":"Org"}],
                         "postage":{"default":3,"organiser":"Org","pairs":[
                           {"from":"Ann","to":"Org","price":0.5},{"from":"Bea","to":"Org","price":0.5},
                           {"from":"Org","to":"Cor","price":0.5},{"from":"Org","to":"Dee","price":0.5}]}}
                        """).text();
        assertThat(text)
                .contains("4 parcels, 2 in postage")
                .contains("Ann: you send 2 packets to two people, you get nothing back.")
                .contains("  to Cor through Org: 1 of k1")
                .contains("Cor: you send nothing, you get 2 packets.");
    }

    @Test
    void saysSo_whenNothingCanChangeHands() throws IOException {
        assertThat(said("{\"members\":[{\"id\":\"Ann\",\"offers\":[{\"kind\":\"k1\",\"packets\":1}]}]}")
                        .text())
                .startsWith("Nothing can change hands");
    }

    @Test
    void takesAShareOfWhatIsOfferedAsTolerance() throws IOException {
        String round = ROUND.replace("\"id\":\"Ann\",\"tolerancePackets\":0", "\"id\":\"Ann\",\"tolerancePercent\":PC")
                .replace("\"packets\":2}],", "\"packets\":3}],")
                .replace("\"id\":\"Bea\",\"tolerancePackets\":0", "\"id\":\"Bea\",\"tolerancePackets\":3");
        assertThat(answer(round.replace("PC", "33")).wantsMet()).isEqualTo(4);
        assertThat(answer(round.replace("PC", "34")).wantsMet()).isEqualTo(5);
    }

    @Test
    void leavesAsMuchAsItWas_whenClearedAgain() throws IOException {
        String round = ROUND.replace("\"packets\":2,\"priority\":1", "\"packets\":1,\"priority\":1");
        for (String kind : new String[] {"k2", "k7"}) {
            Path before = folder.resolve("before.json");
            Files.writeString(
                    before,
                    "{\"transfers\":[{\"from\":\"Bea\",\"to\":\"Ann\",\"kind\":\"" + kind + "\",\"packets\":1},"
                            + "{\"from\":\"Gone\",\"to\":\"Ann\",\"kind\":\"k3\",\"packets\":1}]}");
            VerbResult result = new SwapClearVerb().run(call(round).with("again", before.toString()));
            assertThat(((Cleared) ((VerbResult.Said) result).answer()).transfers())
                    .anyMatch(line -> line.from().equals("Bea") && line.kind().equals(kind));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"members\":[{\"id\":\"a\"},{\"id\":\"a\"}]} | members[1].id: there is already a member called 'a'",
                "{\"members\":[{\"id\":\"a\",\"offers\":[{\"kind\":\"k\",\"packets\":-1}]}]} "
                        + "| members[0].offers[0].packets is -1. From 0 to 10000 is possible.",
                "{\"members\":[{\"id\":\"a\",\"offers\":[{\"kind\":\"k\",\"packets\":1e99}]}]} "
                        + "| members[0].offers[0].packets is 1E+99.",
                "{\"members\":[{\"id\":\"a\",\"offers\":[{\"kind\":\"k\",\"packets\":1.5}]}]} "
                        + "| should be a whole number, not 1.5",
                "{\"members\":[{\"id\":\"a\",\"offers\":[{\"kind\":\"k\",\"packets\":\"many\"}]}]} "
                        + "| should be a number, not \"many\"",
                "{\"members\":[{\"id\":\"a\",\"offers\":[{\"kind\":\"k\"}]}]} "
                        + "| members[0].offers[0].packets is missing",
                "{\"kinds\":[\"k\"],\"members\":[{\"id\":\"a\",\"wants\":[{\"anyOf\":[\"x\"],\"packets\":1}]}]} "
                        + "| members[0].wants[0].anyOf[0]: 'x' is not among the kinds",
                "{\"kinds\":[\"k\",\"k\"],\"members\":[]} | kinds[1] is listed twice",
                "{\"members\":[{\"id\":\"a\",\"wants\":[{\"anyOf\":[],\"packets\":1}]}]} | names 0 kinds",
                "{\"members\":[{\"id\":\"a\",\"wants\":[{\"anyOf\":[\"k\"],\"packets\":1,\"priority\":0}]}]} "
                        + "| priority is 0. From 1 to 1000",
                "{\"members\":[{\"id\":\"a\",\"tolerancePackets\":-1}]} | tolerancePackets is -1",
                "{\"members\":[{\"id\":\"a\",\"tolerancePackets\":1,\"tolerancePercent\":5}]} | Say only one of them",
                "{\"members\":[{\"id\":\"a\",\"tolerancePackets\":{}}]} "
                        + "| tolerancePackets should be a number, not an object in curly brackets.",
                "{\"members\":[{\"id\":\"a\",\"tolerancePackets\":[1]}]} "
                        + "| tolerancePackets should be a number, not a list in square brackets.",
                "{\"members\":[{\"id\":\"a\",\"tolerancePackets\":true}]} "
                        + "| tolerancePackets should be a number, not true.",
                "{\"members\":[{\"id\":\"a\",\"generous\":\"yes\"}]} | generous should be true or false, not \"yes\"",
                "{\"members\":[{\"id\":\" \"}]} | members[0].id should be a text",
                "{\"members\":[{}]} | members[0].id is missing",
                "{\"members\":{}} | members should be a list",
                "{\"members\":[7]} | members[0] should be an object",
                "[] | the file should be an object",
                "{} | members is missing",
                "{\"packet\":0,\"members\":[]} | packet is 0",
                "{\"members\":[],\"postage\":{\"default\":-2.5}} | postage.default is -2.5. From 0 to 1000",
                "{\"members\":[],\"postage\":{\"default\":0.0001}} | more than three decimals",
                "{\"members\":[],\"postage\":{}} | postage.default is missing",
                "{\"members\":[],\"postage\":{\"default\":1,\"organiser\":\"z\"}} | no member called 'z'",
                "{\"members\":[],\"postage\":{\"default\":1,\"pairs\":[{\"from\":\"z\",\"to\":\"z\",\"price\":1}]}} "
                        + "| postage.pairs[0].from: there is no member called 'z'",
                "round | can't be used: ",
                "{\"members\":[ | can't be used: ",
            })
    void refusesAFileThatIsNoRound_andSaysWhere(String file, String told) throws IOException {
        VerbResult result = new SwapClearVerb().run(call(file));
        assertThat(result).isInstanceOfSatisfying(VerbResult.Refused.class, no -> {
            assertThat(no.refusal().text()).contains(told).contains("round.json");
            assertThat(no.refusal().code()).isEqualTo("malformed");
        });
    }

    @Test
    void refusesAbsurdSizes() throws IOException {
        StringBuilder many = new StringBuilder("{\"members\":[{\"id\":\"m\"}");
        for (int member = 0; member < 2_000; member++) {
            many.append(",{\"id\":\"").append(member).append("\"}");
        }
        assertRefused(many + "]}", "The round has 2\u2009001 members. At most 2\u2009000 can be cleared at once.");
        StringBuilder lines = new StringBuilder("{\"members\":[{\"id\":\"m\",\"offers\":[");
        lines.append("{\"kind\":\"k\",\"packets\":1},".repeat(200_001)).setLength(lines.length() - 1);
        assertRefused(lines + "]}]}", "too many offers and wants. At most 200\u2009000 can be cleared at once.");
        StringBuilder packets = new StringBuilder("{\"members\":[{\"id\":\"m\",\"offers\":[");
        for (int kind = 0; kind < 1_001; kind++) {
            packets.append("{\"kind\":\"k").append(kind).append("\",\"packets\":10000},");
        }
        packets.setLength(packets.length() - 1);
        assertRefused(packets + "]}]}", "more packets in all");
    }

    private void assertRefused(String file, String told) throws IOException {
        assertThat(new SwapClearVerb().run(call(file)))
                .isInstanceOfSatisfying(
                        VerbResult.Refused.class,
                        no -> assertThat(no.refusal().text()).contains(told));
    }

    @Test
    void refusesAFileThatIsNotThere_orNoText() throws IOException {
        VerbResult missing = new SwapClearVerb().run(new FakeCall(folder).with("file", "nowhere.json"));
        assertThat(missing)
                .isInstanceOfSatisfying(
                        VerbResult.Refused.class,
                        no -> assertThat(no.refusal().code()).isEqualTo("unreadable"));
        Path picture = folder.resolve("picture.json");
        Files.write(picture, new byte[] {(byte) 0x89, 'P', 'N', 'G', (byte) 0xff});
        VerbResult noText = new SwapClearVerb().run(new FakeCall(folder).with("file", picture.toString()));
        assertThat(noText)
                .isInstanceOfSatisfying(
                        VerbResult.Refused.class,
                        no -> assertThat(no.refusal().text()).contains("no text"));
    }

    private Cleared answer(String round) throws IOException {
        return (Cleared) said(round).answer();
    }

    private VerbResult.Said said(String round) throws IOException {
        VerbResult result = new SwapClearVerb().run(call(round));
        assertThat(result).isInstanceOf(VerbResult.Said.class);
        return (VerbResult.Said) result;
    }

    private FakeCall call(String round) throws IOException {
        Path file = folder.resolve("round.json");
        Files.writeString(file, round);
        return new FakeCall(folder).with("file", file.toString());
    }
}
