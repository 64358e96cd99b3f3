package org.glintery.demo;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Source;
import org.glintery.api.workshop.Blob;
import org.glintery.demo.drills.CanvasPicture;
import org.glintery.demo.drills.DemoCard;
import org.glintery.demo.drills.DrillGrid;
import org.glintery.demo.drills.Laying;
import org.glintery.demo.drills.PictureFiles;

/** Paints each piece, counts its drills and writes its legend. Several pieces at a time, each with its own chance. */
final class Casting {
    private static final List<String> SOURCES =
            List.of("Quay Street Crafts", "The club table", "Post from the mainland");
    private static final String SYMBOLS = "ABCDEFGHJKLMNPRSTUVWXYZ23456789+*#%&=@";
    private static final int DESIGN_WIDTH_PX = 720;
    private static final int CELLS_ONLY_WIDTH_PX = 480;

    private final Seeded seeded;
    private final DemoCard card;
    private final Effort effort;

    /** What a piece starts from. @param chance its own, so that the order of painting does not matter */
    private record Part(UUID id, Told told, int made, String source, SplittableRandom chance) {}

    Casting(Seeded seeded, DemoCard card, Effort effort) {
        this.seeded = seeded;
        this.card = card;
        this.effort = effort;
    }

    List<PieceInMaking> cast(List<Told> plot) {
        List<Part> parts = new ArrayList<>();
        int made = 0;
        for (Told told : plot) {
            String source = SOURCES.get(seeded.between(0, SOURCES.size() - 1));
            parts.add(new Part(seeded.id(), told, told.made() ? made++ : -1, source, seeded.branch()));
        }
        return parts.parallelStream()
                .filter(part -> !effort.isLeft())
                .map(this::piece)
                .peek(piece -> effort.oneMore())
                .toList();
    }

    private PieceInMaking piece(Part part) {
        Told told = part.told();
        if (told.scene().isEmpty()) {
            return new PieceInMaking(
                    part.id(),
                    told,
                    part.made(),
                    part.source(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty());
        }
        // A made piece shows only its drills: then three pixels a cell are enough.
        int widthPx = told.made() ? CELLS_ONLY_WIDTH_PX : DESIGN_WIDTH_PX;
        int columns = told.columns();
        int rows = told.rows();
        BufferedImage painted = told.scene().get().paint(widthPx, (double) rows / columns, told.light(), part.chance());
        DrillGrid grid = DrillGrid.of(painted, columns, rows, card, CanvasPicture.MOST_COLOURS);
        Optional<Laying> laying = told.made() ? Optional.of(Laying.ALL) : told.laying();
        Optional<Blob> design = told.made() ? Optional.empty() : Optional.of(PictureFiles.jpeg(painted));
        Optional<Blob> canvas =
                laying.map(now -> PictureFiles.png(CanvasPicture.of(card, grid, now, told.shape() == Shape.ROUND)));
        boolean onTheBench = told.laying().isPresent();
        return new PieceInMaking(
                part.id(),
                told,
                part.made(),
                part.source(),
                Optional.of(grid),
                legend(told, grid),
                canvas.or(() -> design),
                onTheBench ? design : Optional.empty());
    }

    private List<LegendLine> legend(Told told, DrillGrid grid) {
        if (told.legend() == Told.Known.NOTHING) {
            return List.of();
        }
        List<LegendLine> lines = new ArrayList<>();
        for (int i = 0; i < grid.used().size(); i++) {
            int colour = grid.used().get(i);
            Drill drill =
                    Drill.of(told.shape(), Drill.usualSizeHundredths(told.shape()), DemoCard.NAME, card.code(colour));
            lines.add(line(told, SYMBOLS.substring(i, i + 1), drill, grid.count(colour)));
        }
        return lines;
    }

    private static LegendLine line(Told told, String symbol, Drill drill, long needed) {
        int bags = bags(needed);
        boolean all = told.legend() == Told.Known.ALL;
        boolean cameShort = told.title().equals(Plot.BOARD) && symbol.equals("C");
        long came = cameShort ? needed * 93 / 100 : (long) bags * Source.USUAL_DRILLS_PER_BAG;
        return new LegendLine(
                symbol,
                drill,
                all ? Optional.of(needed) : Optional.empty(),
                all && told.arrived() ? Amount.counted(came) : Amount.unknown(),
                told.legend() == Told.Known.ONLY_CODES ? Optional.empty() : Optional.of(bags),
                Map.of());
    }

    /** What a maker packs: a twentieth more than the chart needs, in whole bags. */
    private static int bags(long needed) {
        return (int) ((needed * 105 / 100 + Source.USUAL_DRILLS_PER_BAG - 1) / Source.USUAL_DRILLS_PER_BAG);
    }
}
