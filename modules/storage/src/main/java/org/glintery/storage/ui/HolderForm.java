package org.glintery.storage.ui;

import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.storage.Holder;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.openide.util.NbBundle.Messages;

/** Asks what a new holder is like. Event thread. */
final class HolderForm {

    private static final int WIDTH_PX = 460;
    private static final int MOST = 100;
    private static final int USUAL_ROWS = 6;
    private static final int USUAL_COLUMNS = 10;

    private final JTextField name = new JTextField(18);
    private final JSpinner rows = new JSpinner(new SpinnerNumberModel(USUAL_ROWS, 1, MOST, 1));
    private final JSpinner columns = new JSpinner(new SpinnerNumberModel(USUAL_COLUMNS, 1, MOST, 1));
    private final JTextField capacity = new JTextField(8);
    private final WrappedText missing = Texts.wrappedHint("");

    private HolderForm() {}

    @Messages({
        "HolderForm.title=Add a holder",
        "HolderForm.do=Add it",
        "HolderForm.name=What you call it",
        "HolderForm.nameHint=Such as Case A",
        "HolderForm.rows=Rows",
        "HolderForm.columns=Columns",
        "HolderForm.capacity=Drills in one pocket",
        "HolderForm.capacityHint=Leave it empty if you do not know",
        "HolderForm.needsName=Give it a name first.",
        "HolderForm.notANumber=Drills in one pocket must be a whole number, or empty."
    })
    static Optional<Holder> ask() {
        HolderForm form = new HolderForm();
        FormSheet sheet = new FormSheet(2)
                .wide(Bundle.HolderForm_name(), form.name, Bundle.HolderForm_nameHint())
                .field(Bundle.HolderForm_rows(), form.rows)
                .field(Bundle.HolderForm_columns(), form.columns)
                .wide(Bundle.HolderForm_capacity(), form.capacity, Bundle.HolderForm_capacityHint())
                .whole(form.missing);
        JPanel narrow = new JPanel(new MigLayout("insets 0", "[" + Space.px(WIDTH_PX) + "!, fill]"));
        narrow.setOpaque(false);
        narrow.add(sheet);
        boolean wanted = Asking.ask(Bundle.HolderForm_title(), narrow, Bundle.HolderForm_do(), form::ready);
        return wanted ? Optional.of(form.holder()) : Optional.empty();
    }

    private boolean ready() {
        boolean named = !name.getText().isBlank();
        boolean number = capacity.getText().strip().matches("([1-9]\\d{0,8})?");
        missing.setText(!named ? Bundle.HolderForm_needsName() : !number ? Bundle.HolderForm_notANumber() : "");
        return named && number;
    }

    private Holder holder() {
        Optional<Long> takes = Optional.of(capacity.getText().strip())
                .filter(text -> !text.isEmpty())
                .map(Long::valueOf);
        return Holder.grid(name.getText().strip(), (Integer) rows.getValue(), (Integer) columns.getValue(), takes);
    }
}
