package org.glintery.workbench.piece;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.PictureView;
import org.glintery.workbench.parts.ScoreFacets;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The job card on top of a piece's page, like a gallery label. A picture can be dropped onto it. */
final class JobCardPart implements ScreenPart<JobCardFacts> {
    private static final int PICTURE_WIDTH_PX = 150;
    private static final int PICTURE_HEIGHT_PX = 150;
    private final UUID piece;
    private final Consumer<JobCardFacts> shown;
    private final PictureView picture;
    private final WrappedText title = Texts.wrappedTitle("");
    private final WrappedText lines = Texts.wrappedHint("");
    private final JLabel standing = Texts.heading("");
    private final ScoreFacets score = ScoreFacets.showing(Optional.empty());
    private final JPanel card;

    /** @param shown told each time the card is shown */
    JobCardPart(Desk desk, UUID piece, Consumer<JobCardFacts> shown) {
        this.piece = piece;
        this.shown = shown;
        picture = new PictureView(desk, PICTURE_WIDTH_PX, PICTURE_HEIGHT_PX);
        card = new JPanel(new MigLayout(
                "insets " + Space.SECTION + ", fillx, gapx " + Space.SECTION, "[][grow, fill]", "[][][][grow]"));
        card.putClientProperty(FlatClientProperties.STYLE_CLASS, "sheet");
        card.add(picture, "spany 4, top");
        card.add(title, "wmin 0, wrap");
        card.add(lines, "wmin 0, wrap");
        JPanel last = new JPanel(new MigLayout("insets 0, gap " + Space.SECTION));
        last.setOpaque(false);
        last.add(standing);
        last.add(score);
        card.add(last, "gaptop " + Space.NEAR);
        PictureDrop.onto(card, desk, taken -> desk.change(view -> withPicture(view, taken)));
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
    @Messages({"# {0} - standing", "# {1} - since when", "JobCard.since={0} since {1}"})
    public void show(JobCardFacts facts) {
        picture.setPicture(facts.picture());
        title.setText(facts.title());
        lines.setText(String.join("\n", facts.lines()));
        lines.setVisible(!facts.lines().isEmpty());
        String word = PieceWords.standing(facts.standing());
        standing.setText(
                facts.since().map(s -> Bundle.JobCard_since(word, s.words())).orElse(word));
        score.setVisible(facts.made());
        score.setScore(facts.score());
        shown.accept(facts);
        card.revalidate();
    }

    @Messages({
        "# {0} - title",
        "JobCard.addPicture=Add a picture to {0}",
        "JobCard.gone=The piece is not there any more. Nothing was changed."
    })
    private Result<ChangeSet> withPicture(View view, PictureDrop.Taken taken) {
        return view.find(Piece.TYPE, piece)
                .map(stored -> {
                    var pictures = new java.util.ArrayList<>(stored.value().pictures());
                    pictures.add(taken.picture());
                    return Result.ok(ChangeSet.named(
                                    Bundle.JobCard_addPicture(stored.value().title()))
                            .replace(Piece.TYPE, stored, stored.value().withPictures(pictures))
                            .blob(taken.blob())
                            .build());
                })
                .orElseGet(() -> Result.refused("gone", Bundle.JobCard_gone()));
    }
}
