package org.glintery.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.glintery.api.workshop.Blob;
import org.glintery.colour.Srgb;

/** Renders a grid as drills on a canvas; what is not laid yet is pale print. */
final class DrillPicture {
    private static final int WIDTH = 720;
    private static final float QUALITY = 0.86f;

    private final DemoCard card;

    DrillPicture(DemoCard card) {
        this.card = card;
    }

    /** @param laid the share of rows that are laid, from the bottom up, 0 to 1 */
    Blob jpeg(DrillGrid grid, double laid, boolean round) {
        int cell = Math.max(3, WIDTH / grid.columns());
        var image = new BufferedImage(grid.columns() * cell, grid.rows() * cell, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(0xEDE7DA));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        double edge = grid.rows() * (1 - laid);
        for (int y = 0; y < grid.rows(); y++) {
            for (int x = 0; x < grid.columns(); x++) {
                Srgb colour = card.colour(grid.cells()[y * grid.columns() + x]);
                boolean done = y + 3 * Math.sin(x / 9.0) + 2 * Math.sin(x / 3.7) >= edge;
                if (done || laid >= 1) {
                    drill(image, g, x * cell, y * cell, cell, colour, round);
                } else {
                    g.setColor(mixed(colour, 0xEDE7DA, 0.72));
                    g.fillRect(x * cell, y * cell, cell - 1, cell - 1);
                }
            }
        }
        g.dispose();
        return Blob.of("image/jpeg", written(image));
    }

    private static void drill(BufferedImage image, Graphics2D g, int x, int y, int cell, Srgb colour, boolean round) {
        g.setColor(new Color(colour.rgb()));
        if (round) {
            g.setColor(mixed(colour, 0x20242A, 0.35));
            g.fillRect(x, y, cell, cell);
            g.setColor(new Color(colour.rgb()));
            g.fillOval(x, y, cell, cell);
        } else {
            g.fillRect(x, y, cell, cell);
        }
        int light = mixed(colour, 0xFFFFFF, 0.32).getRGB();
        int dark = mixed(colour, 0x10141A, 0.30).getRGB();
        for (int i = 0; i < cell; i++) {
            if (!round) {
                image.setRGB(x + i, y + cell - 1, dark);
                image.setRGB(x + cell - 1, y + i, dark);
            }
            if (i > 0 && i < cell - 1) {
                image.setRGB(x + i, y + (round ? 1 : 0), light);
                if (!round) {
                    image.setRGB(x, y + i, light);
                }
            }
        }
    }

    private static Color mixed(Srgb colour, int other, double share) {
        return new Color(
                (int) (colour.red() * (1 - share) + (other >> 16 & 255) * share),
                (int) (colour.green() * (1 - share) + (other >> 8 & 255) * share),
                (int) (colour.blue() * (1 - share) + (other & 255) * share));
    }

    private static byte[] written(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var bytes = new ByteArrayOutputStream();
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), param);
            out.flush();
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
    }
}
