package org.glintery.framing.ui;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.workbench.parts.DrawnComponent;
import org.glintery.workbench.parts.PictureShelf;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tone;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** A piece as it will hang, drawn to scale with its rails and their lengths. Event thread. */
final class HangingDrawing extends DrawnComponent {

    private static final long serialVersionUID = 1L;
    private static final int MARGIN_PX = 44;
    private static final int WIDTH_PX = 300;
    private static final int HEIGHT_PX = 300;
    private static final float[] DASHES = {5, 4};

    private final transient Desk desk;
    private transient Optional<Hanging> shown = Optional.empty();
    private double wallWidthMm;
    private double wallHeightMm;

    HangingDrawing(Desk desk) {
        super(AccessibleRole.ICON);
        this.desk = desk;
        setPreferredSize(new Dimension(Space.px(WIDTH_PX), Space.px(HEIGHT_PX)));
        setMinimumSize(new Dimension(Space.px(WIDTH_PX / 2), Space.px(HEIGHT_PX / 2)));
    }

    /** Shows one, as large as there is room for. */
    void show(Optional<Hanging> hanging) {
        show(
                hanging,
                hanging.map(h -> h.outer().getWidth()).orElse(1.0),
                hanging.map(h -> h.outer().getHeight()).orElse(1.0));
    }

    /** Shows one on a wall of a given size, so that several drawings side by side have one scale. */
    @Messages({
        "# {0} - decision",
        "# {1} - width",
        "# {2} - height",
        "HangingDrawing.name={0}: {1} x {2} mm on the wall",
        "HangingDrawing.none=The size is not known yet"
    })
    void show(Optional<Hanging> hanging, double newWallWidthMm, double newWallHeightMm) {
        shown = hanging;
        wallWidthMm = newWallWidthMm;
        wallHeightMm = newWallHeightMm;
        String name = hanging.map(h -> Bundle.HangingDrawing_name(
                        DecisionWords.of(h.decision()),
                        Millimetres.words(h.outer().getWidth()),
                        Millimetres.words(h.outer().getHeight())))
                .orElseGet(Bundle::HangingDrawing_none);
        getAccessibleContext().setAccessibleName(name);
        setToolTipText(name);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (shown.isEmpty()) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        Hanging hanging = shown.get();
        double margin = Space.px(MARGIN_PX);
        double scale = Math.min((getWidth() - 2 * margin) / wallWidthMm, (getHeight() - 2 * margin) / wallHeightMm);
        if (scale > 0) {
            double x = (getWidth() - hanging.outer().getWidth() * scale) / 2;
            double y = (getHeight() - hanging.outer().getHeight() * scale) / 2;
            Rectangle2D outer = placed(hanging.outer(), scale, x, y);
            Rectangle2D visible = placed(hanging.visible(), scale, x, y);
            artwork(g, hanging, visible);
            surround(g, hanging, outer, visible, scale);
            new DimensionLines(g, hanging).draw(outer);
        }
        g.dispose();
    }

    private static Rectangle2D placed(Rectangle2D mm, double scale, double x, double y) {
        return new Rectangle2D.Double(
                x + mm.getX() * scale, y + mm.getY() * scale, mm.getWidth() * scale, mm.getHeight() * scale);
    }

    private void artwork(Graphics2D g, Hanging hanging, Rectangle2D at) {
        g.setColor(Tone.ACCENT_SOFT.colour());
        g.fill(at);
        picture(hanging, at)
                .ifPresent(image -> g.drawImage(
                        image, (int) at.getX(), (int) at.getY(), (int) at.getWidth(), (int) at.getHeight(), null));
        g.setColor(Tone.INK.colour());
        g.setStroke(new BasicStroke(1));
        g.draw(at);
    }

