package org.glintery.workbench.sheet;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;
import java.util.Optional;
import org.glintery.colour.Contrast;
import org.glintery.colour.Srgb;
import org.glintery.workbench.parts.DrillLook;
import org.glintery.workbench.parts.DrillPainter;

/**
 * Each line of a legend drawn once at one size, to be copied into every cell that takes it. Immutable; any thread.
 *
 * @param side of a sprite, in pixels
 * @param pixels {@code side * side} colours for each line, as 0xRRGGBB
 */
record Sprites(int side, int[][] pixels) {
    private static final Font SYMBOLS = new Font(Font.SANS_SERIF, Font.BOLD, 100);
    private static final double SYMBOL_SHARE = 0.62;

    static Sprites of(List<LineLook> looks, SheetStyle style, int side, int groundRgb) {
        int[][] pixels = new int[looks.size()][];
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            for (int line = 0; line < pixels.length; line++) {
                g.setColor(new Color(groundRgb));
                g.fillRect(0, 0, side, side);
                draw(g, looks.get(line), style, side);
                pixels[line] = ((DataBufferInt) image.getRaster().getDataBuffer())
                        .getData()
                        .clone();
            }
        } finally {
            g.dispose();
        }
        return new Sprites(side, pixels);
    }

    private static void draw(Graphics2D g, LineLook look, SheetStyle style, int side) {
        Optional<Color> seen =
                look.drill().colour().map(colour -> new Color(style.sight().seen(colour.getRGB())));
        if (style.symbols()) {
            printed(g, look.symbol(), seen.orElse(Color.WHITE), side);
        } else {
            DrillLook drill = look.drill();
            DrillPainter.paint(
                    g,
                    new DrillLook(drill.shape(), drill.body(), drill.coating(), seen, drill.rough()),
                    new Rectangle2D.Double(0, 0, side, side));
        }
    }

    private static void printed(Graphics2D g, String symbol, Color ground, int side) {
        g.setColor(ground);
        g.fillRect(0, 0, side, side);
        g.setColor(new Color(Contrast.inkOn(Srgb.ofRgb(ground.getRGB())).rgb()));
        GlyphVector drawn = SYMBOLS.createGlyphVector(g.getFontRenderContext(), symbol);
        Rectangle2D box = drawn.getVisualBounds();
        if (!box.isEmpty()) {
            double scale = SYMBOL_SHARE * side / Math.max(box.getWidth(), box.getHeight());
            AffineTransform place = AffineTransform.getTranslateInstance(side / 2.0, side / 2.0);
            place.scale(scale, scale);
            place.translate(-box.getCenterX(), -box.getCenterY());
            g.fill(place.createTransformedShape(drawn.getOutline()));
        }
    }
}
