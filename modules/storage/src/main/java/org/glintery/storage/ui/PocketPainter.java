package org.glintery.storage.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import org.glintery.workbench.parts.DrillPainter;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tone;

/** Draws one pocket: filled to its level in its drill's colour, drills along the surface, its symbol on a tag. */
final class PocketPainter {

    private static final int CORNER_PX = 8;
    private static final int DRILL_PX = 9;
    private static final int HATCH_PX = 6;
    private static final float[] DASHES = {5, 3};

    /** How a pocket stands out. */
    enum Mark {
        NONE,
        LIT,
        DIMMED
    }

    private PocketPainter() {}

    static void paint(Graphics2D graphics, CabinetSheet.PocketDrawing pocket, Rectangle box, Mark mark) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        int corner = Space.px(CORNER_PX);
        var outline = new RoundRectangle2D.Double(box.x, box.y, box.width, box.height, corner, corner);
        g.setColor(Tone.SHEET.colour());
        g.fill(outline);
        g.clip(outline);
        fill(g, pocket, box);
        tag(g, pocket, box);
        if (mark == Mark.DIMMED) {
            g.setColor(Tone.PAPER.colour(0.65));
            g.fill(outline);
        }
        g.dispose();
        outline(graphics, outline, mark, pocket.mixed());
    }

    private static void outline(Graphics2D graphics, RoundRectangle2D outline, Mark mark, boolean mixed) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(mark == Mark.LIT ? Tone.ACCENT.colour() : Tone.EDGE.colour());
        float width = mark == Mark.LIT ? Space.px(3) : 1;
        g.setStroke(
                mixed
                        ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, DASHES, 0)
                        : new BasicStroke(width));
        g.draw(outline);
        g.dispose();
    }

    /** Several drills lie side by side, each as wide as its share. */
    private static void fill(Graphics2D g, CabinetSheet.PocketDrawing pocket, Rectangle box) {
        long all = pocket.contents().stream()
                .mapToLong(content -> Math.max(1, content.balance().count()))
                .sum();
        double height = pocket.level() * box.height;
        double x = box.x;
        for (CabinetSheet.Content content : pocket.contents()) {
            double width = (double) box.width * Math.max(1, content.balance().count()) / all;
            heap(g, content, new Rectangle2D.Double(x, box.getMaxY() - height, width, height), pocket.guessed());
            x += width;
        }
    }

    private static void heap(Graphics2D graphics, CabinetSheet.Content content, Rectangle2D heap, boolean guessed) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.clip(heap);
        Color colour = content.look().colour().orElse(Tone.LINE.colour());
        g.setColor(colour);
        g.fill(heap);
        if (content.look().colour().isEmpty() || guessed) {
            hatch(g, heap, content.look().colour().isEmpty() ? Tone.EDGE.colour() : Tone.SHEET.colour(0.35));
        }
        g.dispose();
        edge(graphics, heap);
        double side = Space.px(DRILL_PX);
        Graphics2D surface = (Graphics2D) graphics.create();
        surface.clip(new Rectangle2D.Double(heap.getX(), heap.getY() - side, heap.getWidth(), heap.getHeight() + side));
        for (double x = heap.getX(); x < heap.getMaxX(); x += side) {
            DrillPainter.paint(surface, content.look(), new Rectangle2D.Double(x, heap.getY() - side / 2, side, side));
        }
        surface.dispose();
    }

    /** A line round the heap, so that dark drills stand off from a dark ground. */
    private static void edge(Graphics2D graphics, Rectangle2D heap) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Tone.EDGE.colour());
        g.setStroke(new BasicStroke(1));
        g.draw(heap);
        g.dispose();
    }

    private static void hatch(Graphics2D g, Rectangle2D area, Color colour) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(1));
        for (double x = area.getMinX() - area.getHeight(); x < area.getMaxX(); x += Space.px(HATCH_PX)) {
            g.draw(new Line2D.Double(x, area.getMaxY(), x + area.getHeight(), area.getMinY()));
        }
    }

    /** The symbol, else the drill's code; an empty pocket shows only its name, in a quieter ink. */
    private static void tag(Graphics2D g, CabinetSheet.PocketDrawing pocket, Rectangle box) {
        boolean seated = !pocket.symbols().isEmpty();
        String text = seated
                ? String.join(" ", pocket.symbols())
                : pocket.contents().isEmpty()
                        ? pocket.name()
                        : pocket.contents().get(0).drill().code();
        g.setFont(g.getFont().deriveFont(seated ? Font.BOLD : Font.PLAIN));
        var metrics = g.getFontMetrics();
        int pad = Space.px(Space.HAIR);
        String shown = fitted(text, metrics, box.width - 4 * pad);
        int width = metrics.stringWidth(shown) + 2 * pad;
        int height = metrics.getHeight();
        if (!pocket.contents().isEmpty()) {
            g.setColor(Tone.SHEET.colour(0.88));
            g.fillRoundRect(box.x + pad, box.y + pad, width, height, pad * 2, pad * 2);
        }
        g.setColor(pocket.contents().isEmpty() && !seated ? Tone.FAINT.colour() : Tone.INK.colour());
        g.drawString(shown, box.x + 2 * pad, box.y + pad + metrics.getAscent());
    }

    private static String fitted(String text, FontMetrics metrics, int width) {
        String shown = text;
        while (shown.length() > 1 && metrics.stringWidth(shown) > width) {
            shown = shown.substring(0, shown.length() - 1);
        }
        return shown;
    }
}
