package org.glintery.demo.scene;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;

/**
 * A picture drawn by code. Coordinates are thousandths of the width; y runs down to {@link Brush#tall()}. Any thread; a scene
 * keeps nothing between pictures.
 */
public interface Scene {
    void draw(Brush brush, Air air, Light light, SplittableRandom chance);

    /** Paints it. Any thread; may take a few hundred milliseconds. */
    default BufferedImage paint(int widthPx, double heightToWidth, Light light, SplittableRandom chance) {
        int heightPx = (int) Math.round(widthPx * heightToWidth);
        var image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        var brush = new Brush(image);
        var air = new Air(image, chance.nextLong());
        draw(brush, air, light, chance);
        brush.done();
        return image;
    }
}
