package org.glintery.workbench.parts;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;
import org.glintery.api.workshop.View;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/**
 * The usual inside of a card on Today: pieces, each with its small picture, its title as a link to its page, and what
 * there is to say of it. The first few are shown, all on demand.
 *
 * @param <L> what is known of a line: an immutable value, made without Swing
 */
@Stable
public final class PieceLinesPart<L> implements ScreenPart<List<L>> {
    private static final int PICTURE_PX = 44;
    private final Desk desk;
    private final Function<View, List<L>> find;
    private final Function<L, Line> show;
    private final String none;
    private final int most;
    private final Optional<JComponent> foot;
    private final JPanel panel = new JPanel(new MigLayout(
            "insets 0, fillx, wrap 2, gapx " + Space.APART + ", gapy " + Space.APART,
            "[" + Space.px(PICTURE_PX) + "!][grow, fill]"));
    private boolean all;

    /** @param title of the link @param says under it; @see #line */
    public record Line(PieceFace face, String title, JComponent says) {}

    public static Line line(PieceFace face, JComponent says) {
        return new Line(face, face.title(), says);
    }

    /**
     * @param find finds the lines; as {@link ScreenPart#prepare}
     * @param show makes what is shown of one; on the event thread
     * @param none said when there are no lines
     * @param most shown at first
     */
    public PieceLinesPart(
            Desk desk,
            Function<View, List<L>> find,
            Function<L, Line> show,
            String none,
            int most,
            JComponent... foot) {
        this.desk = desk;
        this.find = find;
        this.show = show;
        this.none = none;
        this.most = most;
        this.foot = foot.length == 0 ? Optional.empty() : Optional.of(FlowRows.of(foot));
        panel.setOpaque(false);
    }

    @Override
    public List<L> prepare(View view) {
        return find.apply(view);
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    @Messages({"# {0} - how many", "PieceLinesPart.more=Show {0} more"})
    public void show(List<L> lines) {
        panel.removeAll();
        if (lines.isEmpty()) {
            panel.add(Texts.wrappedHint(none), "span 2, growx, wmin 0");
        }
        lines.stream().limit(all ? lines.size() : most).map(show).forEach(this::add);
        if (!all && lines.size() > most) {
            String words = Bundle.PieceLinesPart_more(String.valueOf(lines.size() - most));
            panel.add(Buttons.link(words, () -> showAll(lines)), "span 2");
        }
        foot.ifPresent(last -> panel.add(last, "span 2, growx"));
        panel.revalidate();
        panel.repaint();
    }

    private void showAll(List<L> lines) {
        all = true;
        show(lines);
    }

    private void add(Line line) {
        PictureView picture = new PictureView(desk, PICTURE_PX, PICTURE_PX);
        picture.setPicture(line.face().picture());
        JPanel words = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.HAIR, "[grow, fill]"));
        words.setOpaque(false);
        words.add(Buttons.link(line.title(), () -> desk.openPiece(line.face().piece())), "growx 0, wmin 0");
        words.add(line.says(), "wmin 0");
        panel.add(picture, "top");
        panel.add(words, "wmin 0, top");
    }
}
