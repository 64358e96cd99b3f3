package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The swap round's add-on beside the packaged application. */
class ClubSwapsTest {

    /** Three who can only swap in a circle, and one who wants what nobody has. */
    private static final String ROUND = """
            {"packet":1,"members":[
              {"id":"Ann","offers":[{"kind":"4R2-K","packets":2}],"wants":[{"anyOf":["7T1-B","7T2-C"],"packets":2,"priority":1}]},
              {"id":"Bea","offers":[{"kind":"7T1-B","packets":2}],"wants":[{"anyOf":["2A9-F"],"packets":2,"priority":1}]},
              {"id":"Cor","offers":[{"kind":"2A9-F","packets":2}],"wants":[{"anyOf":["4R2-K"],"packets":3,"priority":2}]},
              {"id":"Dee","wants":[{"anyOf":["9Z9-Z"],"packets":1}]}],
             "postage":{"default":2.5}}
            """;

    @TempDir
    Path folder;

    private GlinteryDo without;
    private GlinteryDo with;

    @BeforeEach
    void writeTheRound() throws IOException {
        assertThat(Jars.SWAPS_CLUSTER.resolve("modules")).as("the add-on").isDirectory();
        without = GlinteryDo.in(folder);
        with = without.with("extra_clusters", Jars.SWAPS_CLUSTER.toString());
        Files.writeString(folder.resolve("round.json"), ROUND);
    }

    @Test
    void clearsARoundOnAFileAlone() {
        JsonNode cleared =
                with.run("swap", "clear", "round.json", "--json").done().json();
        assertThat(cleared.toString())
                .isEqualTo("{\"transfers\":["
                        + "{\"from\":\"Ann\",\"to\":\"Cor\",\"kind\":\"4R2-K\",\"packets\":2},"
                        + "{\"from\":\"Bea\",\"to\":\"Ann\",\"kind\":\"7T1-B\",\"packets\":2},"
                        + "{\"from\":\"Cor\",\"to\":\"Bea\",\"kind\":\"2A9-F\",\"packets\":2}],"
                        + "\"wantsMet\":6,\"bound\":6,\"proven\":true,\"parcels\":3,\"postage\":7.5}");
        assertThat(with.run("swap", "clear", "round.json").done().out())
                .contains("6 of 8 wanted packets")
                .contains("Ann: you send 2 packets to one person, you get 2.");
    }

    @Test
    void refusesWhatIsNoRound_andSaysThatThereIsNoSuchVerbWithoutTheAddOn() throws IOException {
        Files.writeString(folder.resolve("bad.json"), ROUND.replace("\"packets\":3", "\"packets\":-3"));
        JsonNode refused = with.run("swap", "clear", "bad.json", "--json")
                .refused(1, "members[2].wants[0].packets is -3")
                .json();
        assertThat(refused.path("refused").path("code").asText()).isEqualTo("malformed");

        without.run("swap", "clear", "round.json").refused(2, "There is no verb 'swap clear");
    }
}
