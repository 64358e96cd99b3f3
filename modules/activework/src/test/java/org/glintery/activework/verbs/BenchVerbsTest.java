package org.glintery.activework.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.activework.BenchShop.MAY;
import static org.glintery.activework.BenchShop.T1;
import static org.glintery.activework.BenchShop.T2;
import static org.glintery.activework.BenchShop.line;
import static org.glintery.activework.BenchShop.uncounted;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.activework.BenchShop;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.Storage;
import org.glintery.api.time.About;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchVerbsTest {

    private BenchShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = BenchShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private FakeCall call() {
        return new FakeCall(shop.workshop()).with("piece", "rope-walk");
    }

    private static String text(Verb verb, FakeCall call) throws Exception {
        VerbResult result = verb.run(call);
        assertThat(result).isInstanceOf(VerbResult.Said.class);
        return ((VerbResult.Said) result).text();
    }

    @Test
    void sitRecordsDrillsMinutesDayPlaceAndNote() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 1000, 2000));
        String said = text(
                new BenchSitVerb(),
                call().with("drills", "250")
                        .with("minutes", "95")
                        .with("on", "about October 2024")
                        .with("where", "kitchen table")
                        .with("note", "calm"));

        assertThat(said).isEqualTo("Sat at Rope-walk. 250 of 1\u2009000 drills are laid, 25 %.");
        Sitting sitting = shop.bench().sittings(shop.view(), piece).get(0).value();
        assertThat(sitting.minutes()).contains(95);
        assertThat(sitting.day().words()).isEqualTo("about October 2024");
        assertThat(sitting.where()).contains("kitchen table");
        assertThat(sitting.note()).isEqualTo("calm");
    }

    @Test
    void sitIsTodayUnlessSaid() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        text(new BenchSitVerb(), call().with("percent", "2,5"));

        Sitting sitting = shop.bench().sittings(shop.view(), piece).get(0).value();
        assertThat(sitting.day()).isEqualTo(MAY);
        assertThat(sitting.laid().percent()).contains(2.5);
    }

    @Test
    void sitBooksDrillsBySymbol_severalAtOnce() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 1000, 2000), line("=", T2, 10, 20));
        text(new BenchSitVerb(), call().with("symbol", "A=120").with("symbol", "==7"));

        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(120);
        assertThat(shop.count(new Spot.OnCanvas(piece), T2)).isEqualTo(7);
    }

    @Test
    void sitIsRefused_whenFewerAreBooked_butNotWhereSomeAreUncounted() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 1000, 200), uncounted("B", T2));
        VerbResult refused = new BenchSitVerb().run(call().with("symbol", "A=201"));

        assertThat(refused).isInstanceOf(VerbResult.Refused.class);
        assertThat(((VerbResult.Refused) refused).refusal().code()).isEqualTo("not-enough");
        assertThat(((VerbResult.Refused) refused).refusal().text())
                .startsWith("Of A, 200 are booked in the pockets and bags of the piece, fewer than 201.");
        assertThat(shop.bench().sittings(shop.view(), piece)).isEmpty();
        text(new BenchSitVerb(), call().with("symbol", "B=30"));
        assertThat(shop.count(new Spot.OnCanvas(piece), T2)).isEqualTo(30);
    }

    @Test
    void sitIsRefusedForAnUnknownSymbol() throws Exception {
        shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 1000, 200));

        assertThat(new BenchSitVerb().run(call().with("symbol", "Z=1"))).isInstanceOf(VerbResult.Refused.class);
    }

    @Test
    void isWrongUsage_whenASittingIsToldInTwoWaysOrInNone() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED, line("A", T1, 1000, 2000));
        for (FakeCall call : List.of(
                call().with("drills", "10").with("percent", "5"),
                call().with("percent", "5").with("sections", "1"),
                call().with("drills", "10").with("sections", "1").with("symbol", "A=10"),
                call().with("drills", "0").with("percent", "0"))) {
            assertThat(new BenchSitVerb().run(call))
                    .isEqualTo(VerbResult.wrongUsage(
                            "Say in one way how much was laid: --drills, --percent, --sections or --symbol."));
        }
        assertThat(new BenchSitVerb().run(call()))
                .isEqualTo(VerbResult.wrongUsage("Say how much was laid, with --drills, --percent, --sections or"
                        + " --symbol, or at least how long with --minutes."));
        assertThat(shop.bench().sittings(shop.view(), piece)).isEmpty();
        text(new BenchSitVerb(), call().with("drills", "25").with("symbol", "A=10"));
        assertThat(shop.bench().sittings(shop.view(), piece)).hasSize(1);
    }

    @Test
    void sitMayTellMinutesAlone() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        text(new BenchSitVerb(), call().with("minutes", "30"));

        Sitting sitting = shop.bench().sittings(shop.view(), piece).get(0).value();
        assertThat(sitting.minutes()).contains(30);
        assertThat(sitting.laid()).isEqualTo(Laid.NOT_SAID);
    }

    @Test
    void isWrongUsage_whenAValueCanNotBeUnderstood() throws Exception {
        shop.piece("Rope-walk", Standing.SHELVED);

        for (String[] option : new String[][] {
            {"drills", "-1"},
            {"drills", "many"},
            {"percent", "101"},
            {"sections", "1.5"},
            {"minutes", "1441"},
            {"symbol", "A"},
            {"symbol", "=3"},
            {"symbol", "A=-3"},
            {"on", "when the tide was out"}
        }) {
            FakeCall told = call().with(option[0], option[1]);
            boolean way = List.of("drills", "percent", "sections", "symbol").contains(option[0]);
            assertThat(new BenchSitVerb().run(way ? told : told.with("drills", "5")))
                    .as("--%s %s", option[0], option[1])
                    .isInstanceOf(VerbResult.WrongUsage.class);
        }
        assertThat(new BenchCompleteVerb().run(call().with("score", "6"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(new BenchStartVerb().run(call().with("on", "whenever"))).isInstanceOf(VerbResult.WrongUsage.class);
    }

    @Test
    void startAndRestSaySo() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);

        assertThat(text(new BenchStartVerb(), call().with("on", "spring 2025")))
                .isEqualTo("Rope-walk is on the bench.");
        assertThat(shop.pieceOf(piece).standingSince().map(About::words)).contains("spring 2025");
        assertThat(text(new BenchRestVerb(), call())).isEqualTo("Rope-walk rests.");
        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.RESTING);
    }

    @Test
    void forecastSpeaksInWords_withTheFiguresBeneath() throws Exception {
        shop.canvas("Rope-walk", 100, 100, Optional.empty());
        for (int day = 1; day <= 5; day++) {
            text(new BenchSitVerb(), call().with("drills", "1000").with("on", "2025-04-2" + day));
        }

        assertThat(text(new BenchForecastVerb(), call()))
                .startsWith("Rope-walk: ")
                .contains("May")
                .contains("5\u2009000 of 10\u2009000 drills are laid.");
    }

    @Test
    void completeMakesThePiece_andBeginsItsFinish() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.ON_THE_BENCH);
        text(
                new BenchCompleteVerb(),
                call().with("on", "about April 2025").with("score", "4").with("comments", "a present"));

        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.MADE);
        Finish finish = shop.view().find(Finish.TYPE, piece).orElseThrow().value();
        assertThat(finish.score()).contains(4);
        assertThat(finish.comments()).isEqualTo("a present");
        assertThat(finish.finishedOn().map(About::words)).contains("about April 2025");
    }

    @Test
    void completeWarnsOfAPieceThatWasNeverBegun_andSpeaksOfNoHolderWhereThereIsNone() throws Exception {
        shop.piece("Rope-walk", Standing.HOPED_FOR);
        FakeCall call = call();

        assertThat(text(new BenchCompleteVerb(), call)).isEqualTo("Rope-walk is made. Write it up with 'finish edit'.");
        assertThat(call.said).anyMatch(said -> said.contains("was never on the bench"));
    }

    @Test
    void refusesDaysThatHaveNotBeenYet_butNotOneThatIsTodayElsewhere() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.SHELVED);
        String later = "May " + (shop.view().day().getYear() + 4);
        refusedAsFuture(new BenchStartVerb(), later);
        refusedAsFuture(new BenchCompleteVerb(), later);
        refusedAsFuture(
                new BenchStartVerb(), About.on(shop.view().day().plusDays(2)).words());
        text(
                new BenchStartVerb(),
                call().with("on", shop.view().day().plusDays(1).toString()));
        refusedAsFuture(new BenchRestVerb(), later);

        assertThat(shop.pieceOf(piece).standing()).isEqualTo(Standing.ON_THE_BENCH);
    }

    private void refusedAsFuture(Verb verb, String on) throws Exception {
        VerbResult result = verb.run(call().with("on", on));
        assertThat(result).as(verb.name()).isInstanceOf(VerbResult.Refused.class);
        Refusal refusal = ((VerbResult.Refused) result).refusal();
        assertThat(refusal.code()).isEqualTo("future-day");
        assertThat(refusal.text()).isEqualTo(on + " has not been yet. Check the date. Nothing was changed.");
    }

    @Test
    void completeSpeaksOfTheHolder_whereThereIsOne() throws Exception {
        UUID piece = shop.piece("Rope-walk", Standing.ON_THE_BENCH, line("A", T1, 10, 20));
        UUID holder = UUID.randomUUID();
        Storage storage = shop.workshop().find(Storage.class).orElseThrow();
        shop.apply(storage.addHolder(shop.view(), holder, Holder.grid("Case A", 1, 1, Optional.empty())));
        shop.apply(
                storage.planKitUp(shop.view(), piece, holder, Optional.empty()).then(plan -> Result.ok(plan.change())));
        FakeCall call = call();

        assertThat(text(new BenchCompleteVerb(), call)).contains("Clear its holder with 'kitdown'");
        assertThat(call.said).isEmpty();
    }

    @Test
    void offersCandidates_whenANameIsUnclear() throws Exception {
        shop.piece("Rope-walk one", Standing.SHELVED);
        shop.piece("Rope-walk two", Standing.SHELVED);

        VerbResult unclear = new BenchForecastVerb().run(call());
        assertThat(((VerbResult.WrongUsage) unclear).candidates()).hasSize(2);
    }
}
