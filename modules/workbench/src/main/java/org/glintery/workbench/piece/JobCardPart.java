package org.glintery.workbench.piece;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Needs;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.PictureView;
import org.glintery.workbench.parts.ScoreFacets;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.words.Word;
import org.glintery.workbench.words.Words;
import org.openide.util.NbBundle.Messages;

/** The job card on top of a piece's page, like a gallery label. A picture can be dropped onto it. */
final class JobCardPart implements ScreenPart<JobCardFacts> {
    private static final int PICTURE_PX = 150;
    private static final int SMALL_PX = 56;
    private final UUID piece;
    private final Consumer<JobCardFacts> shown;
    private final PictureView picture;
    private final WrappedText title = Texts.wrappedTitle("");
    private final WrappedText lines = Texts.wrappedHint("");
    private final WrappedText standing = Texts.wrappedHeading("");
    private final ScoreFacets score = ScoreFacets.showing(Optional.empty());
    private final JButton edit;
    private final JPanel card;
    private boolean compact;

    /** @param shown told each time the card is shown */
    @Messages("JobCard.edit=Edit")
    JobCardPart(Desk desk, UUID piece, Consumer<JobCardFacts> shown) {
        this.piece = piece;
        this.shown = shown;
        picture = new PictureView(desk, PICTURE_PX, PICTURE_PX);
        edit = Needs.of(
                desk,
                Stash.class,
                Buttons.plain(Pictogram.EDIT, Bundle.JobCard_edit(), () -> PieceForm.edit(desk, piece)));
        card = new JPanel(new BorderLayout());
        card.putClientProperty(FlatClientProperties.STYLE_CLASS, "sheet");
        lay(false);
        PieceChanges changes = new PieceChanges(piece);
        PictureDrop.onto(card, desk, taken -> desk.change(changes.addPicture(taken)));
    }

    /** In a low window the card is one line, so that room is left for what is under it. */
    void setCompact(boolean newCompact) {
        if (newCompact != compact) {
            compact = newCompact;
            lay(newCompact);
        }
    }

    private void lay(boolean low) {
        int side = Space.px(low ? SMALL_PX : PICTURE_PX);
        picture.setPreferredSize(new Dimension(side, side));
        int rows = low ? 2 : 5;
        JPanel inside = new JPanel(new MigLayout(
                "insets " + (low ? Space.NEAR : Space.SECTION) + " " + Space.SECTION + ", fillx, hidemode 3, gapx "
                        + Space.SECTION + ", gapy " + (low ? 0 : Space.TIGHT),
                "[][grow, fill][]",
                low ? "[][]" : "[][][][][grow]"));
        inside.setOpaque(false);
        inside.add(picture, "spany " + rows + ", top");
        inside.add(title, "wmin 0");
        inside.add(edit, "top, spany " + rows + ", wrap");
        if (low) {
            JPanel last = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, gapx 0", "[][grow, fill]"));
            last.setOpaque(false);
            last.add(score, "gapright " + Space.APART);
            last.add(standing, "wmin 0");
            inside.add(last, "wmin 0");
        } else {
            inside.add(lines, "wmin 0, wrap");
            inside.add(standing, "wmin 0, gaptop " + Space.NEAR + ", wrap");
            inside.add(score, "growx 0");
        }
        card.removeAll();
        card.add(inside);
        card.revalidate();
        card.repaint();
    }

    @Override
    public JobCardFacts prepare(View view) {
        return JobCardFacts.of(view, piece);
    }

    @Override
    public JComponent component() {
        return card;
    }

    @Override
    public void show(JobCardFacts facts) {
        picture.setPicture(facts.picture());
        title.setText(facts.title());
        lines.setText(String.join("\n", facts.lines()));
        explainAnew(lines, () -> Words.explain(lines, lines.getText()));
        lines.setVisible(!facts.lines().isEmpty());
        standing.setText(PieceWords.standing(facts.standing(), facts.since()));
        explainAnew(standing, () -> Words.explain(standing, Word.of(facts.standing())));
        score.setVisible(facts.made());
        score.setScore(facts.score());
        shown.accept(facts);
        card.revalidate();
    }

    private static void explainAnew(JComponent words, Runnable explain) {
        words.setToolTipText(null);
        explain.run();
    }
}
