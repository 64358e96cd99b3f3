package org.glintery.exchange.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.Lookup;

/** Whoever writes a kit file finds its form. */
class KitSchemaVerbTest {
    private static final Path HOUSE = Path.of("../..");
    private static final String FILE = "modules/exchange/src/main/resources/org/glintery/exchange/kit.schema.json";

    @TempDir
    Path folder;

    @Test
    void printsTheSchemaThatKitsAreHeldTo_andMakesNoWorkshop() throws Exception {
        Verb verb = Lookup.getDefault().lookupAll(Verb.class).stream()
                .filter(one -> one.name().equals("kit schema"))
                .findFirst()
                .orElseThrow();
        Path none = folder.resolve("none");
        VerbResult.Said said = (VerbResult.Said) verb.run(new FakeCall(none));
        String published = Files.readString(HOUSE.resolve(FILE), StandardCharsets.UTF_8);
        assertThat(said.text()).isEqualTo(published.strip());
        assertThat(said.answer())
                .isEqualTo(new KitSchemaVerb.Published(
                        Lookup.getDefault().lookup(JsonCodec.class).parse(published)));
        Json answer = Lookup.getDefault().lookup(JsonCodec.class).toJson(said.answer());
        assertThat(((Json.Obj) answer).get("schema"))
                .contains(Lookup.getDefault().lookup(JsonCodec.class).parse(published));
        assertThat(none).doesNotExist();
    }

    @Test
    void isLinkedFromWhatIsReadFirst() throws Exception {
        for (String page : List.of("README.md", "DEVELOPERS.md")) {
            List<String> links = links(Files.readString(HOUSE.resolve(page)));
            assertThat(links).as("links of %s", page).contains(FILE);
            assertThat(links).allSatisfy(link -> assertThat(HOUSE.resolve(link)).exists());
        }
    }

    private static List<String> links(String page) {
        List<String> links = new ArrayList<>();
        Matcher link = Pattern.compile("]\\((?!https?:)([^)#]+)\\)").matcher(page);
        while (link.find()) {
            links.add(link.group(1));
        }
        return links;
    }
}
