package org.glintery.activework.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import org.glintery.workbench.parts.DrawnComponent;
import org.glintery.workbench.parts.PictureView;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tone;
import org.openide.util.NbBundle.Messages;

/**
 * The pins on a picture, and the way to set one: a click, or arrow keys that move a cross and Enter. Lies over the
 * picture. Event thread.
 */
final class PinLayer extends DrawnComponent {
    private static final long serialVersionUID = 1L;
    private static final int RADIUS_PX = 11;
    private static final int CROSS_PX = 14;
    private static final double STEP = 0.02;

    /** A pin as it is drawn; x and y from 0 to 1. @param open whether its question waits for an answer */
    record Pin(int number, double x, double y, boolean open, String text) {}

    /** Told where on the picture a question is asked, from 0 to 1. */
    interface Placed {
        void at(double x, double y);
    }

    private final PictureView under;
    private final transient Placed placed;
    private transient List<Pin> pins = List.of();
    private transient Point2D cross = new Point2D.Double(0.5, 0.5);
    private int lit;

    @Messages("PinLayer.name=Picture to pin a question on. Arrow keys move the cross, Enter asks there.")
    PinLayer(PictureView under, Placed placed) {
        super(AccessibleRole.PANEL);
        this.under = under;
        this.placed = placed;
        setFocusable(true);
        setToolTipText("");
        getAccessibleContext().setAccessibleName(Bundle.PinLayer_name());
        walk("LEFT", -STEP, 0);
        walk("RIGHT", STEP, 0);
        walk("UP", 0, -STEP);
        walk("DOWN", 0, STEP);
        onKey("ENTER", () -> placed.at(cross.getX(), cross.getY()));
        onKey("SPACE", () -> placed.at(cross.getX(), cross.getY()));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                requestFocusInWindow();
                click(e);
            }
        });
        repaintOnFocus();
    }

    void show(List<Pin> newPins) {
        pins = List.copyOf(newPins);
        repaint();
    }

    /** Makes one pin stand out. @param number 0 for none */
    void light(int number) {
        lit = number;
        repaint();
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return pinAt(event).map(Pin::text).orElse(null);
    }

    private Optional<Pin> pinAt(MouseEvent event) {
        Rectangle at = picture();
        int reach = Space.px(RADIUS_PX);
        return pins.stream()
                .filter(pin -> event.getPoint().distance(x(at, pin.x()), y(at, pin.y())) <= reach)
                .findFirst();
    }

    private void click(MouseEvent e) {
        Rectangle at = picture();
        if (pinAt(e).isPresent()) {
            light(pinAt(e).get().number());
        } else if (at.contains(e.getPoint())) {
            cross = new Point2D.Double((e.getX() - at.x) / (double) at.width, (e.getY() - at.y) / (double) at.height);
            repaint();
            placed.at(cross.getX(), cross.getY());
        }
    }

    private Rectangle picture() {
        return under.shownAt().orElseGet(() -> new Rectangle(0, 0, 0, 0));
    }

    private static double x(Rectangle at, double share) {
        return at.x + share * at.width;
    }

    private static double y(Rectangle at, double share) {
        return at.y + share * at.height;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Rectangle at = picture();
        if (at.width == 0) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(getFont().deriveFont(Font.BOLD));
        pins.forEach(pin -> paint(g, at, pin));
        if (isFocusOwner()) {
            paintCross(g, x(at, cross.getX()), y(at, cross.getY()));
            g.setColor(Tone.ACCENT.colour());
            g.setStroke(new BasicStroke(Space.px(2)));
            g.drawRect(at.x, at.y, at.width - 1, at.height - 1);
        }
        g.dispose();
    }

    /** Filled while the question is open, a ring once it is answered. */
    private void paint(Graphics2D g, Rectangle at, Pin pin) {
        double r = Space.px(pin.number() == lit ? RADIUS_PX + 4 : RADIUS_PX);
        double x = x(at, pin.x());
        double y = y(at, pin.y());
        Ellipse2D disc = new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
        g.setColor(pin.open() ? Tone.ACCENT.colour() : Tone.SHEET.colour());
        g.fill(disc);
        g.setColor(pin.open() ? Tone.SHEET.colour() : Tone.ACCENT.colour());
        g.setStroke(new BasicStroke(Space.px(2)));
        g.draw(disc);
        g.setColor(pin.open() ? Tone.ON_ACCENT.colour() : Tone.INK.colour());
        String text = String.valueOf(pin.number());
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(text, (float) (x - metrics.stringWidth(text) / 2.0), (float)
                (y + (metrics.getAscent() - metrics.getDescent()) / 2.0));
    }

    /** Dark with a light rim, so that it is seen on any picture. */
    private static void paintCross(Graphics2D g, double x, double y) {
        double arm = Space.px(CROSS_PX);
        for (int pass = 0; pass < 2; pass++) {
            g.setColor(pass == 0 ? Color.WHITE : Color.BLACK);
            g.setStroke(new BasicStroke(pass == 0 ? 4 : 1.6f));
            g.draw(new Line2D.Double(x - arm, y, x + arm, y));
            g.draw(new Line2D.Double(x, y - arm, x, y + arm));
        }
    }

    private void walk(String stroke, double right, double down) {
        onKey(stroke, () -> {
            cross = new Point2D.Double(within(cross.getX() + right), within(cross.getY() + down));
            repaint();
        });
    }

    private static double within(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
