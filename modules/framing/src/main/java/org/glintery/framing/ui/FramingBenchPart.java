package org.glintery.framing.ui;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Framing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.Columns;
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
final class FramingBenchPart implements ScreenPart<List<BenchChoice>> {
    private static final int MOST_SIDE_BY_SIDE = 3;
    private static final int CARD_PX = 270;

    private final Desk desk;
    private final Framing framing;
    private final ChoiceBox<BenchChoice> pieces;
    private final JTextField face = new JTextField();
    private final JTextField lip = new JTextField();
    private final WrappedText hint = Texts.wrappedHint("");
    private final JButton page = Buttons.link(Bundle.FramingBenchPart_page(), this::openPage);
    private final Columns cards = new Columns(MOST_SIDE_BY_SIDE, CARD_PX, Space.SECTION);
    private final JPanel settle = new JPanel(new BorderLayout());
    private final JPanel chosen =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.APART, "[grow, fill]"));
    private final JComponent none;
    private final JPanel sheet = new JPanel(new MigLayout(
            "insets " + Space.SECTION + ", fillx, wrap 1, hidemode 3, gapy " + Space.APART, "[grow, fill]"));
    private Optional<UUID> piece = Optional.empty();

    @Messages({
        "FramingBenchPart.piece=Piece",
        "FramingBenchPart.face=Moulding face, in mm",
        "FramingBenchPart.lip=Moulding lip, in mm",
        "FramingBenchPart.page=Open its page, to tell its size",
        "FramingBenchPart.none=Nothing to hang yet",
        "FramingBenchPart.noneText=A piece that is on the bench or made can be tried here: in a frame, on bars, on a board, between laths or in a sleeve."
    })
    FramingBenchPart(Desk desk) {
        this.desk = desk;
        this.framing = FramingOfDesk.of(desk);
        pieces = new ChoiceBox<>(List.of(), BenchChoice::words, choice -> choose(choice.piece()));
        TextEdit.of(face, typed -> reckon());
        TextEdit.of(lip, typed -> reckon());
        none = new EmptyNote(Pictogram.FRAMING, Bundle.FramingBenchPart_none(), Bundle.FramingBenchPart_noneText());
        sheet.setOpaque(false);
        chosen.setOpaque(false);
        settle.setOpaque(false);
        sheet.add(Texts.title(Bundle.FramingBenchWindow_name()));
        chosen.add(
                new FormSheet(MOST_SIDE_BY_SIDE)
                        .field(Bundle.FramingBenchPart_piece(), pieces)
                        .field(Bundle.FramingBenchPart_face(), face)
                        .field(Bundle.FramingBenchPart_lip(), lip),
                "wmin 0");
        chosen.add(hint, "wmin 0");
        chosen.add(page, "growx 0");
        chosen.add(settle, "wmin 0");
        chosen.add(cards, "wmin 0");
        sheet.add(chosen, "wmin 0");
        sheet.add(none, "wmin 0");
    }

    @Override
    public List<BenchChoice> prepare(View view) {
        return BenchChoice.of(view);
    }

    @Override
    public JComponent component() {
        return sheet;
    }

    @Override
    public void show(List<BenchChoice> choices) {
        chosen.setVisible(!choices.isEmpty());
        none.setVisible(choices.isEmpty());
        Optional<BenchChoice> same = choices.stream()
                .filter(c -> piece.equals(Optional.of(c.piece())))
                .findFirst();
        Optional<BenchChoice> now = same.or(() -> choices.stream().findFirst());
        pieces.show(choices, now.orElse(null));
        piece = now.map(BenchChoice::piece);
        reckon();
    }

    private void choose(UUID wanted) {
        piece = Optional.of(wanted);
        reckon();
    }

    private void openPage() {
        piece.ifPresent(desk::openPiece);
    }

    private void reckon() {
        Result<Optional<Moulding>> tried = tried();
        if (tried instanceof Result.Refused<Optional<Moulding>> no) {
            hint.setText(no.refusal().text());
            hint.setVisible(true);
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
        page.setVisible(!options.missing().isBlank());
        settle.removeAll();
        if (!options.settleFirst().isEmpty()) {
            settle.add(new OpenFirst(options.settleFirst()));
        }
        cards.removeAll();
        for (HangingOptions.Option option : options.options()) {
            cards.tall(new OptionCard(desk, options, option, () -> decide(options, option)));
        }
        sheet.revalidate();
        sheet.repaint();
    }

    private void decide(HangingOptions options, HangingOptions.Option option) {
        PlanEdits edits = new PlanEdits(framing, options.piece(), desk.clock());
        switch (OneWayStep.answer(option.plan().decision(), options.settleFirst())) {
            case GO -> desk.change(edits.decideOn(option.plan()));
            case LEAVE_WHOLE -> desk.change(edits.decide(Decision.NOT_FRAMED));
            case NOT_NOW -> {} // nothing was decided
        }
    }
}
