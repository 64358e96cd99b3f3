package org.glintery.finishes.ui;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.Caution;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.PictureStrip;
import org.glintery.workbench.parts.ScoreFacets;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.TextEdit;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** The form of a finish; each field is kept when it is left. Event thread. */
final class FinishForm extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int ROWS = 4;

    private final transient Desk desk;
    private final transient FinishEdits edits;
    private final transient TextEdit title;
    private final AboutField started;
    private final AboutField finished;
    private final ScoreFacets score;
    private final ChoiceBox<Sealing> sealing;
    private final transient TextEdit where;
    private final transient TextEdit tools;
    private final transient TextEdit making;
    private final transient TextEdit altered;
    private final transient TextEdit comments;
    private final PictureStrip photos;
    private final PictureStrip sketches;
    private final LaterBoxes later;
    private final Caution sealingCaution = new Caution(Bundle.FinishForm_sealing());
    private final WrappedText settleFirst = Texts.wrappedHint("");

    @Messages({
        "FinishForm.title=Title",
        "FinishForm.started=Begun",
        "FinishForm.finished=Finished",
        "FinishForm.score=Score",
        "FinishForm.scoreHint=1 to 5, or none",
        "FinishForm.sealed=Sealed or not",
        "FinishForm.where=Where it was made",
        "FinishForm.tools=Tools",
        "FinishForm.toolsHint=Between commas",
        "FinishForm.making=How it was to make",
        "FinishForm.altered=What was altered from the design as sold",
        "FinishForm.photos=Photos",
        "FinishForm.choosePhotos=Choose photos",
        "FinishForm.sketches=Sketches",
        "FinishForm.chooseSketches=Choose sketches",
        "FinishForm.comments=Anything else",
        "FinishForm.later=Left for later",
        "FinishForm.laterHint=What is ticked is listed on Today as still to be written. Everything else may stay empty.",
        "FinishForm.sealing=Sealing can dull coatings: try it on a spare drill of each coating first. Sealants, sprays and resin: fresh air, gloves, the product's safety sheet and your local rules."
    })
    FinishForm(Desk desk, FinishEdits edits) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.APART, "[grow, fill]"));
        this.desk = desk;
        this.edits = edits;
        setOpaque(false);
        JTextField titleField = new JTextField();
        JTextField whereField = new JTextField();
        JTextField toolsField = new JTextField();
        JTextArea makingArea = area();
        JTextArea alteredArea = area();
        JTextArea commentsArea = area();
        title = text(titleField, (copy, text) -> copy.title = text);
        where = text(whereField, (copy, text) -> copy.where = FinishEdits.where(text));
        tools = text(toolsField, (copy, text) -> copy.tools = FinishEdits.tools(text));
        making = text(makingArea, (copy, text) -> copy.making = text);
        altered = text(alteredArea, (copy, text) -> copy.altered = text);
        comments = text(commentsArea, (copy, text) -> copy.comments = text);
        started = new AboutField(desk.clock());
        started.onCommit(day -> desk.change(edits.set(copy -> copy.startedOn = day)));
        finished = new AboutField(desk.clock());
        finished.onCommit(day -> desk.change(edits.set(copy -> copy.finishedOn = day)));
        score = ScoreFacets.choosing(chosen -> desk.change(edits.set(copy -> copy.score = chosen)));
        sealing = new ChoiceBox<>(
                List.of(Sealing.values()),
                FieldWords::of,
                chosen -> desk.change(edits.set(copy -> copy.sealing = chosen)));
        photos = pictures(Bundle.FinishForm_choosePhotos(), copy -> copy.photos);
        sketches = pictures(Bundle.FinishForm_chooseSketches(), copy -> copy.sketches);
        later = new LaterBoxes((field, leave) -> desk.change(edits.leave(field, leave)));
        add(new FormSheet(2)
                .wide(Bundle.FinishForm_title(), titleField, "")
                .field(Bundle.FinishForm_started(), started)
                .field(Bundle.FinishForm_finished(), finished)
                .field(Bundle.FinishForm_score(), score, Bundle.FinishForm_scoreHint())
                .field(Bundle.FinishForm_sealed(), sealing)
                .field(Bundle.FinishForm_where(), whereField)
                .field(Bundle.FinishForm_tools(), toolsField, Bundle.FinishForm_toolsHint()));
        add(settleFirst, "wmin 0");
        add(sealingCaution, "wmin 0");
        add(new FormSheet()
                .field(Bundle.FinishForm_making(), new JScrollPane(makingArea))
                .field(Bundle.FinishForm_altered(), new JScrollPane(alteredArea))
                .field(Bundle.FinishForm_comments(), new JScrollPane(commentsArea))
                .section(Bundle.FinishForm_photos())
                .whole(photos)
                .section(Bundle.FinishForm_sketches())
                .whole(sketches)
                .section(Bundle.FinishForm_later())
                .whole(later)
                .whole(Texts.wrappedHint(Bundle.FinishForm_laterHint())));
    }

    @Messages({"# {0} - questions", "FinishForm.settle=Before sealing, settle this first: {0}"})
    void show(Finish finish, List<String> questions) {
        title.show(finish.title());
        started.setValue(finish.startedOn());
        finished.setValue(finish.finishedOn());
        score.setScore(finish.score());
        sealing.show(finish.sealing());
        where.show(finish.where().orElse(""));
        tools.show(String.join(", ", finish.tools()));
        making.show(finish.making());
        altered.show(finish.altered());
        comments.show(finish.comments());
        photos.show(finish.photos());
        sketches.show(finish.sketches());
        later.show(finish);
        boolean mayBeSealed =
                finish.sealing() == Sealing.NOT_SAID && finish.later().contains(Field.SEALING);
        sealingCaution.setVisible(mayBeSealed || finish.sealing() == Sealing.SEALED);
        settleFirst.setVisible(finish.sealing() != Sealing.NOT_SEALED && !questions.isEmpty());
        settleFirst.setText(Bundle.FinishForm_settle(String.join(" ", questions)));
    }

    private TextEdit text(JTextComponent field, BiConsumer<FinishCopy, String> set) {
        return TextEdit.of(field, text -> desk.change(edits.set(copy -> set.accept(copy, text))));
    }

    private PictureStrip pictures(String choose, Function<FinishCopy, List<Picture>> of) {
        return new PictureStrip(desk, choose, new PictureStrip.Acts() {
            @Override
            public void add(PictureDrop.Taken taken) {
                desk.change(edits.addPicture(taken.picture(), taken.blob(), of));
            }

            @Override
            public void remove(Picture picture) {
                desk.change(edits.removePicture(picture, of));
            }
        });
    }

    private static JTextArea area() {
        JTextArea area = new JTextArea(ROWS, 30);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        return area;
    }
}
