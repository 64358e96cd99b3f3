package org.glintery.charts.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.charts.design.DesignShop;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeptChartVerbsTest {
    private static final String CHART = """
        {"columns":3,"rows":2,"lines":[
          {"symbol":"A","code":"4R2-K","hex":"#A0522D","drills":77},
          {"symbol":"B","code":"4R3-M","hex":"#ffffff","drills":0}],
         "cells":[[0,0,1],[1,-1,0]]}
        """;

    @TempDir
    Path temp;

    private DesignShop shop;

    @BeforeEach
    void open() {
        shop = DesignShop.at(temp);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private VerbResult keep(String chart) throws IOException {
        Path file = Files.writeString(temp.resolve("Crane at dusk.json"), chart);
        return new ChartKeepVerb()
                .run(call().with("file", file.toString()).with("card", "ferry").with("shape", "round"));
    }

    private FakeCall call() {
        return new FakeCall(shop.workshop());
    }

    private static DesignAnswer answer(Verb verb, FakeCall call) throws Exception {
        return (DesignAnswer) ((VerbResult.Said) verb.run(call)).answer();
    }

    @Test
    void keepsAChart_listsItAndShowsWhatItTakes() throws Exception {
        VerbResult.Said kept = (VerbResult.Said) keep(CHART);
        assertThat(kept.text()).startsWith("Crane at dusk: 3 x 2 cells, 0.8 x 0.5 cm, 5 drills, 0 of them laid (");
        DesignAnswer shown = answer(new ChartShowVerb(), call().with("design", "crane at dusk"));
        assertThat(shown.lines()).extracting(DesignLineAnswer::drills).containsExactly(3L, 2L);
        assertThat(shown.lines().get(0).drill().drill().words()).isEqualTo("ferry 4R2-K, round 2.8 mm");
        assertThat(shown.lines().get(0).hex()).isEqualTo("#a0522d");
        VerbResult.Said listed = (VerbResult.Said) new ChartListVerb().run(call());
        assertThat(listed.text()).contains("Crane at dusk").contains("3 x 2");
    }

    @Test
    void marksRowsColumnsAndSymbolsAsLaid() throws Exception {
        keep(CHART);
        FakeCall all = call().with("design", "Crane at dusk");
        assertThat(answer(new ChartLayVerb(), all).laid()).isEqualTo(5);
        FakeCall second =
                call().with("design", "Crane at dusk").with("rows", "2").flagged("not");
        assertThat(answer(new ChartLayVerb(), second).laid()).isEqualTo(3);
        FakeCall some = call().with("design", "Crane at dusk")
                .with("columns", "1-2")
                .with("symbol", "A")
                .flagged("not");
        assertThat(answer(new ChartLayVerb(), some).lines())
                .extracting(DesignLineAnswer::laid)
                .containsExactly(0L, 1L);
    }

    @Test
    void saysHowRowsAreWritten() throws Exception {
        keep(CHART);
        assertThat(new ChartLayVerb().run(call().with("design", "Crane at dusk").with("rows", "one")))
                .isEqualTo(VerbResult.wrongUsage("--rows takes a number such as 12 or two such as 1-40, not 'one'."));
        assertThat(new ChartLayVerb().run(call().with("design", "Crane at dusk").with("symbol", "Q")))
                .isEqualTo(VerbResult.wrongUsage("The chart has no symbol 'Q'."));
        assertThat(new ChartShowVerb().run(call().with("design", "Cranes"))).isInstanceOf(VerbResult.WrongUsage.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{\"columns\":3}",
                "{\"columns\":1,\"rows\":1,\"lines\":[],\"cells\":[[0]]}",
                "{\"columns\":2,\"rows\":1,\"lines\":[],\"cells\":[[-1]]}",
                "{\"columns\":40000,\"rows\":40000,\"lines\":[],\"cells\":[]}",
                "{\"columns\":1,\"rows\":1,\"lines\":[{\"code\":\"a\",\"hex\":\"red\"}],\"cells\":[[0]]}",
                "{\"columns\":1,\"rows\":1,\"lines\":[{\"code\":\" \",\"hex\":\"#102030\"}],\"cells\":[[0]]}",
                "{\"columns\":1,\"rows\":1.5,\"lines\":[],\"cells\":[[-1]]}"
            })
    void refusesAFileThatIsNoChart(String text) throws Exception {
        VerbResult.Refused refused = (VerbResult.Refused) keep(text);
        assertThat(refused.refusal().code()).isEqualTo("not-a-chart");
        assertThat(refused.refusal().text()).startsWith("This is no chart that can be read: ");
        assertThat(shop.view().documents()).isEmpty();
    }
}
