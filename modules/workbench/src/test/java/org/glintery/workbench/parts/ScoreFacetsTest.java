package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.UIManager;
import org.glintery.workbench.looks.Contrast;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The score as it is drawn, on the ground of a job card. */
class ScoreFacetsTest {
    private static final int MOST = 5;
    private static final double LEAST_CONTRAST = 3; // WCAG 2.2, 1.4.11

    @AfterEach
    void takeTheColoursBack() {
        List.of("accent", "onAccent", "edge", "sheet").forEach(tone -> UIManager.put("Glintery." + tone, null));
    }

    @ParameterizedTest
    @CsvSource({"Light, 0", "Light, 3", "Light, 5", "Dark, 0", "Dark, 2", "Dark, 5"})
    void fillsAsManyAsTheScore_andCanBeSeen(String face, int score) throws Exception {
        var theme = Contrast.theme(face);
        for (String tone : List.of("accent", "onAccent", "edge", "sheet")) {
            UIManager.put("Glintery." + tone, Color.decode(theme.getProperty("Glintery." + tone)));
        }
        ScoreFacets facets = ScoreFacets.showing(score == 0 ? Optional.empty() : Optional.of(score));
        Dimension size = facets.getPreferredSize();
        facets.setSize(size);
        BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Color ground = Tone.SHEET.colour();
        g.setColor(ground);
        g.fillRect(0, 0, size.width, size.height);
        facets.paint(g);
        g.dispose();

        List<Boolean> filled = new ArrayList<>();
        for (int i = 0; i < MOST; i++) {
            int middle = (int) Math.round((i + 0.5) * size.width / MOST);
            Color there = new Color(image.getRGB(middle, size.height / 2));
            filled.add(Contrast.between(there, ground) >= LEAST_CONTRAST);
            assertThat(strongest(image, middle - size.width / MOST / 2, middle, ground))
                    .as("outline of facet %d", i + 1)
                    .isGreaterThanOrEqualTo(LEAST_CONTRAST);
        }
        assertThat(filled).containsExactly(filled(score, MOST));
    }

    private static double strongest(BufferedImage image, int fromX, int toX, Color ground) {
        double most = 1;
        for (int x = Math.max(0, fromX); x < toX; x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                most = Math.max(most, Contrast.between(new Color(image.getRGB(x, y)), ground));
            }
        }
        return most;
    }

    private static Boolean[] filled(int score, int of) {
        Boolean[] filled = new Boolean[of];
        for (int i = 0; i < of; i++) {
            filled[i] = i < score;
        }
        return filled;
    }
}
