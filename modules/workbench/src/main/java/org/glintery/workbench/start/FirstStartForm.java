package org.glintery.workbench.start;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.workshop.Settings;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.util.NbBundle.Messages;

/** Asks where the workshop shall be, how much of it is kept, and offers the demo. Event thread. */
final class FirstStartForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 560;
    private final JTextField folder = new JTextField(30);
    private final JRadioButton book = new JRadioButton();
    private final JRadioButton drills = new JRadioButton();
    private final ChoiceBox<Currency> currency =
            Currencies.choice(Currencies.here(Locale.getDefault(), Settings.USUAL.currency()));
    private final JCheckBox demo = new JCheckBox();

    @Messages({
        "FirstStartForm.welcome=Set up your workshop",
        "FirstStartForm.lead=A workshop is one folder on this computer. All that you keep is in it, and it is yours: it can be copied, and its backups can be read without Glintery.",
        "FirstStartForm.folder=Where shall the workshop be?",
        "FirstStartForm.folderHint=A new or empty folder. Not one that is synced while you work.",
        "FirstStartForm.choose=Choose",
        "FirstStartForm.depth=Only the book, or the drills as well?",
        "FirstStartForm.book=Only the book: pieces, sittings, finishes and pictures",
        "FirstStartForm.drills=The drills as well: what lies in which pocket, leftovers, and the sums",
        "FirstStartForm.depthHint=You can change this later. Nobody has to count drills.",
        "FirstStartForm.currency=What are your prices in?",
        "FirstStartForm.demo=Fill it with the demo, to look around first"
    })
    FirstStartForm(Path suggested, boolean demoOffered) {
        super(new MigLayout("insets 0, wrap 1, gapy " + Space.APART, "[" + Space.px(WIDTH_PX) + "!, fill]"));
        setOpaque(false);
        add(Texts.title(Bundle.FirstStartForm_welcome()));
        add(Texts.body(Bundle.FirstStartForm_lead()), "wmin 0");
        FormSheet form = new FormSheet();
        form.field(Bundle.FirstStartForm_folder(), folderRow(suggested), Bundle.FirstStartForm_folderHint());
        form.field(Bundle.FirstStartForm_depth(), depthRows(), Bundle.FirstStartForm_depthHint());
        form.field(Bundle.FirstStartForm_currency(), currency);
        add(form);
        demo.setText(Bundle.FirstStartForm_demo());
        demo.setOpaque(false);
        if (demoOffered) {
            add(demo);
        }
    }

    /** The folder that was typed; empty when the text can't be one. */
    Optional<Path> folder() {
        try {
            String typed = folder.getText().strip();
            return typed.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Path.of(typed).toAbsolutePath());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    Settings settings() {
        return new Settings(
                book.isSelected() ? Settings.Depth.ONLY_THE_BOOK : Settings.Depth.DRILLS_AS_WELL,
                currency.chosen().getCurrencyCode(),
                false);
    }

    boolean demo() {
        return demo.isSelected();
    }

    private JPanel folderRow(Path suggested) {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx, gap " + Space.NEAR, "[grow, fill][]"));
        row.setOpaque(false);
        folder.setText(suggested.toString());
        row.add(folder);
        row.add(Buttons.plain(Pictogram.OPEN, Bundle.FirstStartForm_choose(), this::choose));
        return row;
    }

    private JPanel depthRows() {
        JPanel rows = new JPanel(new MigLayout("insets 0, wrap 1, gapy " + Space.TIGHT));
        rows.setOpaque(false);
        book.setText(Bundle.FirstStartForm_book());
        drills.setText(Bundle.FirstStartForm_drills());
        ButtonGroup one = new ButtonGroup();
        for (JRadioButton button : new JRadioButton[] {drills, book}) {
            button.setOpaque(false);
            one.add(button);
            rows.add(button);
        }
        drills.setSelected(true);
        return rows;
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser(new File(folder.getText()).getParentFile());
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            folder.setText(chooser.getSelectedFile().toString());
        }
    }
}
