package org.glintery.addon.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Caution;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** The care of a made piece: a line to write, and what was done before. */
@ServiceProvider(service = PieceTab.class)
public final class CareTab implements PieceTab {
    private static final int POSITION = 700;

    @Override
    @Messages("CareTab.title=Care")
    public String title() {
        return Bundle.CareTab_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public boolean offered(View view, UUID piece) {
        return view.find(Piece.TYPE, piece)
                .filter(stored -> stored.value().standing() == Standing.MADE)
                .isPresent();
    }

    @Override
    public ScreenPart<?> create(Desk desk, UUID piece) {
        return new Part(desk, piece);
    }

    private static final class Part implements ScreenPart<List<CareNote>> {
        private final Desk desk;
        private final UUID piece;
        private final CareBook book;
        private final JTextField words = new JTextField();
        private final AboutField on;
        private final FormSheet notes = new FormSheet();
        private final JComponent page;

        @Messages({
            "CareTab.write=What was done",
            "CareTab.words=In a few words",
            "CareTab.on=When",
            "CareTab.keep=Write it down",
            "CareTab.notes=So far",
            "CareTab.caution=Keep it out of the sun and away from heat and damp. Try any cleaner on a spare drill of each coating first."
        })
        Part(Desk desk, UUID piece) {
            this.desk = desk;
            this.piece = piece;
            book = desk.workshop().find(CareBook.class).orElseThrow();
            on = new AboutField(desk.clock());
            FormSheet sheet = new FormSheet(2);
            sheet.setBorder(Space.around(Space.SECTION));
            sheet.section(Bundle.CareTab_write());
            sheet.field(Bundle.CareTab_words(), words);
            sheet.field(Bundle.CareTab_on(), on);
            sheet.whole(Buttons.primary(Bundle.CareTab_keep(), this::keep));
            sheet.whole(new Caution(Bundle.CareTab_caution()));
            sheet.section(Bundle.CareTab_notes());
            sheet.whole(notes);
            page = new PageScroll(sheet);
        }

        @Override
        public List<CareNote> prepare(View view) {
            return book.notes(view, piece);
        }

        @Override
        public JComponent component() {
            return page;
        }

        @Override
        @Messages("CareTab.none=Nothing yet. Once a year is a good time to dust it and press loose drills back.")
        public void show(List<CareNote> written) {
            notes.removeAll();
            for (CareNote note : written) {
                notes.field(note.on().words(), Texts.body(note.words()));
            }
            if (written.isEmpty()) {
                notes.whole(Texts.wrappedHint(Bundle.CareTab_none()));
            }
            notes.revalidate();
            notes.repaint();
        }

        private void keep() {
            if (!on.isUnderstood()) {
                on.field().requestFocusInWindow();
                return;
            }
            String typed = words.getText();
            About when = on.value().orElse(About.on(LocalDate.now(desk.clock())));
            desk.change(view -> written(view, when, typed), applied -> words.setText(""));
        }

        @Messages("CareTab.gone=The piece is not there any more. Nothing was written down.")
        private Result<ChangeSet> written(View view, About when, String typed) {
            return view.find(Piece.TYPE, piece)
                    .map(stored -> book.write(view, UUID.randomUUID(), stored, when, typed))
                    .orElseGet(() -> Result.refused("gone", Bundle.CareTab_gone()));
        }
    }
}
