package org.glintery.finishes.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.finishes.FinishShop.about;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.VerbResult;
import org.glintery.finishes.FinishShop;
import org.glintery.testkit.FakeCall;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FinishVerbsTest {

    private Path folder;
    private FinishShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        this.folder = folder;
        shop = FinishShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private FakeCall call() {
        return new FakeCall(shop.workshop());
    }

    private static FinishShown edited(FakeCall call) {
        VerbResult result = new FinishEditVerb().run(call);
        assertThat(result).isInstanceOf(VerbResult.Said.class);
        return (FinishShown) ((VerbResult.Said) result).answer();
    }

    private Path file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    @Test
    void editSetsEveryField() throws IOException {
        UUID piece = shop.write("Net loft", Optional.empty());
        FinishShown shown = edited(call().with("piece", "net loft")
                .with("title", "The net loft")
                .with("started", "spring 2023")
                .with("finished", "about October 2024")
                .with("score", "4")
                .with("making", "calm")
                .with("altered", "two panes swapped")
                .with("tool", "tray")
                .with("tool", "wide placer")
                .with("where", "kitchen table")
                .with("sealing", "not-sealed")
                .with("photo", file("wall.png", TestPictures.png(4, 3)).toString())
                .with("sketch", file("sketch.png", TestPictures.png(3, 4)).toString())
                .with("comments", "a present")
                .with("not-later", "making"));

        assertThat(shown.piece()).isEqualTo(piece);
        assertThat(shown.title()).isEqualTo("The net loft");
        assertThat(shown.startedOn()).contains(about("spring 2023"));
        assertThat(shown.finishedOn()).contains(about("about October 2024"));
        assertThat(shown.score()).contains(4);
        assertThat(shown.making()).isEqualTo("calm");
        assertThat(shown.altered()).isEqualTo("two panes swapped");
        assertThat(shown.tools()).containsExactly("tray", "wide placer");
        assertThat(shown.where()).contains("kitchen table");
        assertThat(shown.sealing()).isEqualTo(Sealing.NOT_SEALED);
        assertThat(shown.photos()).singleElement().satisfies(photo -> {
            assertThat(photo.mediaType()).isEqualTo("image/png");
            assertThat(photo.caption()).isEqualTo("wall.png");
        });
        assertThat(shown.sketches()).hasSize(1);
        assertThat(shown.comments()).isEqualTo("a present");
        assertThat(shown.later()).as("a filled field does not wait").isEmpty();
    }

    @Test
    void editLeavesWhatIsNotNamed_andEmptiesWhatIsGivenEmpty() {
        shop.write("Net loft", Optional.of(about("2019")));
        edited(call().with("piece", "Net loft").with("score", "5").with("making", "calm"));
        FinishShown shown = edited(call().with("piece", "Net loft")
                .with("score", "none")
                .with("making", "")
                .with("later", "score")
                .with("later", "picture"));

        assertThat(shown.finishedOn()).contains(about("2019"));
        assertThat(shown.score()).isEmpty();
        assertThat(shown.making()).isEmpty();
        assertThat(shown.later()).containsExactlyInAnyOrder(Field.SCORE, Field.PICTURE);
        assertThat(edited(call().with("piece", "Net loft").with("not-later", "picture"))
                        .later())
                .containsExactly(Field.SCORE);
    }

    @Test
    void editRefusesToLeaveForLaterWhatIsWritten() {
        UUID piece = shop.write("Net loft", Optional.of(about("2019")));
        edited(call().with("piece", "Net loft").with("score", "5"));
        VerbResult result = new FinishEditVerb()
                .run(call().with("piece", "Net loft").with("later", "score").with("later", "picture"));

        assertThat(((VerbResult.Refused) result).refusal().text())
                .startsWith("This is written already for Net loft: score.");
        Finish kept = shop.view().find(Finish.TYPE, piece).orElseThrow().value();
        assertThat(kept.score()).contains(5);
        assertThat(kept.later()).doesNotContain(Field.PICTURE);
    }

    @Test
    void editWarnsOfAFinishThatHasNotBeenYet() {
        shop.write("Net loft", Optional.of(about("2019")));
        int year = shop.view().day().getYear() + 4;
        FakeCall call = call().with("piece", "Net loft").with("finished", "May " + year);

        assertThat(edited(call).finishedOn()).contains(about("May " + year));
        assertThat(call.said).anyMatch(said -> said.contains("May " + year) && said.contains("has not been yet"));
    }

    @Test
    void saysHowADateInNumbersWasRead() {
        shop.write("Net loft", Optional.of(about("2019")));
        FakeCall call = call().with("piece", "Net loft").with("finished", "3/4/2025");

        assertThat(edited(call).finishedOn()).contains(about("3 April 2025"));
        assertThat(call.said)
                .containsExactly("'3/4/2025' was read as 3 April 2025. If you meant 4 March 2025, write 2025-03-04.");
    }

    @Test
    void editWithOldAddsAMadePiece() {
        FinishShown shown =
                edited(call().with("piece", "Signal flags").flagged("old").with("finished", "some time in 2018"));

        Piece piece = shop.pieceOf(shown.piece());
        assertThat(piece.title()).isEqualTo("Signal flags");
        assertThat(piece.standing()).isEqualTo(Standing.MADE);
    }

    @Test
    void editIsWrongUsage_whenAValueCanNotBeUnderstood() {
        shop.write("Net loft", Optional.empty());

        for (String[] option : new String[][] {
            {"score", "6"}, {"finished", "when the tide was out"}, {"sealing", "perhaps"}, {"later", "everything"}
        }) {
            assertThat(new FinishEditVerb().run(call().with("piece", "Net loft").with(option[0], option[1])))
                    .as("--%s %s", option[0], option[1])
                    .isInstanceOf(VerbResult.WrongUsage.class);
        }
    }

    @Test
    void editRefusesAFileThatIsNoPicture() throws IOException {
        UUID piece = shop.write("Net loft", Optional.empty());
        Path text = file("note.png", "no picture".getBytes(StandardCharsets.UTF_8));
        long revision = shop.view().revision();
        VerbResult result =
                new FinishEditVerb().run(call().with("piece", "Net loft").with("photo", text.toString()));

        assertThat(result).isInstanceOf(VerbResult.Refused.class);
        assertThat(((VerbResult.Refused) result).refusal().code()).isEqualTo("not-a-picture");
        assertThat(shop.view().revision()).isEqualTo(revision);
        assertThat(shop.finish(piece).photos()).isEmpty();
    }

    @Test
    void editRefusesAPictureThatClaimsTooManyPixels() throws IOException {
        shop.write("Net loft", Optional.empty());
        Path file = file("large.png", TestPictures.claiming(60_000, 60_000));
        VerbResult result =
                new FinishEditVerb().run(call().with("piece", "Net loft").with("photo", file.toString()));

        assertThat(((VerbResult.Refused) result).refusal().code()).isEqualTo("picture-too-large");
        assertThat(((VerbResult.Refused) result).refusal().text())
                .isEqualTo(
                        "large.png: This picture says it is 60\u2009000 x 60\u2009000 pixels, which is too large to open. "
                                + "Nothing was changed. Save it smaller and try again.");
    }

    @Test
    void listShowsTheLatestFirst_andOnlyWhatWaitsWhenAsked() {
        shop.write("Net loft", Optional.of(about("2019")));
        shop.write("Rope-walk", Optional.of(about("2024")));
        edited(call().with("piece", "Net loft").with("later", "score"));

        String all = ((VerbResult.Said) new FinishListVerb().run(call())).text();
        assertThat(all.indexOf("Rope-walk")).isLessThan(all.indexOf("Net loft"));
        String toWrite = ((VerbResult.Said) new FinishListVerb().run(call().flagged("to-write"))).text();
        assertThat(toWrite).contains("Net loft").doesNotContain("Rope-walk");

        shop.piece("Boathouse", Standing.MADE);
        String more = ((VerbResult.Said) new FinishListVerb().run(call().flagged("to-write"))).text();
        assertThat(more).contains("Net loft").contains("Boathouse");
        edited(call().with("piece", "Boathouse").with("score", "4"));
        assertThat(((VerbResult.Said) new FinishListVerb().run(call())).text()).contains("Boathouse");
    }

    @Test
    void showTellsWhatIsWritten_inWords() {
        shop.write("Net loft", Optional.of(about("about October 2024")));
        edited(call().with("piece", "Net loft").with("score", "4").with("later", "making"));

        assertThat(((VerbResult.Said) new FinishShowVerb().run(call().with("piece", "Net loft"))).text())
                .isEqualTo("Net loft\n  Finished: about October 2024\n  Score: 4 of 5\n"
                        + "  Still to be written: how it was to make");
    }

    @Test
    void showSaysWhenThereIsNone_andOffersNamesForAnUnclearOne() {
        shop.piece("Rope-walk", Standing.SHELVED);
        shop.piece("Rope locker", Standing.SHELVED);

        assertThat(new FinishShowVerb().run(call().with("piece", "Rope-walk"))).isInstanceOf(VerbResult.Refused.class);
        VerbResult unclear = new FinishShowVerb().run(call().with("piece", "rope"));
        assertThat(((VerbResult.WrongUsage) unclear).candidates()).hasSize(2);
    }
}
