package org.glintery.framing.ui;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tone;
import org.openide.util.NbBundle.Messages;

/** The lengths beside a drawing: the rails, or else what is on the wall. Used while painting only. */
final class DimensionLines {

    private static final int AWAY_PX = 14;
    private static final int TICK_PX = 4;

    private final Graphics2D g;
    private final Hanging hanging;

    DimensionLines(Graphics2D g, Hanging hanging) {
        this.g = g;
        this.hanging = hanging;
    }

    @Messages({"# {0} - length", "DimensionLines.mm={0} mm"})
    void draw(Rectangle2D outer) {
        g.setColor(Tone.FAINT.colour());
        g.setStroke(new BasicStroke(1));
        double away = Space.px(AWAY_PX);
        below(outer.getX(), outer.getMaxX(), outer.getMaxY() + away, text(width()));
        AffineTransform before = g.getTransform();
        // the line at the right is the line below, turned by a quarter
        g.translate(outer.getMaxX() + away, outer.getMaxY());
        g.rotate(-Math.PI / 2);
        below(0, outer.getHeight(), 0, text(height()));
        g.setTransform(before);
    }

    private double width() {
        double rail = hanging.figures().railWidthMm();
        return rail > 0 ? rail : hanging.outer().getWidth();
    }

    private double height() {
        double rail = hanging.figures().railHeightMm();
        return rail > 0 ? rail : hanging.visible().getHeight();
    }

    private static String text(double mm) {
        return Bundle.DimensionLines_mm(Millimetres.words(mm));
    }

    private void below(double from, double to, double y, String text) {
        int tick = Space.px(TICK_PX);
        g.draw(new Line2D.Double(from, y, to, y));
        g.draw(new Line2D.Double(from, y - tick, from, y + tick));
        g.draw(new Line2D.Double(to, y - tick, to, y + tick));
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(
                text, (float) ((from + to - metrics.stringWidth(text)) / 2), (float) (y + metrics.getAscent() + tick));
    }
}
