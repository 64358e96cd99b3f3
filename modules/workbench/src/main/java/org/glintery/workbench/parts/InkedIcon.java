package org.glintery.workbench.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URL;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.Icon;
import org.glintery.workbench.found.Found;
import org.openide.util.spi.SVGLoader;

/** Paints a drawing whose black is the ink and whose red is the accent. Event thread. */
final class InkedIcon implements Icon {
    private static final Logger LOG = Logger.getLogger(InkedIcon.class.getName());
    private static final int REMEMBERED = 400;
    private static final Map<Key, BufferedImage> TINTED = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, BufferedImage> eldest) {
            return size() > REMEMBERED;
        }
    };

    private final String resource;
    private final int sizePx;
    private final Tone ink;

    private record Key(String resource, int devicePx, int ink, int accent) {}

    InkedIcon(String resource, int sizePx, Tone ink) {
        this.resource = resource;
        this.sizePx = sizePx;
        this.ink = ink;
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(sizePx);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(sizePx);
    }

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        boolean usable = c == null || c.isEnabled();
        Color first = usable ? ink.colour() : Tone.EDGE.colour();
        Color second = !usable ? first : ink == Tone.ON_ACCENT ? first : Tone.ACCENT.colour();
        Graphics2D g2 = (Graphics2D) g.create();
        try {
            double scale = g2.getTransform().getScaleX();
            int devicePx = (int) Math.round(getIconWidth() * Math.max(1, scale));
            BufferedImage drawing;
            synchronized (TINTED) {
                drawing = TINTED.computeIfAbsent(
                        new Key(resource, devicePx, first.getRGB(), second.getRGB()), InkedIcon::tint);
            }
            g2.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g2.translate(x, y);
            g2.drawImage(
                    drawing,
                    AffineTransform.getScaleInstance(
                            (double) getIconWidth() / devicePx, (double) getIconHeight() / devicePx),
                    null);
        } finally {
            g2.dispose();
        }
    }

    private static BufferedImage tint(Key key) {
        BufferedImage image = new BufferedImage(key.devicePx, key.devicePx, BufferedImage.TYPE_INT_ARGB);
        drawing(key.resource, image);
        for (int y = 0; y < key.devicePx; y++) {
            for (int x = 0; x < key.devicePx; x++) {
                int argb = image.getRGB(x, y);
                double share = ((argb >> 16) & 0xff) / 255.0;
                image.setRGB(x, y, (argb & 0xff000000) | mix(key.ink, key.accent, share));
            }
        }
        return image;
    }

    private static void drawing(String resource, BufferedImage into) {
        SVGLoader loader = Found.maybe(SVGLoader.class).orElse(null);
        URL url = InkedIcon.class.getResource(resource);
        if (loader == null || url == null) {
            return; // outside the platform, as in a plain test, icons are blank
        }
        Graphics2D g = into.createGraphics();
        try {
            Icon icon = loader.loadIcon(url);
            g.scale((double) into.getWidth() / icon.getIconWidth(), (double) into.getHeight() / icon.getIconHeight());
            icon.paintIcon(null, g, 0, 0);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "The icon " + resource + " can't be read", e);
        } finally {
            g.dispose();
        }
    }

    private static int mix(int first, int second, double share) {
        int mixed = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            double channel = ((first >> shift) & 0xff) * (1 - share) + ((second >> shift) & 0xff) * share;
            mixed |= (int) Math.round(channel) << shift;
        }
        return mixed;
    }
}
