package org.glintery.finishes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.finishes.FinishShop.MAY;
import static org.glintery.finishes.FinishShop.about;
import static org.glintery.finishes.FinishShop.leavingAll;
import static org.glintery.finishes.FinishShop.refusal;
import static org.glintery.finishes.FinishShop.scored;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Picture;
import org.glintery.testkit.TestPictures;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FinishWritingTest {

    private FinishShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = FinishShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void aTitleAndAboutThenAreEnough_andThePieceComesWithIt() {
        UUID id = shop.write("Net loft", Optional.of(about("about October 2019")));

        assertThat(shop.finish(id).finishedOn()).contains(about("about October 2019"));
        assertThat(shop.pieceOf(id).title()).isEqualTo("Net loft");
        assertThat(shop.pieceOf(id).standing()).isEqualTo(Standing.MADE);
        assertThat(shop.pieceOf(id).standingSince()).contains(about("about October 2019"));
    }

    @Test
    void aTitleAloneIsEnough() {
        UUID id = shop.write("Net loft", Optional.empty());

        assertThat(shop.finish(id).finishedOn()).isEmpty();
    }

    @Test
    void refusesAFinishWithoutATitle() {
        assertThat(refusal(shop.finishes()
                                .write(
                                        shop.view(),
                                        UUID.randomUUID(),
                                        Finish.titled("  ", Optional.empty()),
                                        List.of()))
                        .code())
                .isEqualTo("no-title");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 6, -1})
    void refusesAScoreOutside1To5(int score) {
        assertThat(refusal(shop.finishes().write(shop.view(), UUID.randomUUID(), scored("Net loft", score), List.of()))
                        .code())
                .isEqualTo("bad-score");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5})
    void keepsAScoreFrom1To5(int score) {
        UUID id = UUID.randomUUID();
        shop.apply(shop.finishes().write(shop.view(), id, scored("Net loft", score), List.of()));

        assertThat(shop.finish(id).score()).contains(score);
    }

    @Test
    void aFilledFieldIsNoLongerLeftForLater() {
        UUID id = UUID.randomUUID();
        Finish filled = new Finish(
                "Net loft",
                Optional.empty(),
                Optional.of(MAY),
                Optional.of(4),
                "a calm one",
                "",
                List.of("tray"),
                Optional.of(" "),
                Sealing.NOT_SEALED,
                List.of(),
                List.of(),
                "",
                EnumSet.allOf(Field.class));
        shop.apply(shop.finishes().write(shop.view(), id, filled, List.of()));

        assertThat(shop.finish(id).later())
                .containsExactlyInAnyOrder(Field.ALTERED, Field.WHERE, Field.PICTURE, Field.COMMENTS);
    }

    @Test
    void keepsPicturesThatAreGiven_andRefusesOnesThatAreNot() {
        UUID id = UUID.randomUUID();
        Blob blob = Blob.of("image/png", TestPictures.png(2, 3));
        Finish pictured = withPhoto(new Picture(blob.hash(), "image/png", "on the wall"));

        assertThat(refusal(shop.finishes().write(shop.view(), id, pictured, List.of()))
                        .code())
                .isEqualTo("no-picture");
        shop.apply(shop.finishes().write(shop.view(), id, pictured, List.of(blob)));
        assertThat(shop.workshop().blob(blob.hash())).contains(blob.bytes());
        // now that the workshop holds it, the record may name it again
        shop.apply(shop.finishes().write(shop.view(), id, pictured, List.of()));
    }

    private static Finish withPhoto(Picture photo) {
        Finish plain = Finish.titled("Net loft", Optional.empty());
        return new Finish(
                plain.title(),
                plain.startedOn(),
                plain.finishedOn(),
                plain.score(),
                "",
                "",
                List.of(),
                plain.where(),
                plain.sealing(),
                List.of(photo),
                List.of(),
                "",
                Set.of());
    }

    @Test
    void correctingTheDateCorrectsThePiecesToo_unlessThatWasSetOtherwise() {
        UUID id = shop.write("Net loft", Optional.of(about("2019")));
        shop.apply(shop.finishes().write(shop.view(), id, Finish.titled("Net loft", Optional.of(MAY)), List.of()));
        assertThat(shop.pieceOf(id).standingSince()).contains(MAY);

        UUID shelved = shop.piece("Rope-walk", Standing.SHELVED);
        shop.apply(
                shop.finishes().write(shop.view(), shelved, Finish.titled("Rope-walk", Optional.of(MAY)), List.of()));
        assertThat(shop.pieceOf(shelved).standingSince()).isEmpty();
    }

    @Test
    void warnsOfAPieceThatIsNotMade_andOfAStartAfterTheEnd() {
        UUID shelved = shop.piece("Rope-walk", Standing.ON_THE_BENCH);
        Finish backwards = new Finish(
                "Rope-walk",
                Optional.of(about("2025")),
                Optional.of(about("2019")),
                Optional.empty(),
                "",
                "",
                List.of(),
                Optional.empty(),
                Sealing.NOT_SAID,
                List.of(),
                List.of(),
                "",
                Set.of());

        assertThat(shop.apply(shop.finishes().write(shop.view(), shelved, backwards, List.of())))
                .hasSize(2)
                .anyMatch(text -> text.contains("begun after it was finished"))
                .anyMatch(text -> text.contains("not made yet"));
        assertThat(shop.pieceOf(shelved).standing()).isEqualTo(Standing.ON_THE_BENCH);
    }

    @Test
    void listsTheLatestFirst_andThoseWithoutADateLast() {
        shop.write("undated", Optional.empty());
        shop.write("spring 2021", Optional.of(about("spring 2021")));
        shop.write("May 2025", Optional.of(MAY));
        shop.write("not known", Optional.of(about("not known")));
        shop.write("2019", Optional.of(about("2019")));

        assertThat(shop.finishes().all(shop.view()))
                .extracting(stored -> stored.value().title())
                .containsExactly("May 2025", "spring 2021", "2019", "not known", "undated");
    }

    @Test
    void listsWhatIsStillToBeWritten() {
        shop.write("all said", Optional.of(MAY));
        UUID id = UUID.randomUUID();
        shop.apply(shop.finishes().write(shop.view(), id, leavingAll("begun"), List.of()));

        assertThat(shop.finishes().stillToWrite(shop.view())).singleElement().satisfies(toWrite -> {
            assertThat(toWrite.piece()).isEqualTo(id);
            assertThat(toWrite.title()).isEqualTo("begun");
            assertThat(toWrite.fields()).isEqualTo(EnumSet.allOf(Field.class));
        });
    }

    @Test
    void listsAMadePieceWithoutAFinish_untilItIsWritten() {
        UUID made = shop.piece("Rope-walk", Standing.MADE);
        shop.piece("Net loft", Standing.ON_THE_BENCH);

        assertThat(shop.finishes().stillToWrite(shop.view())).singleElement().satisfies(toWrite -> {
            assertThat(toWrite.piece()).isEqualTo(made);
            assertThat(toWrite.fields()).isEqualTo(EnumSet.allOf(Field.class));
        });
        shop.apply(shop.finishes().write(shop.view(), made, scored("Rope-walk", 5), List.of()));
        assertThat(shop.finishes().stillToWrite(shop.view())).isEmpty();
    }
}
