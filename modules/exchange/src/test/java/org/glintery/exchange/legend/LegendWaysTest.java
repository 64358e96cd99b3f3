package org.glintery.exchange.legend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same legend written in every way people write legends is read as the same legend. Seeded. */
class LegendWaysTest {
    private static final long SEED = 20_261_126;
    private static final int ROUNDS = 600;

    @TempDir
    Path temp;

    private final LegendReader reader = (LegendReader) new LegendReading().create(null);

    /** One way of writing a legend: some habits hold throughout, such as the sign between thousands. */
    private static final class Hand {
        private final Random random;
        private final char separator;
        private final boolean bagsApart;
        private final char grouping;

        Hand(Random random) {
            this.random = random;
            this.separator = ";,\t|".charAt(random.nextInt(4));
            this.bagsApart = random.nextBoolean();
            this.grouping = ",. \u00a0'".charAt(random.nextInt(5));
        }

        String one(String... ways) {
            return ways[random.nextInt(ways.length)];
        }

        String number(long count) {
            String plain = String.valueOf(count);
            String grouped = String.format(Locale.ROOT, "%,d", count).replace(',', grouping);
            return one(plain, plain, grouped, grouped, plain + " pcs", plain + noDecimals());
        }

        String noDecimals() {
            return grouping == ',' ? ".00" : ",0";
        }

        String supplied(LegendLine line) {
            if (line.bags().isPresent() && !bagsApart) {
                int bags = line.bags().get();
                if (!line.supplied().known()) {
                    return bags + one(" bags", "bags", " Bags.", " packets");
                }
                long size = line.supplied().count().get() / bags;
                return one(
                        bags + " x " + size,
                        bags + "×" + size,
                        bags + " bags of " + size,
                        size + " x " + bags + " bags",
                        (bags * size) + " (" + bags + " bags)",
                        bags + " bags (" + size + " each)");
            }
            if (!line.supplied().known() || line.supplied().basis() == Amount.Basis.BY_BAG) {
                return one("", "-", "?", "n/a");
            }
            return line.supplied().basis() == Amount.Basis.ROUGH
                    ? one("about ", "~", "ca. ", "approx ")
                            + line.supplied().count().get()
                    : number(line.supplied().count().get());
        }

        String bags(LegendLine line) {
            if (!bagsApart || line.bags().isEmpty()) {
                return one("", "-");
            }
            int bags = line.bags().get();
            return line.supplied().known()
                    ? bags + " x " + line.supplied().count().get() / bags
                    : one(String.valueOf(bags), bags + " bags", bags + noDecimals());
        }

        String shape(Drill drill) {
            return switch (drill.shape()) {
                case ROUND -> one("round", "Round", "R", "rounds", "round drills", "ROUND 2.8 mm", "round (2,8mm)");
                case SQUARE -> one("square", "Sq", "S", "Squares", "square 2.5mm");
                case SPECIAL -> one("special: drop", "special (drop)", "Special - drop", "special shape: drop");
            };
        }

        String hex(String hex) {
            int[] parts = {
                Integer.parseInt(hex.substring(1, 3), 16),
                Integer.parseInt(hex.substring(3, 5), 16),
                Integer.parseInt(hex.substring(5), 16)
            };
            return one(
                    hex,
                    hex.toUpperCase(Locale.ROOT),
                    hex.substring(1),
                    "0x" + hex.substring(1),
                    hex + "FF",
                    "rgb(" + parts[0] + ", " + parts[1] + ", " + parts[2] + ")",
                    parts[0] + " " + parts[1] + " " + parts[2],
                    parts[0] + "/" + parts[1] + "/" + parts[2],
                    "R" + parts[0] + " G" + parts[1] + " B" + parts[2]);
        }

        String cell(String text) {
            boolean quoted = text.indexOf(separator) >= 0 || text.indexOf('"') >= 0 || random.nextInt(5) == 0;
            return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
        }
    }

