package org.glintery.workbench.shelves;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Standing;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.Typing;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.piece.PieceWords;
import org.glintery.workbench.piece.SizeWords;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Asks what there is to know of a new kit or piece; a title is enough. Event thread. */
final class KitForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 600;
    private final transient Desk desk;
    private final transient Origin origin;
    private final JTextField title = new JTextField();
    private final JTextField source = new JTextField();
    private final JTextField size = new JTextField();
    private final ChoiceBox<Standing> standing = new ChoiceBox<>(List.of(Standing.values()), PieceWords::standing);
    private final ChoiceBox<Shape> shape = new ChoiceBox<>(PieceWords.withNone(Shape.values()), PieceWords::shape);
    private final ChoiceBox<Coverage> coverage = new ChoiceBox<>(List.of(Coverage.values()), PieceWords::coverage);
    private final WrappedText legendWords = Texts.wrappedHint("");
    private final WrappedText pictureWords = Texts.wrappedHint("");
    private final WrappedText missing = Texts.wrappedHint("");
    private final transient List<PictureDrop.Taken> pictures = new ArrayList<>();
    private transient Optional<ReadLegend> legend = Optional.empty();

    @Messages({
        "KitForm.title=Title",
        "KitForm.source=Where it came from",
        "KitForm.size=Drilled size in cm",
        "KitForm.sizeHint=Such as 35 x 45; leave it empty if you have not measured",
        "KitForm.standing=Where it is in its life",
        "KitForm.shape=Most of its drills are",
        "KitForm.coverage=How much of the canvas takes drills",
        "KitForm.legend=Legend",
        "KitForm.noLegend=None yet. It can be typed, pasted or read later, on the piece's page.",
        "KitForm.chooseLegend=Choose a legend file",
        "KitForm.pictures=Picture",
        "KitForm.noPicture=None yet. Drop a photo here, or choose one.",
        "KitForm.choosePicture=Choose a picture"
    })
    KitForm(Desk desk, Origin origin) {
        super(new MigLayout("insets 0, wrap 1", "[" + Space.px(WIDTH_PX) + "!, fill]"));
        this.desk = desk;
        this.origin = origin;
        boolean withKit = origin instanceof Origin.NewKit;
        setOpaque(false);
        standing.setSelectedItem(Standing.SHELVED);
        coverage.setSelectedItem(Coverage.NOT_SAID);
        FormSheet form = new FormSheet(2);
        form.wide(Bundle.KitForm_title(), title, "");
        if (withKit) {
            form.field(Bundle.KitForm_source(), source);
        }
        form.field(Bundle.KitForm_standing(), standing);
        form.field(Bundle.KitForm_shape(), shape);
        form.field(Bundle.KitForm_coverage(), coverage);
        form.wide(Bundle.KitForm_size(), size, Bundle.KitForm_sizeHint());
        form.wide(
                Bundle.KitForm_pictures(),
                beside(pictureWords, Bundle.KitForm_choosePicture(), Pictogram.PICTURE, this::choosePicture),
                "");
        if (withKit) {
            form.wide(
                    Bundle.KitForm_legend(),
                    beside(legendWords, Bundle.KitForm_chooseLegend(), Pictogram.LEGEND, this::chooseLegend),
                    "");
        }
        legendWords.setText(Bundle.KitForm_noLegend());
        pictureWords.setText(Bundle.KitForm_noPicture());
        add(form);
        add(missing, "wmin 0");
        PictureDrop.onto(this, desk, this::addPicture);
        Typing.into(title, () -> missing.setText(""));
        Typing.into(size, () -> missing.setText(""));
        shape.addActionListener(e -> readAgain());
        source.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                readAgain();
            }
        });
    }

    private Optional<Shape> shape() {
        return Optional.ofNullable(shape.chosen());
    }

    private Optional<String> source() {
        return Optional.of(source.getText().strip()).filter(s -> !s.isEmpty());
    }

    /** What a legend's file is read by that does not say it itself. */
    LegendReader.Assumed assumed() {
        return ReadLegend.assumed(desk.view(), shape(), source());
    }

    /** Reads the legend once more when it would be understood otherwise now; false when nothing is to be read. */
    private boolean readAgain() {
        LegendReader.Assumed now = assumed();
        Optional<Path> file = legend.filter(read -> !read.holdsFor(now)).map(ReadLegend::file);
        file.ifPresent(again -> Entries.readLegend(desk, this, again));
        return file.isPresent();
    }

    /** Fills the title in, if none was typed. */
    void suggestTitle(String suggested) {
        if (title.getText().isBlank()) {
            title.setText(suggested);
        }
    }

    /** What a file's name says of what is in it. */
    static String titleOf(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return (dot > 0 ? name.substring(0, dot) : name).replace('_', ' ');
    }

    @Messages({
        "# {0} - how many",
        "# {1} - how many in words",
        "KitForm.pictureCount={0,choice,1#One picture|1<{1} pictures} so far."
    })
    void addPicture(PictureDrop.Taken taken) {
        pictures.add(taken);
        pictureWords.setText(Bundle.KitForm_pictureCount(pictures.size(), Balance.grouped(pictures.size())));
    }

    void legendRead(ReadLegend read) {
        suggestTitle(titleOf(read.file()));
        legend = Optional.of(read);
        legendWords.setText(LegendWords.understood(read.reading()));
        Asking.fit(this);
    }

    void legendRefused(String why) {
        legend = Optional.empty();
        legendWords.setText(why);
        Asking.fit(this);
    }

    /** Whether enough was said; tells what is missing. */
    @Messages({
        "KitForm.needsTitle=Give it a title first. A few words are enough.",
        "KitForm.readAgain=The legend is read once more, as what you wrote last asks for it. Then shelve it.",
        "KitForm.sizeNotUnderstood=The size is not understood. Write it as 35 x 45, or leave it empty."
    })
    boolean ready() {
        boolean titled = !title.getText().isBlank();
        boolean sized = SizeWords.read(size.getText()).isPresent();
        boolean again = readAgain();
        missing.setText(
                !titled
                        ? Bundle.KitForm_needsTitle()
                        : !sized ? Bundle.KitForm_sizeNotUnderstood() : again ? Bundle.KitForm_readAgain() : "");
        Asking.fit(this);
        return titled && sized && !again;
    }

    KitDraft draft() {
        Optional<LegendReader.Reading> reading = legend.flatMap(ReadLegend::whole);
        return new KitDraft(
                title.getText().strip(),
                origin,
                source(),
                standing.chosen(),
                shape(),
                coverage.chosen(),
                SizeWords.read(size.getText()).orElse(Canvas.NOT_SAID),
                List.copyOf(pictures),
                reading.map(LegendReader.Reading::lines).orElse(List.of()),
                reading.map(LegendReader.Reading::entries).orElse(Map.of()));
    }

    private static JPanel beside(WrappedText words, String button, Pictogram icon, Runnable action) {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx, gap " + Space.APART, "[][grow, fill]"));
        row.setOpaque(false);
        row.add(Buttons.plain(icon, button, action), "top");
        row.add(words, "wmin 0");
        return row;
    }

    private void choosePicture() {
        choose().ifPresent(file -> PictureDrop.take(desk, file, this::addPicture));
    }

    private void chooseLegend() {
        choose().ifPresent(file -> Entries.readLegend(desk, this, file));
    }

    private Optional<Path> choose() {
        JFileChooser chooser = new JFileChooser();
        return chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }
}
