package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The club's add-on beside the packaged application: two workshops and a folder between them. */
class ClubTest {

    @TempDir
    Path folder;

    private GlinteryDo as(String member) {
        assertThat(Jars.CLUB_CLUSTER.resolve("modules")).as("the add-on").isDirectory();
        return GlinteryDo.in(folder)
                .with("extra_clusters", Jars.CLUB_CLUSTER.toString())
                .with("GLINTERY_KEYS", folder.resolve("keys-" + member).toString());
    }

    private JsonNode run(String member, String... words) {
        String[] all = Stream.concat(
                        Stream.of(words),
                        Stream.of("--workshop", folder.resolve(member).toString(), "--json"))
                .toArray(String[]::new);
        return as(member).run(all).done().json();
    }

    @Test
    void takesAMemberIn_andNamesWhatSomebodyChanged() throws IOException {
        Path room = Files.createDirectory(folder.resolve("room"));
        run("ann", "workshop", "new");
        run("bea", "workshop", "new");
        String club = run("ann", "club", "new", "Ferry town", "--as", "Ann", "--room", room.toString())
                .path("club")
                .asText();
        run("ann", "room", "sync");
        run("bea", "club", "join", club, "--as", "Bea", "--room", room.toString());
        run("bea", "room", "sync");
        run("ann", "room", "sync");
        assertThat(run("ann", "club", "members", "--admit", "Bea").path("members"))
                .hasSize(2)
                .allMatch(member -> member.path("admitted").asBoolean());
        run("ann", "room", "sync");
        assertThat(run("bea", "room", "sync").path("documents").asInt()).isEqualTo(3);

        try (Stream<Path> files = Files.list(room)) {
            Path card = files.filter(f -> f.getFileName().toString().startsWith(club + ".member"))
                    .findFirst()
                    .orElseThrow();
            Files.writeString(card, Files.readString(card).replace("\"Ann\"", "\"Mal\""));
        }
        assertThat(run("bea", "room", "check").path("findings").findValuesAsText("reason"))
                .containsExactlyInAnyOrder("forged", "missing");
        assertThat(as("bea").run("club", "join", "--help").done().out()).contains("recovery sheet");
    }
}
