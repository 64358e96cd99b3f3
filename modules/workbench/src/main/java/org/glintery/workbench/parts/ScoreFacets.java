package org.glintery.workbench.parts;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleRole;
import org.glintery.api.Stable;
import org.openide.util.NbBundle.Messages;

/**
 * A score from 1 to 5, or none, as filled facets. Keys: left and right, 1 to 5, and 0 or Delete for none; a click on
 * the last filled facet takes the score away. Event thread.
 */
@Stable
public final class ScoreFacets extends DrawnComponent {
    private static final long serialVersionUID = 1L;
    private static final int MOST = 5;
    private static final int FACET_PX = 24;
    private static final double TABLE = 0.46;
    /** How light falls on the four facets of a filled one, from the top right round. */
    private static final double[] LIGHT = {0.18, -0.12, -0.26, 0.34};

    private final boolean editable;
    private transient Consumer<Optional<Integer>> chosen = score -> {};
    private int score;

    /** Shows a score that can't be changed here. */
    public static ScoreFacets showing(Optional<Integer> score) {
        ScoreFacets facets = new ScoreFacets(false);
        facets.setScore(score);
        return facets;
    }

    /** @param whenChosen called when the user chooses; not by {@link #setScore} */
    public static ScoreFacets choosing(Consumer<Optional<Integer>> whenChosen) {
        ScoreFacets facets = new ScoreFacets(true);
        facets.chosen = whenChosen;
        return facets;
    }

    private ScoreFacets(boolean editable) {
        super(editable ? AccessibleRole.SLIDER : AccessibleRole.LABEL);
        this.editable = editable;
        setFocusable(editable);
        if (editable) {
            listenToKeys();
            listenToMouse();
        }
        setScore(Optional.empty());
    }

    public Optional<Integer> score() {
        return score == 0 ? Optional.empty() : Optional.of(score);
    }

    @Messages({"# {0} - 1 to 5", "ScoreFacets.score=score {0} of 5", "ScoreFacets.none=no score"})
    public void setScore(Optional<Integer> newScore) {
        score = Math.max(0, Math.min(MOST, newScore.orElse(0)));
        String words = score == 0 ? Bundle.ScoreFacets_none() : Bundle.ScoreFacets_score(score);
        setToolTipText(words);
        getAccessibleContext().setAccessibleName(words);
        repaint();
    }

    private void choose(int newScore) {
        int within = Math.max(0, Math.min(MOST, newScore));
        if (within != score) {
            setScore(within == 0 ? Optional.empty() : Optional.of(within));
            chosen.accept(score());
        }
    }

    private void listenToKeys() {
        for (int i = 0; i <= MOST; i++) {
            int wanted = i;
            onKey(String.valueOf(i), () -> choose(wanted));
            onKey("NUMPAD" + i, () -> choose(wanted));
        }
        onKey("DELETE", () -> choose(0));
        onKey("BACK_SPACE", () -> choose(0));
        onKey("RIGHT", () -> choose(score + 1));
        onKey("UP", () -> choose(score + 1));
        onKey("LEFT", () -> choose(score - 1));
        onKey("DOWN", () -> choose(score - 1));
    }

    private void listenToMouse() {
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                requestFocusInWindow();
                int clicked = (e.getX() - getInsets().left) / Space.px(FACET_PX) + 1;
                choose(clicked == score ? 0 : clicked);
            }
        });
        repaintOnFocus();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(MOST * Space.px(FACET_PX) + 2, Space.px(FACET_PX) + 2);
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double side = Space.px(FACET_PX);
        double middle = getHeight() / 2.0;
        for (int i = 0; i < MOST; i++) {
            facet(g, 1 + side * (i + 0.5), middle, side * 0.44, i < score);
        }
        if (isFocusOwner()) {
            g.setColor(Tone.ACCENT.colour());
            g.setStroke(new BasicStroke(1.5f));
            g.drawRoundRect(0, 0, getPreferredSize().width - 1, getHeight() - 1, 6, 6);
        }
        g.dispose();
    }

    /** A cut stone on its corner: a table and four facets round it. Filled it is solid, else only its lines are there. */
    private static void facet(Graphics2D g, double x, double y, double r, boolean filled) {
        double[][] outer = corners(x, y, r);
        double[][] table = corners(x, y, r * TABLE);
        for (int i = 0; i < outer.length; i++) {
            int next = (i + 1) % outer.length;
            Path2D side = path(outer[i], outer[next], table[next], table[i]);
            if (filled) {
                g.setColor(Shade.lit(Tone.ACCENT.colour(), LIGHT[i], 255));
                g.fill(side);
            }
        }
        if (filled) {
            g.setColor(Tone.ACCENT.colour());
            g.fill(path(table));
        }
        g.setColor(filled ? Tone.ON_ACCENT.colour(0.55) : Tone.EDGE.colour(0.6));
        g.setStroke(new BasicStroke(0.8f));
        g.draw(path(table));
        for (int i = 0; i < outer.length; i++) {
            g.draw(path(outer[i], table[i]));
        }
        g.setColor(filled ? Tone.ACCENT.colour() : Tone.EDGE.colour());
        g.setStroke(new BasicStroke(1.4f));
        g.draw(path(outer));
    }

    private static double[][] corners(double x, double y, double r) {
        return new double[][] {{x, y - r}, {x + r, y}, {x, y + r}, {x - r, y}};
    }

    private static Path2D path(double[]... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0][0], points[0][1]);
        for (int i = 1; i < points.length; i++) {
            path.lineTo(points[i][0], points[i][1]);
        }
        path.closePath();
        return path;
    }
}
