package org.glintery.workbench.parts;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import javax.accessibility.AccessibleRole;
import javax.swing.Icon;
import org.glintery.api.Stable;

/** A drill drawn with its facets, as a component or as an icon in lists and tables. Event thread. */
@Stable
public final class DrillSwatch extends DrawnComponent {
    private static final long serialVersionUID = 1L;
    private final int sizePx;
    private transient DrillLook look;

    public DrillSwatch(DrillLook look, int sizePx) {
        super(AccessibleRole.ICON);
        this.sizePx = sizePx;
        setLook(look);
    }

    public void setLook(DrillLook newLook) {
        look = newLook;
        setToolTipText(newLook.words());
        getAccessibleContext().setAccessibleName(newLook.words());
        repaint();
    }

    /** The drill as an icon. */
    public static Icon icon(DrillLook look, int sizePx) {
        return new Icon() {
            @Override
            public void paintIcon(Component c, Graphics g, int x, int y) {
                DrillPainter.paint((Graphics2D) g, look, new Rectangle2D.Double(x, y, getIconWidth(), getIconHeight()));
            }

            @Override
            public int getIconWidth() {
                return Space.px(sizePx);
            }

            @Override
            public int getIconHeight() {
                return Space.px(sizePx);
            }
        };
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet() ? super.getPreferredSize() : new Dimension(Space.px(sizePx), Space.px(sizePx));
    }

    @Override
    protected void paintComponent(Graphics g) {
        DrillPainter.paint((Graphics2D) g, look, new Rectangle2D.Double(0, 0, getWidth(), getHeight()));
    }
}
