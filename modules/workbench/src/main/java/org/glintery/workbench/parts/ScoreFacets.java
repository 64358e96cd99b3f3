package org.glintery.workbench.parts;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
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
    private static final int FACET_PX = 20;
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
            key(String.valueOf(i), () -> choose(wanted));
            key("NUMPAD" + i, () -> choose(wanted));
        }
        key("DELETE", () -> choose(0));
        key("BACK_SPACE", () -> choose(0));
        key("RIGHT", () -> choose(score + 1));
        key("UP", () -> choose(score + 1));
        key("LEFT", () -> choose(score - 1));
        key("DOWN", () -> choose(score - 1));
    }

    private void key(String stroke, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                action.run();
            }
        });
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
        addFocusListener(new java.awt.event.FocusAdapter() {
            @Override
            public void focusGained(java.awt.event.FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(java.awt.event.FocusEvent e) {
                repaint();
            }
        });
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
            facet(g, 1 + side * (i + 0.5), middle, side * 0.42, i < score);
        }
        if (isFocusOwner()) {
            g.setColor(Tone.ACCENT.colour());
            g.setStroke(new BasicStroke(1.5f));
            g.drawRoundRect(0, 0, getPreferredSize().width - 1, getHeight() - 1, 6, 6);
        }
        g.dispose();
    }

    private static void facet(Graphics2D g, double x, double y, double r, boolean filled) {
        Path2D kite = kite(x, y, r);
        if (filled) {
            g.setColor(Tone.ACCENT.colour());
            g.fill(kite);
            g.setColor(Tone.ON_ACCENT.colour(0.35));
            g.fill(kite(x, y, r * 0.5));
        }
        g.setColor(filled ? Tone.ACCENT.colour() : Tone.EDGE.colour());
        g.setStroke(new BasicStroke(1.3f));
        g.draw(kite);
    }

    private static Path2D kite(double x, double y, double r) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - r);
        path.lineTo(x + r, y);
        path.lineTo(x, y + r);
        path.lineTo(x - r, y);
        path.closePath();
        return path;
    }
}