    private Optional<BufferedImage> picture(Hanging hanging, Rectangle2D at) {
        int width = (int) Math.ceil(at.getWidth());
        int height = (int) Math.ceil(at.getHeight());
        return width <= 0 || height <= 0
                ? Optional.empty()
                : hanging.picture()
                        .flatMap(picture ->
                                PictureShelf.scaled(desk.workshop(), picture.hash(), width, height, read -> repaint()));
    }

    private static void surround(Graphics2D g, Hanging hanging, Rectangle2D outer, Rectangle2D visible, double scale) {
        if (hanging.isFramed()) {
            mouldings(g, outer, visible);
        } else if (hanging.decision() == Decision.HANGER) {
            double lath = Hanging.LATH_MM * scale;
            lath(g, new Rectangle2D.Double(outer.getX(), outer.getY(), outer.getWidth(), lath));
            lath(g, new Rectangle2D.Double(outer.getX(), outer.getMaxY() - lath, outer.getWidth(), lath));
        } else if (hanging.decision() == Decision.STRETCHED) {
            dashed(g, inset(visible, 0.06)); // the bars lie behind the cloth
        } else if (hanging.decision() == Decision.SLEEVE) {
            dashed(g, outer);
        } else if (hanging.decision() == Decision.ON_BOARD) {
            boardEdge(g, visible, Hanging.BOARD_MM * scale);
        }
    }

    /** Four rails, mitred at the corners. */
    private static void mouldings(Graphics2D g, Rectangle2D outer, Rectangle2D visible) {
        Area ring = new Area(outer);
        ring.subtract(new Area(visible));
        g.setColor(Tone.SHEET.colour());
        g.fill(ring);
        g.setColor(Tone.ACCENT.colour(0.25));
        g.fill(ring);
        g.setColor(Tone.INK.colour());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(outer);
        g.draw(visible);
        g.draw(new Line2D.Double(outer.getX(), outer.getY(), visible.getX(), visible.getY()));
        g.draw(new Line2D.Double(outer.getMaxX(), outer.getY(), visible.getMaxX(), visible.getY()));
        g.draw(new Line2D.Double(outer.getX(), outer.getMaxY(), visible.getX(), visible.getMaxY()));
        g.draw(new Line2D.Double(outer.getMaxX(), outer.getMaxY(), visible.getMaxX(), visible.getMaxY()));
    }

    private static void lath(Graphics2D g, Rectangle2D at) {
        g.setColor(Tone.SHEET.colour());
        g.fill(at);
        g.setColor(Tone.INK.colour());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(at);
    }

    /** The edge of a board behind the artwork, as seen from a little to the left and above. */
    private static void boardEdge(Graphics2D g, Rectangle2D at, double thickPx) {
        Path2D edge = new Path2D.Double();
        edge.moveTo(at.getMaxX(), at.getY());
        edge.lineTo(at.getMaxX() + thickPx, at.getY() + thickPx);
        edge.lineTo(at.getMaxX() + thickPx, at.getMaxY() + thickPx);
        edge.lineTo(at.getX() + thickPx, at.getMaxY() + thickPx);
        edge.lineTo(at.getX(), at.getMaxY());
        edge.lineTo(at.getMaxX(), at.getMaxY());
        edge.closePath();
        g.setColor(Tone.ACCENT.colour(0.25));
        g.fill(edge);
        g.setColor(Tone.INK.colour());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(edge);
        g.draw(new Line2D.Double(at.getMaxX(), at.getMaxY(), at.getMaxX() + thickPx, at.getMaxY() + thickPx));
    }

    private static void dashed(Graphics2D g, Rectangle2D at) {
        g.setColor(Tone.INK.colour());
        g.setStroke(new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, DASHES, 0));
        g.draw(at);
    }

    private static Rectangle2D inset(Rectangle2D of, double share) {
        double by = Math.min(of.getWidth(), of.getHeight()) * share;
        return new Rectangle2D.Double(of.getX() + by, of.getY() + by, of.getWidth() - 2 * by, of.getHeight() - 2 * by);
    }
}
