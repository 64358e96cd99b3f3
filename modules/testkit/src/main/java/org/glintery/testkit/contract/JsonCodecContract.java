package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every {@link JsonCodec} keeps. */
public abstract class JsonCodecContract {

    protected abstract JsonCodec codec();

    private record Sample(
            String name,
            int count,
            Optional<BigDecimal> price,
            Standing standing,
            About on,
            Spot spot,
            List<LocalDate> days,
            Map<String, Boolean> flags) {}

    private record Holding(Json held, Optional<Json> perhaps, List<Json> many) {}

    private static final Sample SAMPLE = new Sample(
            "Wörd \"3\"\n🙂",
            3,
            Optional.empty(),
            Standing.ON_THE_BENCH,
            About.edtf("2024-10~").orElseThrow(),
            new Spot.InBag(new UUID(1, 2)),
            List.of(LocalDate.of(2024, 2, 29)),
            Map.of("sealed", true));

    private static final String TEXT =
            "{\"name\":\"Wörd \\\"3\\\"\\n🙂\",\"count\":3,\"standing\":\"on-the-bench\",\"on\":\"2024-10~\","
                    + "\"spot\":\"bag:00000000-0000-0001-0000-000000000002\",\"days\":[\"2024-02-29\"],"
                    + "\"flags\":{\"sealed\":true}}";

    @Test
    void writesAndReadsJsonThatARecordHolds_asItIs() {
        Json held = codec().parse("{\"kind\":\"own\",\"list\":[1,\"two\",true,{\"a\":2.50}]}");
        var holding = new Holding(held, Optional.of(new Json.Text("x")), List.of(held, new Json.Flag(false)));
        Json json = codec().toJson(holding);
        assertThat(((Json.Obj) json).get("held")).contains(held);
        assertThat(((Json.Obj) json).get("perhaps")).contains(new Json.Text("x"));
        assertThat(codec().fromJson(json, Holding.class)).isEqualTo(holding);
    }

    @Test
    void writesARecordByItsComponents_leavingOutWhatIsAbsent() {
        Json json = codec().toJson(SAMPLE);
        assertThat(codec().parse(TEXT)).isEqualTo(json);
        assertThat(codec().parse(codec().compact(json))).isEqualTo(json);
        assertThat(codec().parse(codec().pretty(json))).isEqualTo(json);
        assertThat(codec().compact(json)).doesNotContain("\n");
        assertThat(codec().pretty(json)).contains("\n  \"count\"");
    }

    @Test
    void readsARecord_ignoringFieldsThatItDoesNotKnow() {
        Json json = ((Json.Obj) codec().parse(TEXT)).with("colour", new Json.Text("grey"));
        assertThat(codec().fromJson(json, Sample.class)).isEqualTo(SAMPLE);
    }

    @Test
    void tellsTheRecordsOfASealedTypeApart() {
        LedgerAction action = LedgerAction.Movement.of(
                new UUID(1, 1),
                Drill.of(Shape.ROUND, 280, "own", "T1"),
                Spot.SUPPLIER,
                new Spot.InBag(new UUID(1, 2)),
                Amount.counted(4),
                "bought");
        Json.Obj json = (Json.Obj) codec().toJson(action);
        assertThat(json.text("kind")).contains("movement");
        assertThat(codec().fromJson(json, LedgerAction.class)).isEqualTo(action);
    }

    @Test
    void keepsNumbersAsTheyAreWritten() {
        Json json = codec().parse("[1e3, -0.50, 12345678901234567890]");
        assertThat(codec().compact(json)).isEqualTo("[1000,-0.50,12345678901234567890]");
    }

    @Test
    void namesThePlace_whereSomethingIsWrong() {
        Json.Obj json = (Json.Obj) codec().parse(TEXT);
        assertWrong(json.without("standing"), "standing is missing");
        assertWrong(json.with("count", new Json.Text("3")), "count");
        assertWrong(json.with("standing", new Json.Text("sideways")), "standing", "sideways");
        assertWrong(json.with("days", new Json.Arr(List.of(new Json.Text("2024-02-30")))), "days[0]");
    }

    private void assertWrong(Json json, String... words) {
        assertThatExceptionOfType(MalformedException.class)
                .isThrownBy(() -> codec().fromJson(json, Sample.class))
                .satisfies(e -> assertThat(e.getMessage()).contains(words));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "{", "[1,]", "{\"a\":1,\"a\":2}", "{a:1}", "'a'", "01", "1 2", "nul", "\"\\x\"", "\"a"})
    void refusesWhatIsNotOneJsonValue(String text) {
        assertThatExceptionOfType(MalformedException.class).isThrownBy(() -> codec().parse(text));
    }

    @Test
    void refusesToNestTooDeep() {
        assertThat(codec().parse("[".repeat(200) + "]".repeat(200))).isInstanceOf(Json.Arr.class);
        assertThatExceptionOfType(MalformedException.class)
                .isThrownBy(() -> codec().parse("[".repeat(201) + "]".repeat(201)));
    }

    @Test
    void readsEnumConstants_inLowerCaseWithHyphens() {
        assertThat(codec().toJson(Coverage.NOT_SAID)).isEqualTo(new Json.Text("not-said"));
        assertThat(codec().fromJson(new Json.Text("not-said"), Coverage.class)).isEqualTo(Coverage.NOT_SAID);
    }
}
