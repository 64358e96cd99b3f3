package org.glintery.framing.ui;

import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Framing;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.BesideOrBelow;
import org.glintery.workbench.parts.HowWeKnow;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The Frame tab: what was decided, and the piece as it will hang. */
final class FramePart implements ScreenPart<FramePage> {

    private static final int DRAWING_PX = 340;
    private static final int FORM_PX = 300;

    private final UUID piece;
    private final Framing framing;
    private final FrameForm form;
    private final HangingDrawing drawing;
    private final WrappedText figures = Texts.body("");
    private final HowWeKnow how = new HowWeKnow("");
    private final CautionNote caution = new CautionNote();
    private final JComponent page;

    FramePart(Desk desk, UUID piece) {
        this.piece = piece;
        this.framing = FramingOfDesk.of(desk);
        form = new FrameForm(desk, new PlanEdits(framing, piece, desk.clock()));
        drawing = new HangingDrawing(desk);
        JPanel seen =
                new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.NEAR, "[grow, fill]"));
        seen.setOpaque(false);
        seen.add(drawing, "h " + Space.px(DRAWING_PX) + "!");
        seen.add(figures, "wmin 0");
        seen.add(how);
        seen.add(caution, "wmin 0");
        BesideOrBelow both = new BesideOrBelow(form, FORM_PX, seen, DRAWING_PX);
        both.setBorder(Space.around(Space.SECTION));
        page = new PageScroll(both);
    }

    @Override
    public FramePage prepare(View view) {
        return FramePage.of(view, framing, piece);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    @Messages({
        "# {0} - questions",
        "FramePart.settle=Settle this first: {0}",
        "FramePart.notFramed=It stays as it is. That is an answer too.",
        "FramePart.undecided=Nothing is decided yet. The Framing bench shows ways for it to hang side by side."
    })
    public void show(FramePage shown) {
        form.show(shown);
        drawing.show(shown.hanging());
        drawing.setVisible(shown.hanging().isPresent());
        Decision decision = shown.plan().decision();
        figures.setText(
                switch (decision) {
                    case NOT_FRAMED -> Bundle.FramePart_notFramed();
                    case NOT_DECIDED -> Bundle.FramePart_undecided();
                    default -> shown.figures().map(f -> words(shown, f)).orElse(shown.missing());
                });
        how.setFigures(shown.figures().map(f -> howWeKnow(shown, f)).orElse(""));
        String first =
                shown.settleNow().isEmpty() ? "" : Bundle.FramePart_settle(String.join(" ", shown.settleNow())) + " ";
        caution.show(first + DecisionWords.caution(decision));
        page.revalidate();
        page.repaint();
    }

    private static String words(FramePage shown, FrameFigures figures) {
        String words = FigureWords.of(shown.plan().decision(), figures);
        return isFramed(shown) ? words + "\n" + FigureWords.of(shown.depth()) : words;
    }

    private static String howWeKnow(FramePage shown, FrameFigures figures) {
        String words = FigureWords.howWeKnow(figures);
        return isFramed(shown) ? words + " " + FigureWords.howWeKnow(shown.depth()) : words;
    }

    private static boolean isFramed(FramePage shown) {
        return shown.plan().decision() == Decision.FRAMED;
    }
}
