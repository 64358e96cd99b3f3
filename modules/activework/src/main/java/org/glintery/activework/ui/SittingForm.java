package org.glintery.activework.ui;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.activework.ui.SittingDraft.Measure;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.activework.Sitting;
import org.glintery.api.time.About;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.openide.util.NbBundle.Messages;

/** Asks for a sitting: every field may stay empty. Event thread. */
final class SittingForm extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 480;

    private final AboutField day;
    private final ChoiceBox<Measure> measure = new ChoiceBox<>(List.of(Measure.values()), SittingForm::word);
    private final JTextField amount = new JTextField();
    private final JTextField symbols = new JTextField();
    private final JTextField minutes = new JTextField();
    private final JTextField where = new JTextField();
    private final JTextField note = new JTextField();
    private final WrappedText trouble = Texts.wrappedHint("");
    private final transient SittingDraft begun;
    private final transient UUID piece;
    private final transient Function<Sitting, Optional<Refusal>> check;

    /**
     * @param timed whether day and minutes are known already, as when a running sitting ends
     * @param check what can't be of what is typed; asked on the event thread
     */
    @Messages({
        "SittingForm.day=When",
        "SittingForm.amount=How much was laid",
        "SittingForm.measure=Counted in",
        "SittingForm.symbols=By symbol",
        "SittingForm.symbolsHint=Such as A=120, B=30. Only these are taken from the pockets and bags of the piece.",
        "SittingForm.minutes=Minutes, pauses left out",
        "SittingForm.where=Where",
        "SittingForm.note=Note"
    })
    SittingForm(
            Clock clock,
            UUID piece,
            SittingDraft begun,
            boolean hasSymbols,
            boolean timed,
            Function<Sitting, Optional<Refusal>> check) {
        super(new MigLayout("insets 0, wrap 1", "[" + Space.px(WIDTH_PX) + "!, fill]"));
        setOpaque(false);
        this.begun = begun;
        this.piece = piece;
        this.check = check;
        day = new AboutField(clock);
        FormSheet sheet = new FormSheet(2)
                .field(Bundle.SittingForm_amount(), amount)
                .field(Bundle.SittingForm_measure(), measure);
        if (!timed) {
            sheet.field(Bundle.SittingForm_day(), day).field(Bundle.SittingForm_minutes(), minutes);
        }
        if (hasSymbols) {
            sheet.wide(Bundle.SittingForm_symbols(), symbols, Bundle.SittingForm_symbolsHint());
        }
        sheet.field(Bundle.SittingForm_where(), where).field(Bundle.SittingForm_note(), note);
        add(sheet);
        add(trouble, "wmin 0");
        fill();
    }

    private void fill() {
        day.setValue(Optional.of(begun.day()));
        measure.setSelectedItem(begun.measure());
        amount.setText(begun.amount());
        symbols.setText(begun.symbols());
        minutes.setText(begun.minutes());
        where.setText(begun.where());
        note.setText(begun.note());
    }

    SittingDraft draft() {
        About when = day.value().orElse(begun.day());
        return new SittingDraft(
                when,
                measure.chosen(),
                amount.getText(),
                symbols.getText(),
                minutes.getText(),
                where.getText(),
                note.getText());
    }

    /** Whether all that is typed is understood; says what is not. */
    @Messages("SittingForm.date=The date is not understood yet. Change it, or leave it empty.")
    boolean ready() {
        if (!day.isUnderstood()) {
            trouble.setText(Bundle.SittingForm_date());
            return false;
        }
        Result<Sitting> understood = draft().sitting(piece)
                .then(sitting -> check.apply(sitting)
                        .<Result<Sitting>>map(Result::refused)
                        .orElseGet(() -> Result.ok(sitting)));
        trouble.setText(
                understood instanceof Result.Refused<?> no ? no.refusal().text() : "");
        return understood instanceof Result.Ok<?>;
    }

    @Messages({"SittingForm.drills=drills", "SittingForm.percent=percent of the whole", "SittingForm.sections=sections"
    })
    private static String word(Measure measure) {
        return switch (measure) {
            case DRILLS -> Bundle.SittingForm_drills();
            case PERCENT -> Bundle.SittingForm_percent();
            case SECTIONS -> Bundle.SittingForm_sections();
        };
    }
}
