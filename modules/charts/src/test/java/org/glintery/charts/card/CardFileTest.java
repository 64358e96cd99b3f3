package org.glintery.charts.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.glintery.api.JsonCodec;
import org.glintery.api.Result;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openide.util.Lookup;

class CardFileTest {

    private final CardFile cards = new CardFile(Lookup.getDefault().lookup(JsonCodec.class));

    private Result<ColourCard> read(String text) {
        return cards.read("harbour", text.getBytes(StandardCharsets.UTF_8));
    }

    private static CardEntry entry(String name, String hex) {
        return new CardEntry(
                Optional.of(name).filter(n -> !n.isEmpty()), Optional.of(hex).filter(h -> !h.isEmpty()), false);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "code,name,hex\n4R2-K,Rust,#A0522D\n3B1-P,\"Deep, deep water\",\n",
                "\uFEFFhex;shelf;code;name\r\na0522d;3;4R2-K;Rust\r\n;4;3B1-P;Deep, deep water\r\n",
                "sep=;\ncode;hex;name\n4R2-K;#a0522d;Rust\n\n3B1-P;;Deep, deep water",
                "Code\tName\tHex\n 4R2-K \t Rust \t #A0522D \n3B1-P\tDeep, deep water\n",
                "[{\"code\":\"4R2-K\",\"name\":\"Rust\",\"hex\":\"#A0522D\"},"
                        + "{\"code\":\"3B1-P\",\"name\":\"Deep, deep water\"}]",
                "{\"title\":\"Harbour\",\"colours\":[{\"code\":\"4R2-K\",\"name\":\"Rust\",\"hex\":\"#A0522D\"},"
                        + "{\"code\":\"3B1-P\",\"name\":\"Deep, deep water\",\"hex\":\"\"}]}",
                "{\"4R2-K\":{\"name\":\"Rust\",\"hex\":\"#A0522D\"},\"3B1-P\":{\"name\":\"Deep, deep water\"}}"
            })
    void readsCodesNamesAndColours_inTheOrderOfTheFile(String text) {
        ColourCard card = read(text).orThrow();

        assertThat(card.name()).isEqualTo("harbour");
        assertThat(card.entries())
                .containsExactly(
                        java.util.Map.entry("4R2-K", entry("Rust", "#a0522d")),
                        java.util.Map.entry("3B1-P", entry("Deep, deep water", "")));
    }

    @Test
    void readsAPaletteOfGimp_numberingWhatHasNoNameOfItsOwn() {
        ColourCard card = read("GIMP Palette\nName: Harbour\nColumns: 3\n# ropes\n160  82  45 Rust\n"
                        + "  0   0 128\tUntitled\n  1   2   3\n 70 130 180 Rust\n")
                .orThrow();

        assertThat(card.entries())
                .containsExactly(
                        java.util.Map.entry("Rust", entry("Rust", "#a0522d")),
                        java.util.Map.entry("2", entry("Untitled", "#000080")),
                        java.util.Map.entry("3", entry("", "#010203")),
                        java.util.Map.entry("4", entry("Rust", "#4682b4")));
    }

    @Test
    void takesANameForACode_whereThereIsNone() {
        assertThat(read("name,hex\nVivid Pink,#ffb5ba\n").orThrow().entries()).containsKey("Vivid Pink");
    }

    @Test
    void readsWesternBytes_whenTheyAreNotUtf8() {
        byte[] file = "code,name,hex\n1,Crème,#fffdd0".getBytes(Charset.forName("windows-1252"));
        assertThat(cards.read("c", file).orThrow().entries().get("1").name()).contains("Crème");
    }

    @Test
    void tellsWhatItDidNotTake() {
        var read = (Result.Ok<ColourCard>)
                read("code,name,hex\n1,Rust,#a0522d\n,,#ffffff\n1,Again,#000000\n2,Odd,reddish\n3,Fine,#fff\n");

        assertThat(read.value().entries().keySet()).containsExactly("1", "2", "3");
        assertThat(read.value().entries().get("2").hex()).isEmpty();
        assertThat(read.value().entries().get("1").hex()).contains("#a0522d");
        assertThat(read.warnings())
                .containsExactly(
                        "1 is there twice; the first line counts.",
                        "2: 'reddish' is no colour; its colour is taken as not known.",
                        "One line without a code was left out.");
    }

    @Test
    void tellsOfAtMostTwentyFaults_andHowManyMore() {
        StringBuilder text = new StringBuilder("code,name,hex\n");
        for (int i = 0; i < 100; i++) {
            text.append(i).append(",,nothing\n");
        }
        List<String> warnings = ((Result.Ok<ColourCard>) read(text.toString())).warnings();
        assertThat(warnings).hasSize(21).last().isEqualTo("And 80 more of this kind.");
    }

    @Test
    void countsLinesWithoutACode_inTheProjectsFigures() {
        assertThat(((Result.Ok<ColourCard>) read("code,name,hex\n1,Rust,\n" + ",,#fff\n".repeat(1_234))).warnings())
                .containsExactly("1\u2009234 lines without a code were left out.");
    }

    @Test
    void refusesATableWhoseQuoteNeverEnds_andNamesTheCardAndTheLine() {
        assertThat(read("code,name,hex\n1,Rust,#a0522d\n2,\"Deep,#000080\n"))
                .isInstanceOfSatisfying(
                        Result.Refused.class,
                        refused -> assertThat(refused.refusal().text())
                                .startsWith("The file of the card harbour can't be read: a quotation mark is missing")
                                .endsWith("Nothing was taken from it."));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " \n",
                "code,name,hex\n",
                "just a line\nand another",
                "[]",
                "{}",
                "[1,2,null]",
                "GIMP Palette\n"
            })
    void refuses_whenNoLineHasACode(String text) {
        assertThat(read(text)).isInstanceOfSatisfying(Result.Refused.class, refused -> {
            assertThat(refused.refusal().code()).isEqualTo("card-without-colours");
            assertThat(refused.refusal().text()).startsWith("No line of the card's file holds a code.");
        });
    }

    @Test
    void refusesBrokenJson_andAHugeFile() {
        assertThat(read("[{\"code\":"))
                .isInstanceOfSatisfying(
                        Result.Refused.class,
                        refused -> assertThat(refused.refusal().code()).isEqualTo("card-malformed"));
        assertThat(cards.read("c", new byte[9 << 20]))
                .isInstanceOfSatisfying(
                        Result.Refused.class,
                        refused -> assertThat(refused.refusal().code()).isEqualTo("card-too-large"));
    }

    @Test
    void answersForAnyBytes() {
        long seed = 51;
        Random random = new Random(seed);
        String[] starts = {"", "code,name,hex\n", "GIMP Palette\n", "[", "{\"colours\":"};
        for (int i = 0; i < 3_000; i++) {
            byte[] noise = new byte[random.nextInt(200)];
            random.nextBytes(noise);
            String start = starts[random.nextInt(starts.length)];
            String text = start + new String(noise, StandardCharsets.ISO_8859_1);
            assertThat(read(text)).as("seed %d, %d", seed, i).isNotNull();
        }
    }
}
