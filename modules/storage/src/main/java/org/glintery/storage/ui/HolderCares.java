package org.glintery.storage.ui;

import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JPopupMenu;
import javax.swing.JTextField;
import org.glintery.api.storage.Storage;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Adds, renames, lends and removes holders. Event thread. */
final class HolderCares {
    private static final int NAME_COLUMNS = 24;
    private final Desk desk;
    private final Storage storage;

    HolderCares(Desk desk, Storage storage) {
        this.desk = desk;
        this.storage = storage;
    }

    void add() {
        HolderForm.ask().ifPresent(holder -> desk.change(view -> storage.addHolder(view, UUID.randomUUID(), holder)));
    }

    @Messages({"HolderCares.edit=Rename or lend", "HolderCares.remove=Remove it"})
    void menu(CabinetSheet.HolderDrawing holder, JComponent under) {
        JPopupMenu menu = new JPopupMenu();
        menu.add(Bundle.HolderCares_edit()).addActionListener(e -> edit(holder));
        menu.add(Bundle.HolderCares_remove())
                .addActionListener(e -> desk.change(view -> storage.removeHolder(view, holder.id())));
        menu.show(under, 0, under.getHeight());
    }

    @Messages({
        "HolderCares.title=Rename or lend",
        "HolderCares.do=Keep it",
        "HolderCares.name=What you call it",
        "HolderCares.lent=Lent to",
        "HolderCares.lentHint=Empty while it is here"
    })
    private void edit(CabinetSheet.HolderDrawing holder) {
        JTextField name = new JTextField(holder.name(), NAME_COLUMNS);
        JTextField lent = new JTextField(holder.lentTo().orElse(""));
        WrappedText missing = Texts.wrappedHint("");
        FormSheet sheet = new FormSheet()
                .field(Bundle.HolderCares_name(), name)
                .field(Bundle.HolderCares_lent(), lent, Bundle.HolderCares_lentHint())
                .whole(missing);
        boolean agreed = Asking.ask(Bundle.HolderCares_title(), sheet, Bundle.HolderCares_do(), () -> {
            missing.setText(name.getText().isBlank() ? Bundle.HolderForm_needsName() : "");
            return !name.getText().isBlank();
        });
        if (agreed) {
            desk.change(view -> HolderEdits.named(view, storage, holder.id(), name.getText(), lent.getText()));
        }
    }
}
