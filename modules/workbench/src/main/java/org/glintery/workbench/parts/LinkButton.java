package org.glintery.workbench.parts;

import java.awt.Cursor;
import java.awt.FontMetrics;
import java.awt.Graphics;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.SwingConstants;

/** A button that looks like a link; a line under its words shows the pointer over it or the focus in it. Event thread. */
final class LinkButton extends JButton {
    private static final long serialVersionUID = 1L;

    LinkButton(String text) {
        super(text);
        setContentAreaFilled(false);
        setBorder(BorderFactory.createEmptyBorder(Space.HAIR, 0, Space.HAIR, Space.HAIR));
        setHorizontalAlignment(SwingConstants.LEADING);
        setRolloverEnabled(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
    }

    @Override
    protected void paintComponent(Graphics g) {
        if (isFocusOwner()) {
            g.setColor(Tone.ACCENT_SOFT.colour());
            g.fillRect(0, 0, getWidth(), getHeight());
        }
        super.paintComponent(g);
        if (isFocusOwner() || getModel().isRollover()) {
            FontMetrics metrics = getFontMetrics(getFont());
            int y = (getHeight() + metrics.getAscent()) / 2 + 1;
            int width = Math.min(metrics.stringWidth(getText()), getWidth() - getInsets().left);
            g.setColor(getForeground());
            g.fillRect(getInsets().left, y, width, isFocusOwner() ? Space.px(Space.HAIR) : 1);
        }
    }
}
