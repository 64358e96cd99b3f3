package org.glintery.charts.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.Stash;
import org.glintery.api.stash.Stash.KnownDrill;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.glintery.charts.TestPictures;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FromStockTest {

    @TempDir
    Path folder;

    private Path picture;
    private Path card;

    @BeforeEach
    void files() throws IOException {
        picture = Files.write(folder.resolve("coffee.png"), TestPictures.resource("coffee.png"));
        card = Files.writeString(
                folder.resolve("harbour.csv"), "code,name,hex\nA,,#000000\nB,,#ffffff\nC,,#a0522d\nD,,#d2b48c\n");
    }

    private FakeCall asked(FakeCall call) {
        return call.with("picture", picture.toString())
                .with("card", card.toString())
                .with("columns", "30")
                .with("rows", "20")
                .with("shading", "none");
    }

    private FakeCall table(String text) throws IOException {
        Path counts = Files.writeString(folder.resolve("counts.csv"), text);
        return asked(new FakeCall(folder)).with("from-stock", counts.toString());
    }

    private static ChartMade made(FakeCall call) {
        return (ChartMade) ((VerbResult.Said) new ChartMakeVerb().run(call)).answer();
    }

    private static void refused(FakeCall call, String code, String words) {
        assertThat(new ChartMakeVerb().run(call)).isInstanceOfSatisfying(VerbResult.Refused.class, no -> {
            assertThat(no.refusal().code()).isEqualTo(code);
            assertThat(no.refusal().text()).contains(words);
        });
    }

    private static Map<String, Long> laid(ChartMade made) {
        return made.lines().stream()
                .collect(java.util.stream.Collectors.toMap(line -> line.code(), line -> line.drills()));
    }

    @Test
    void laysNoMoreThanTheTableHas_andPrintsHowGoodThatIs() throws IOException {
        FakeCall call = table("Count;Code\n200;A\n;B\n150;C\n150;C\n250;D\nmany;E\n");
        VerbResult.Said said = (VerbResult.Said) new ChartMakeVerb().run(call);
        ChartMade made = (ChartMade) said.answer();

        Map<String, Long> laid = laid(made);
        assertThat(laid).doesNotContainKeys("B", "E");
        assertThat(laid.getOrDefault("A", 0L)).isLessThanOrEqualTo(200);
        assertThat(laid.getOrDefault("C", 0L)).isLessThanOrEqualTo(300);
        assertThat(laid.getOrDefault("D", 0L)).isLessThanOrEqualTo(250);
        assertThat(laid.values().stream().mapToLong(Long::longValue).sum()).isEqualTo(600);
        FromStock stock = made.stock().orElseThrow();
        assertThat(stock.gap().orElseThrow()).isLessThan(1e-6);
        assertThat(stock.drillsToBuy())
                .isPositive()
                .isEqualTo(stock.toBuy().stream()
                        .mapToLong(FromStock.Wanted::drills)
                        .sum());
        assertThat(said.text())
                .contains(
                        "No other way to share these drills out is better by more than 0.0",
                        stock.drillsToBuy() + " drills more are enough");
        assertThat(made.warnings()).containsExactly("E: 'many' is no count; it is taken as none there.");
    }

    @Test
    void needsNothing_whenThereIsEnough() throws IOException {
        VerbResult.Said said =
                (VerbResult.Said) new ChartMakeVerb().run(table("code,count\nA,600\nB,600\nC,600\nD,900000000000\n"));
        assertThat(((ChartMade) said.answer()).stock().orElseThrow().toBuy()).isEmpty();
        assertThat(said.text()).contains("as good as with all of the card");
    }

    @Test
    void claimsNothing_withAnotherShading() throws IOException {
        Path counts = Files.writeString(folder.resolve("counts.csv"), "code,count\nA,400\nD,400\n");
        FakeCall call = new FakeCall(folder)
                .with("picture", picture.toString())
                .with("card", card.toString())
                .with("columns", "30")
                .with("rows", "20")
                .with("shading", "scattered")
                .with("from-stock", counts.toString());
        ChartMade made = made(call);
        assertThat(made.stock().orElseThrow().gap()).isEmpty();
        assertThat(laid(made).values()).allMatch(drills -> drills <= 400);
    }

    @Test
    void refuses_whenThereAreMoreCellsThanDrills() throws IOException {
        refused(
                table("code,count\nA,100\nC,250\n"),
                "not-enough-drills",
                "The chart has 600 cells, but of its colours only 350 drills are in the house.");
        refused(table("code,count\nZ,1000\n"), "not-enough-drills", "No drill of the card is in the house.");
        refused(table("code,count\nA,1000\n").with("pin", "C"), "pinned-not-there", "'C'");
        refused(table("name,count\nA,1000\n"), "counts-without-columns", "code and count");
        refused(table("code,count\n\"A,1000\n"), "counts-malformed", "quotation mark");
        refused(
                asked(new FakeCall(folder))
                        .with("from-stock", folder.resolve("none.csv").toString()),
                "no-file",
                "none.csv");
    }

    /** A workshop whose stash knows these drills. */
    private Workshop workshop(Optional<List<KnownDrill>> known) {
        Stash stash = (Stash) Proxy.newProxyInstance(
                Stash.class.getClassLoader(), new Class<?>[] {Stash.class}, (proxy, method, args) -> known.get());
        return (Workshop) Proxy.newProxyInstance(
                Workshop.class.getClassLoader(),
                new Class<?>[] {Workshop.class},
                (proxy, method, args) -> switch (method.getName()) {
                    case "find" -> known.map(there -> stash);
                    case "folder" -> folder;
                    default -> null;
                });
    }

    private static KnownDrill known(Drill drill, Balance inTheHouse, Balance available) {
        return new KnownDrill(drill, CardEntry.UNKNOWN, inTheHouse, available);
    }

    private static Drill square(String card, String code, Coating coating) {
        return new Drill(Shape.SQUARE, 250, Body.RESIN, coating, Optional.empty(), card, code);
    }

    @Test
    void countsOnWhatIsSureAndFreeOfOneKind_fromAWorkshop() {
        Balance many = new Balance(1_000, 0, 0);
        Workshop workshop = workshop(Optional.of(List.of(
                // 400 are reserved; of the rest 50 are unsure either way
                known(square("harbour", "A", Coating.NONE), many, new Balance(600, 2_500, 1)),
                known(square("harbour", "C", Coating.METALLIC), many, many),
                known(square("elsewhere", "D", Coating.NONE), many, many),
                known(Drill.of(Shape.ROUND, 280, "harbour", "B"), many, many),
                known(square("harbour", "D", Coating.NONE), many, new Balance(-5, 0, 0)))));
        refused(
                asked(new FakeCall(workshop)).with("from-stock", "house"),
                "not-enough-drills",
                "only 500 drills are in the house");
        assertThat(laid(made(asked(new FakeCall(workshop))
                        .with("from-stock", "house")
                        .with("coating", "metallic"))))
                .containsOnlyKeys("C");
        assertThat(laid(made(asked(new FakeCall(workshop))
                        .with("from-stock", "house")
                        .with("shape", "round"))))
                .containsOnlyKeys("B");
        refused(
                asked(new FakeCall(workshop(Optional.empty()))).with("from-stock", "house"),
                "no-stash",
                "switched off");
    }
}
