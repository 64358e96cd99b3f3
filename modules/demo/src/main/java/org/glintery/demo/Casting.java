package org.glintery.demo;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Source;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Blob;

/** Draws each piece, counts its drills and writes its legend. */
final class Casting {
    private static final String SYMBOLS = "ABCDEFGHJKLMNPRSTUVWXYZ23456789+*#%&=@";
    private static final int MOST_COLOURS = 28;

    private final Seeded seeded;
    private final DemoCard card;
    private final NearestTable nearest;
    private final DrillPicture pictures;

    Casting(Seeded seeded, DemoCard card) {
        this.seeded = seeded;
        this.card = card;
        this.nearest = new NearestTable(card);
        this.pictures = new DrillPicture(card);
    }

    List<PieceInMaking> cast(List<Told> plot) {
        List<PieceInMaking> pieces = new ArrayList<>();
        int made = 0;
        for (Told told : plot) {
            pieces.add(piece(told, told.standing() == Standing.MADE ? made++ : -1));
        }
        return pieces;
    }

    private PieceInMaking piece(Told told, int made) {
        if (told.scene().isEmpty()) {
            return new PieceInMaking(seeded.id(), told, made, Optional.empty(), List.of(), List.of(), List.of());
        }
        double pitch = told.shape() == Shape.ROUND ? 2.8 : 2.5;
        int columns = (int) (told.widthCm() * 10 / pitch);
        int rows = (int) (told.heightCm() * 10 / pitch);
        BufferedImage painted =
                told.scene().get().get().paint((double) rows / columns, told.light(), seeded.branch());
        DrillGrid grid = DrillGrid.of(painted, columns, rows, card, nearest, MOST_COLOURS);
        List<LegendLine> legend = legend(told, grid);
        List<Long> supplied =
                legend.stream().map(line -> line.supplied().count().orElseThrow()).toList();
        double share = made >= 0 || told.laid() == 0 ? 1 : told.laid();
        Blob picture = pictures.jpeg(grid, share, told.shape() == Shape.ROUND);
        return new PieceInMaking(seeded.id(), told, made, Optional.of(grid), legend, supplied, List.of(picture));
    }

    private List<LegendLine> legend(Told told, DrillGrid grid) {
        List<LegendLine> lines = new ArrayList<>();
        for (int i = 0; i < grid.used().size(); i++) {
            int colour = grid.used().get(i);
            Drill drill = Drill.of(
                    told.shape(), Drill.usualSizeHundredths(told.shape()), DemoCard.NAME, card.code(colour));
            String symbol = i < SYMBOLS.length() ? SYMBOLS.substring(i, i + 1) : "Z" + i;
            long needed = grid.count(colour);
            lines.add(new LegendLine(
                    symbol,
                    drill,
                    Optional.of(needed),
                    Amount.counted(supplied(told, symbol, needed)),
                    Optional.of((int) bags(needed)),
                    Map.of()));
        }
        return lines;
    }

    private static long bags(long needed) {
        return (needed * 108 / 100 + Source.USUAL_DRILLS_PER_BAG - 1) / Source.USUAL_DRILLS_PER_BAG;
    }

    /** Bags of 200 that hold a little more than is needed; one line of one kit came short. */
    private static long supplied(Told told, String symbol, long needed) {
        boolean shortLine = told.title().equals(Told.BOARD) && symbol.equals("C");
        return shortLine ? needed * 9 / 10 : bags(needed) * Source.USUAL_DRILLS_PER_BAG;
    }
}
