package org.glintery.workbench.shelves;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JComponent;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.PictureShelf;
import org.glintery.workbench.parts.Tone;
import org.glintery.workbench.spi.Desk;

/** Small pictures for a list; the list is painted again when one has been read. Event thread. */
final class SmallPictures {
    private static final int SHARP = 2; // read at twice the size, so that they are sharp on dense screens
    private final Desk desk;
    private final int sidePx;

    SmallPictures(Desk desk, int sidePx) {
        this.desk = desk;
        this.sidePx = sidePx;
    }

    Icon of(Optional<Picture> picture, JComponent list) {
        Optional<BufferedImage> image = picture.flatMap(p ->
                PictureShelf.scaled(desk.workshop(), p.hash(), sidePx * SHARP, sidePx * SHARP, read -> list.repaint()));
        return new Icon() {
            @Override
            public int getIconWidth() {
                return sidePx;
            }

            @Override
            public int getIconHeight() {
                return sidePx;
            }

            @Override
            public void paintIcon(Component c, Graphics g, int x, int y) {
                paint((Graphics2D) g, image, x, y);
            }
        };
    }

    private void paint(Graphics2D g, Optional<BufferedImage> image, int x, int y) {
        if (image.isEmpty()) {
            g.setColor(Tone.LINE.colour());
            g.drawRect(x, y, sidePx - 1, sidePx - 1);
            Icon icon = Pictogram.PIECE.at(16, Tone.FAINT);
            int middle = (sidePx - icon.getIconWidth()) / 2;
            icon.paintIcon(null, g, x + middle, y + middle);
            return;
        }
        BufferedImage shown = image.get();
        double fit = Math.min((double) sidePx / shown.getWidth(), (double) sidePx / shown.getHeight());
        int width = (int) Math.round(shown.getWidth() * fit);
        int height = (int) Math.round(shown.getHeight() * fit);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(shown, x + (sidePx - width) / 2, y + (sidePx - height) / 2, width, height, null);
    }
}
