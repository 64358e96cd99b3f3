package org.glintery.charts;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Random;

/** Pictures drawn at random: soft gradients, overlapping forms with their own gradients, grain. */
final class GeneratedPicture {

    private static final int EDGE = 400;
    private static final int FORMS = 12;
    private static final double GRAIN = 8;

    private GeneratedPicture() {}

    /** The bytes of a PNG file. */
    static byte[] of(long seed) {
        Random random = new Random(seed);
        BufferedImage image = new BufferedImage(EDGE, EDGE, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setPaint(new GradientPaint(0, 0, colour(random), random.nextInt(EDGE), EDGE, colour(random)));
        graphics.fillRect(0, 0, EDGE, EDGE);
        for (int form = 0; form < FORMS; form++) {
            graphics.setPaint(new GradientPaint(
                    random.nextInt(EDGE),
                    random.nextInt(EDGE),
                    colour(random),
                    random.nextInt(EDGE),
                    random.nextInt(EDGE),
                    colour(random)));
            int x = random.nextInt(EDGE) - 60;
            int y = random.nextInt(EDGE) - 60;
            int width = 30 + random.nextInt(180);
            int height = 30 + random.nextInt(180);
            graphics.fill(
                    random.nextBoolean()
                            ? new Ellipse2D.Double(x, y, width, height)
                            : new Rectangle2D.Double(x, y, width, height));
        }
        graphics.dispose();
        for (int y = 0; y < EDGE; y++) {
            for (int x = 0; x < EDGE; x++) {
                int grain = (int) (GRAIN * random.nextGaussian());
                Color pixel = new Color(image.getRGB(x, y));
                image.setRGB(
                        x,
                        y,
                        byteOf(pixel.getRed() + grain) << 16
                                | byteOf(pixel.getGreen() + grain) << 8
                                | byteOf(pixel.getBlue() + grain));
            }
        }
        return TestPictures.file(image, "png");
    }

    private static Color colour(Random random) {
        return Color.getHSBColor(random.nextFloat(), 0.8f * random.nextFloat(), 0.15f + 0.8f * random.nextFloat());
    }

    private static int byteOf(int value) {
        return Math.max(0, Math.min(255, value));
    }
}
