package org.glintery.workbench.parts;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;

/** Paints a drill from above with its facets, so that body and coating can be told apart. Event thread. */
@Stable
public final class DrillPainter {
    private static final double HATCH_PX = 4;
    private static final double READABLE_PX = 13;

    private DrillPainter() {}

    /** Paints into the square that fits in the middle of the bounds. */
    public static void paint(Graphics2D graphics, DrillLook look, Rectangle2D bounds) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            double side = Math.min(bounds.getWidth(), bounds.getHeight());
            double inset = look.body() == Body.GLOW ? side * 0.14 : Math.max(0.75, side * 0.04);
            Facets facets =
                    Facets.of(look.shape(), bounds.getCenterX(), bounds.getCenterY(), Math.max(1, side / 2 - inset));
            if (look.body() == Body.GLOW) {
                glow(g, facets, look, inset);
            }
            if (look.colour().isPresent()) {
                faceted(g, facets, look, look.colour().get());
            } else {
                notKnown(g, facets);
            }
            coating(g, facets, look);
            if (look.colour().isEmpty() && side >= READABLE_PX) {
                questionMark(g, facets, side);
            }
            outline(g, facets, look);
        } finally {
            g.dispose();
        }
    }

    private static void faceted(Graphics2D g, Facets facets, DrillLook look, Color colour) {
        if (look.body() == Body.TRANSLUCENT) {
            chequered(g, facets);
        }
        int alpha = look.body() == Body.TRANSLUCENT ? 150 : 255;
        double relief = relief(look);
        for (int i = 0; i < facets.count(); i++) {
            g.setColor(Shade.lit(colour, facets.light(i) * relief, alpha));
            g.fill(facets.facet(i));
        }
        g.setColor(Shade.lit(colour, 0.10 * relief, alpha));
        g.fill(facets.table());
        if (look.body() == Body.CRYSTAL) {
            g.setStroke(new BasicStroke((float) Math.max(0.6, facets.radius() * 0.05)));
            g.setColor(new Color(255, 255, 255, 190));
            facets.rays().forEach(g::draw);
            g.draw(facets.table());
        }
    }

    private static double relief(DrillLook look) {
        if (look.coating() == Coating.MATT) {
            return 0.35;
        }
        if (look.coating() == Coating.PEARL) {
            return 0.6;
        }
        return look.body() == Body.CRYSTAL ? 1.5 : 1;
    }

    private static void chequered(Graphics2D g, Facets facets) {
        Shape old = g.getClip();
        g.clip(facets.outline());
        Rectangle2D box = facets.outline().getBounds2D();
        double cell = Math.max(2, facets.radius() / 2.5);
        g.setColor(Color.WHITE);
        g.fill(box);
        g.setColor(new Color(0x9a948a));
        for (int row = 0; row * cell < box.getHeight(); row++) {
            for (int column = row % 2; column * cell < box.getWidth(); column += 2) {
                g.fill(new Rectangle2D.Double(box.getX() + column * cell, box.getY() + row * cell, cell, cell));
            }
        }
        g.setClip(old);
    }

    private static void coating(Graphics2D graphics, Facets facets, DrillLook look) {
        Graphics2D g = (Graphics2D) graphics.create();
        if (look.colour().isEmpty()) {
            // only hinted at: at full strength a coating would look like a colour of its own
            g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, 0.3f));
        }
        CoatingPainter.over(g, facets, look);
        g.dispose();
    }

    private static void notKnown(Graphics2D g, Facets facets) {
        g.setColor(Tone.SHEET.colour());
        g.fill(facets.outline());
        Shape old = g.getClip();
        g.clip(facets.outline());
        Rectangle2D box = facets.outline().getBounds2D();
        g.setColor(Tone.EDGE.colour());
        g.setStroke(new BasicStroke(0.8f));
        for (double x = box.getMinX() - box.getHeight(); x < box.getMaxX(); x += HATCH_PX) {
            g.draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getMinY()));
        }
        g.setClip(old);
    }

    private static void questionMark(Graphics2D g, Facets facets, double side) {
        g.setColor(Tone.SHEET.colour());
        g.fill(facets.table());
        g.setColor(Tone.INK.colour());
        g.setFont(g.getFont().deriveFont(Font.BOLD, (float) (side * 0.5)));
        var metrics = g.getFontMetrics();
        g.drawString("?", (float) (facets.centreX() - metrics.stringWidth("?") / 2.0), (float)
                (facets.centreY() + (metrics.getAscent() - metrics.getDescent()) / 2.0));
    }

    private static void glow(Graphics2D g, Facets facets, DrillLook look, double reach) {
        Color halo = look.colour().orElse(Tone.FAINT.colour());
        for (int ring = 4; ring >= 1; ring--) {
            g.setStroke(new BasicStroke((float) (reach * ring / 2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(Shade.lit(halo, 0.35, 50));
            g.draw(facets.outline());
        }
    }

    private static void outline(Graphics2D g, Facets facets, DrillLook look) {
        float width = (float) Math.max(0.8, facets.radius() * 0.05);
        boolean dashed = look.rough() && look.colour().isPresent();
        g.setStroke(
                dashed
                        ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {2, 2}, 0)
                        : new BasicStroke(width));
        g.setColor(look.colour().map(c -> Shade.edge(c, Tone.isDark())).orElse(Tone.FAINT.colour()));
        Path2D path = new Path2D.Double(facets.outline());
        g.draw(path);
    }
}