    private static LegendLine line(Random random, int number) {
        Shape shape = Shape.values()[random.nextInt(3)];
        Optional<String> outline = shape == Shape.SPECIAL ? Optional.of("drop") : Optional.empty();
        var drill = new Drill(
                shape,
                Drill.usualSizeHundredths(shape),
                Body.values()[random.nextInt(Body.values().length)],
                Coating.values()[random.nextInt(Coating.values().length)],
                outline,
                "own",
                "T" + number);
        Optional<Long> needed = random.nextInt(5) == 0 ? Optional.empty() : Optional.of(random.nextLong(30_000));
        Optional<Integer> bags = random.nextInt(3) == 0 ? Optional.of(2 + random.nextInt(8)) : Optional.empty();
        Amount supplied = Amount.unknown();
        if (random.nextBoolean()) {
            long count = 1_000 + random.nextInt(9_000);
            supplied = bags.map(b -> Amount.inBags(200L * b, b))
                    .orElse(
                            random.nextInt(3) == 0
                                    ? Amount.rough(count, Math.round(count * .1))
                                    : Amount.counted(count));
        }
        return new LegendLine("S" + number, drill, needed, supplied, bags, Map.of());
    }

    private static String written(List<LegendLine> lines, Map<String, CardEntry> entries, Hand hand) {
        List<List<String>> columns = new ArrayList<>();
        columns.add(column(hand.one("Symbol", "sym.", "SYMBOLS", "Key"), lines, LegendLine::symbol));
        columns.add(column(
                hand.one("Code", "Colour code", "Color No.", "Drill #", "Colour"),
                lines,
                line -> line.drill().code()));
        columns.add(column(
                hand.one("Hex", "RGB", "hex value"),
                lines,
                line -> hand.hex(entries.get(line.drill().code()).hex().get())));
        columns.add(column(hand.one("Shape", "drill shape"), lines, line -> hand.shape(line.drill())));
        columns.add(
                column("Body", lines, line -> hand.one("", " ") + line.drill().body()));
        columns.add(column(
                hand.one("Coating", "finish"),
                lines,
                line -> line.drill().coating() == Coating.NONE
                        ? hand.one("", "none", "-", "plain")
                        : line.drill().coating().name()));
        columns.add(column(
                hand.one("Needed", "# of drills", "Drills needed", "Qty", "Drill count"),
                lines,
                line -> line.needed().map(hand::number).orElse(hand.one("", "?", "–"))));
        columns.add(column(hand.one("Supplied", "In the kit", "Drills in kit"), lines, hand::supplied));
        columns.add(column(hand.one("Bags", "No. of bags", "packets"), lines, hand::bags));
        Collections.shuffle(columns, hand.random);
        var text = new StringBuilder();
        for (int row = 0; row <= lines.size(); row++) {
            int at = row;
            text.append(columns.stream()
                            .map(column -> hand.cell(column.get(at)))
                            .collect(Collectors.joining(String.valueOf(hand.separator))))
                    .append(hand.one("\n", "\n", "\n\n"));
        }
        return text.toString();
    }

    private static List<String> column(String heading, List<LegendLine> lines, Function<LegendLine, String> cell) {
        List<String> column = new ArrayList<>(List.of(heading));
        lines.forEach(line -> column.add(cell.apply(line)));
        return column;
    }

    @Test
    void readsTheSameLegend_howeverItIsWritten() throws IOException {
        for (int round = 0; round < ROUNDS; round++) {
            var random = new Random(SEED + round);
            List<LegendLine> lines = new ArrayList<>();
            Map<String, CardEntry> entries = new HashMap<>();
            for (int i = 0; i < 3 + random.nextInt(20); i++) {
                lines.add(line(random, i));
                String hex = String.format("#%06x", random.nextInt(1 << 24));
                entries.put("T" + i, new CardEntry(Optional.empty(), Optional.of(hex), false));
            }
            String text = written(lines, entries, new Hand(random));
            List<Charset> charsets =
                    List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16, Charset.forName("windows-1252"));
            byte[] bytes = text.getBytes(charsets.get(random.nextInt(charsets.size())));
            Path file = Files.write(temp.resolve("legend.csv"), bytes);
            Reading reading =
                    reader.read(file, new Assumed("own", Optional.empty())).orThrow();
            String what = "seed " + (SEED + round) + "\n" + text;
            assertThat(reading.badRows()).as(what).isEmpty();
            assertThat(reading.lines()).as(what).containsExactlyElementsOf(lines);
            assertThat(reading.entries()).as(what).containsExactlyInAnyOrderEntriesOf(entries);
        }
    }
}
