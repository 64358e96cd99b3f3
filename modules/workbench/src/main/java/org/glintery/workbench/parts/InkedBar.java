package org.glintery.workbench.parts;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import org.glintery.api.Stable;
import org.openide.util.NbBundle.Messages;

/** How far a piece is: the laid share hatched as on an inked drawing. Event thread. */
@Stable
public final class InkedBar extends DrawnComponent {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT_PX = 16;
    private static final int WIDTH_PX = 180;
    private static final double STROKE_APART_PX = 5;
    private transient Optional<Double> share = Optional.empty();
    private boolean estimated;

    /** A bar that can't tell yet. */
    public InkedBar() {
        super(AccessibleRole.PROGRESS_BAR);
    }

    /** @param newShare 0 to 1; empty when it can't be told @param newEstimated whether it was worked out */
    @Messages({
        "# {0} - per cent",
        "InkedBar.laid={0} % laid",
        "# {0} - per cent",
        "InkedBar.estimated=about {0} % laid",
        "InkedBar.unknown=how much is laid is not known"
    })
    public void setShare(Optional<Double> newShare, boolean newEstimated) {
        share = newShare.map(s -> Math.max(0, Math.min(1, s)));
        estimated = newEstimated;
        String words = share.map(s -> Math.round(s * 100))
                .map(p -> newEstimated ? Bundle.InkedBar_estimated(p) : Bundle.InkedBar_laid(p))
                .orElseGet(Bundle::InkedBar_unknown);
        setToolTipText(words);
        getAccessibleContext().setAccessibleName(words);
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.px(WIDTH_PX), Space.px(HEIGHT_PX));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Space.px(WIDTH_PX / 3), Space.px(HEIGHT_PX));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Tone.SHEET.colour());
        g.fillRect(0, 0, getWidth(), getHeight());
        double laidPx = share.orElse(0.0) * (getWidth() - 1);
        hatch(g, new Rectangle2D.Double(0, 0, laidPx, getHeight()));
        g.setColor(Tone.EDGE.colour());
        g.setStroke(new BasicStroke(1));
        g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        if (share.isPresent()) {
            g.setColor(Tone.ACCENT.colour());
            g.setStroke(
                    estimated
                            ? new BasicStroke(
                                    1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {3, 2}, 0)
                            : new BasicStroke(2));
            g.draw(new Line2D.Double(laidPx, 0, laidPx, getHeight()));
        }
        g.dispose();
    }

    private static void hatch(Graphics2D g, Rectangle2D area) {
        var old = g.getClip();
        g.clip(area);
        g.setColor(Tone.ACCENT.colour(0.16));
        g.fill(area);
        g.setColor(Tone.ACCENT.colour());
        g.setStroke(new BasicStroke(1.1f));
        for (double x = area.getMinX() - area.getHeight(); x < area.getMaxX(); x += STROKE_APART_PX) {
            g.draw(new Line2D.Double(x, area.getMaxY(), x + area.getHeight(), area.getMinY()));
        }
        g.setClip(old);
    }
}
