package org.glintery.framing.ui;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Framing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.EmptyNote;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.TextEdit;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The Framing bench: one piece, and ways for it to hang side by side at one scale. */
final class FramingBenchPart implements ScreenPart<List<FramingBenchPart.Choice>> {

    private static final int CARD_PX = 300;

    /** A piece that can be chosen. */
    record Choice(UUID piece, String title) {}

    private final Desk desk;
    private final Framing framing;
    private final ChoiceBox<Choice> pieces;
    private final JTextField face = new JTextField();
    private final JTextField lip = new JTextField();
    private final WrappedText hint = Texts.wrappedHint("");
    private final JPanel cards = new JPanel(new MigLayout(
            "insets 0, fillx, wrap 2, gap " + Space.SECTION, "[" + Space.px(CARD_PX) + ":pref:, grow, fill, sg]"));
    private final JPanel chosen =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.APART, "[grow, fill]"));
    private final JComponent none;
    private final JPanel page = new JPanel(new MigLayout(
            "insets " + Space.SECTION + ", fillx, wrap 1, hidemode 3, gapy " + Space.APART, "[grow, fill]"));
    private Optional<UUID> piece = Optional.empty();

    @Messages({
        "FramingBenchPart.piece=Piece",
        "FramingBenchPart.face=Try a moulding, its face in mm",
        "FramingBenchPart.lip=Its lip over the piece, in mm",
        "FramingBenchPart.none=Nothing to hang yet",
        "FramingBenchPart.noneText=A piece that is on the bench or made can be tried here in a frame, on bars or between laths."
    })
    FramingBenchPart(Desk desk) {
        this.desk = desk;
        this.framing = FramingOfDesk.of(desk);
        pieces = new ChoiceBox<>(Choice.class, List.of(), Choice::title, choice -> choose(choice.piece()));
        TextEdit.of(face, typed -> reckon());
        TextEdit.of(lip, typed -> reckon());
        none = new EmptyNote(Pictogram.FRAMING, Bundle.FramingBenchPart_none(), Bundle.FramingBenchPart_noneText());
        page.setOpaque(false);
        cards.setOpaque(false);
        chosen.setOpaque(false);
        page.add(Texts.title(Bundle.FramingBenchWindow_name()));
        chosen.add(new FormSheet(3)
                .field(Bundle.FramingBenchPart_piece(), pieces)
                .field(Bundle.FramingBenchPart_face(), face)
                .field(Bundle.FramingBenchPart_lip(), lip));
        chosen.add(hint, "wmin 0");
        chosen.add(cards, "wmin 0");
        page.add(chosen, "wmin 0");
        page.add(none, "wmin 0");
    }

    /** Made pieces that nothing was decided for first, then other made ones, then those being made; by title. */
    @Override
    public List<Choice> prepare(View view) {
        return view.all(Piece.TYPE).stream()
                .filter(stored -> canHang(stored.value().standing()))
                .sorted(Comparator.<Stored<Piece>, Boolean>comparing(
                                stored -> stored.value().standing() != Standing.MADE)
                        .thenComparing(
                                stored -> PlanEdits.planOf(view, stored.id()).decision() != Decision.NOT_DECIDED)
                        .thenComparing(stored -> stored.value().title(), String.CASE_INSENSITIVE_ORDER))
                .map(stored -> new Choice(stored.id(), stored.value().title()))
                .toList();
    }

    private static boolean canHang(Standing standing) {
        return standing == Standing.MADE || standing == Standing.ON_THE_BENCH || standing == Standing.RESTING;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(List<Choice> choices) {
        chosen.setVisible(!choices.isEmpty());
        none.setVisible(choices.isEmpty());
        Optional<Choice> same = choices.stream()
                .filter(c -> piece.equals(Optional.of(c.piece())))
                .findFirst();
        Optional<Choice> now = same.or(() -> choices.stream().findFirst());
        pieces.show(choices, now.orElse(null));
        piece = now.map(Choice::piece);
        reckon();
    }

    private void choose(UUID wanted) {
        piece = Optional.of(wanted);
        reckon();
    }

    private void reckon() {
        Result<Optional<Moulding>> tried = tried();
        if (tried instanceof Result.Refused<Optional<Moulding>> no) {
            hint.setText(no.refusal().text());
        } else if (piece.isPresent()) {
            UUID wanted = piece.get();
            Optional<Moulding> moulding = tried.orThrow();
            desk.compute(view -> HangingOptions.of(view, framing, wanted, moulding), options -> {
                if (piece.equals(Optional.of(options.piece()))) {
                    showOptions(options);
                }
            });
        }
    }

    private Result<Optional<Moulding>> tried() {
        return Millimetres.read(face.getText())
                .then(width -> Millimetres.read(lip.getText())
                        .then(over -> Result.ok(width.map(w -> new Moulding("", w, over.orElse(0.0), 0)))));
    }

    @Messages({
        "# {0} - face",
        "# {1} - lip",
        "FramingBenchPart.example=The frame is drawn with a moulding of {0} mm and a lip of {1} mm, as an example. Type the measures of yours."
    })
    private void showOptions(HangingOptions options) {
        String example = options.example()
                ? Bundle.FramingBenchPart_example(
                        Millimetres.words(HangingOptions.EXAMPLE.widthMm()),
                        Millimetres.words(HangingOptions.EXAMPLE.lipMm()))
                : "";
        hint.setText(options.missing().isBlank() ? example : options.missing());
        hint.setVisible(!hint.getText().isBlank());
        cards.removeAll();
        for (HangingOptions.Option option : options.options()) {
            cards.add(new OptionCard(desk, options, option, () -> decide(options.piece(), option)), "top, wmin 0");
        }
        cards.revalidate();
        cards.repaint();
    }

    private void decide(UUID wanted, HangingOptions.Option option) {
        PlanEdits edits = new PlanEdits(framing, wanted, desk.clock());
        desk.change(edits.decideOn(option.plan()));
    }
}
