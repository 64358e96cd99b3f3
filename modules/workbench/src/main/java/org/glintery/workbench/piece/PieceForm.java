package org.glintery.workbench.piece;

import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.KeepingPlaces;
import org.glintery.api.workshop.Settings;
import org.glintery.workbench.parts.AboutField;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Corrects what is known of a piece and its kit. Event thread. */
public final class PieceForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 620;
    private final JTextField title = new JTextField();
    private final ChoiceBox<Standing> standing = new ChoiceBox<>(List.of(Standing.values()), PieceWords::standing);
    private final AboutField since;
    private final ChoiceBox<Shape> shape = new ChoiceBox<>(PieceWords.withNone(Shape.values()), PieceWords::shape);
    private final ChoiceBox<Coverage> coverage = new ChoiceBox<>(List.of(Coverage.values()), PieceWords::coverage);
    private final JTextField drilled = new JTextField();
    private final JTextField cloth = new JTextField();
    private final JTextField sections = new JTextField();
    private final JComboBox<String> keptAt = new JComboBox<>();
    private final JTextField source = new JTextField();
    private final AboutField ordered;
    private final AboutField arrived;
    private final JTextField price = new JTextField();
    private final JTextField postage = new JTextField();
    private final WrappedText trouble = Texts.wrappedHint("");
    private final boolean hasKit;

    /** Asks and applies. Event thread; returns when the dialog is closed. */
    @Messages({"PieceForm.heading=What is known of it", "PieceForm.do=Keep it"})
    public static void edit(Desk desk, UUID piece) {
        Optional<PieceEdit> now = PieceEdit.of(desk.view(), piece);
        Optional<Stash> stash = desk.workshop().find(Stash.class);
        if (now.isEmpty() || stash.isEmpty()) {
            desk.say(now.isEmpty() ? Bundle.PieceChanges_gone() : Bundle.PieceForm_noStash());
            return;
        }
        PieceForm form = new PieceForm(now.get(), KeepingPlaces.names(desk.view()), currency(desk), desk.clock());
        boolean agreed = Asking.ask(
                Bundle.PieceForm_heading(), form, Bundle.PieceForm_do(), () -> form.ready(desk, piece, stash.get()));
        if (agreed) {
            PieceEdit edit = form.edit();
            desk.change(view -> edit.change(view, piece, stash.get()));
        }
    }

    private static String currency(Desk desk) {
        return Settings.of(desk.view()).orElse(Settings.USUAL).currency();
    }

    @Messages({
        "PieceForm.noStash=Kits and pieces are switched off. Switch them on to change a piece.",
        "PieceForm.title=Title",
        "PieceForm.standing=Where it is in its life",
        "PieceForm.since=Since",
        "PieceForm.shape=Most of its drills are",
        "PieceForm.coverage=How much of the canvas takes drills",
        "PieceForm.drilled=Drilled size in cm",
        "PieceForm.sizeHint=Such as 35 x 45, or empty",
        "PieceForm.cloth=Whole canvas in cm",
        "PieceForm.sections=Sections it is worked in",
        "PieceForm.keptAt=Where it is kept",
        "PieceForm.keptAtHint=Choose a place, or write a new one",
        "PieceForm.kit=Its kit",
        "PieceForm.source=Where it came from",
        "PieceForm.ordered=Ordered",
        "PieceForm.arrived=Arrived",
        "# {0} - currency",
        "PieceForm.price=Price, in {0}",
        "# {0} - currency",
        "PieceForm.postage=Postage, in {0}"
    })
    private PieceForm(PieceEdit now, List<String> places, String currency, Clock clock) {
        super(new MigLayout("insets 0, wrap 1, hidemode 3", "[" + Space.px(WIDTH_PX) + "!, fill]"));
        setOpaque(false);
        since = new AboutField(clock);
        ordered = new AboutField(clock);
        arrived = new AboutField(clock);
        keptAt.setEditable(true);
        keptAt.getAccessibleContext().setAccessibleName(Bundle.PieceForm_keptAt());
        keptAt.getEditor().getEditorComponent().getAccessibleContext().setAccessibleName(Bundle.PieceForm_keptAt());
        keptAt.addItem("");
        places.forEach(keptAt::addItem);
        hasKit = now.kit().isPresent();
        FormSheet sheet = new FormSheet(2)
                .wide(Bundle.PieceForm_title(), title, "")
                .field(Bundle.PieceForm_standing(), standing)
                .field(Bundle.PieceForm_since(), since)
                .field(Bundle.PieceForm_drilled(), drilled, Bundle.PieceForm_sizeHint())
                .field(Bundle.PieceForm_cloth(), cloth, Bundle.PieceForm_sizeHint())
                .field(Bundle.PieceForm_shape(), shape)
                .field(Bundle.PieceForm_coverage(), coverage)
                .field(Bundle.PieceForm_sections(), sections)
                .field(Bundle.PieceForm_keptAt(), keptAt, Bundle.PieceForm_keptAtHint());
        if (hasKit) {
            sheet.section(Bundle.PieceForm_kit())
                    .wide(Bundle.PieceForm_source(), source, "")
                    .field(Bundle.PieceForm_ordered(), ordered)
                    .field(Bundle.PieceForm_arrived(), arrived)
                    .field(Bundle.PieceForm_price(currency), price)
                    .field(Bundle.PieceForm_postage(currency), postage);
        }
        add(sheet);
        add(trouble, "wmin 0");
        trouble.setVisible(false);
        fill(now);
    }

    private void fill(PieceEdit now) {
        title.setText(now.title());
        standing.show(now.standing());
        since.setValue(now.since());
        shape.show(now.shape().orElse(null));
        coverage.show(now.coverage());
        drilled.setText(now.drilled());
        cloth.setText(now.cloth());
        sections.setText(now.sections());
        keptAt.setSelectedItem(now.keptAt());
        now.kit().ifPresent(kit -> {
            source.setText(kit.source());
            ordered.setValue(kit.orderedOn());
            arrived.setValue(kit.arrivedOn());
            price.setText(kit.price());
            postage.setText(kit.postage());
        });
    }

    private PieceEdit edit() {
        return new PieceEdit(
                title.getText(),
                standing.chosen(),
                since.value(),
                Optional.ofNullable(shape.chosen()),
                coverage.chosen(),
                drilled.getText(),
                cloth.getText(),
                sections.getText(),
                String.valueOf(keptAt.getEditor().getItem()),
                hasKit
                        ? Optional.of(new PieceEdit.KitEdit(
                                source.getText(), ordered.value(), arrived.value(), price.getText(), postage.getText()))
                        : Optional.empty());
    }

    /** Whether all of it is understood; tells what is not. */
    @Messages("PieceForm.date=A date is not understood yet. Change it, or leave it empty.")
    private boolean ready(Desk desk, UUID piece, Stash stash) {
        boolean dated = Arrays.asList(since, ordered, arrived).stream().allMatch(AboutField::isUnderstood);
        String text = dated ? "" : Bundle.PieceForm_date();
        if (dated && edit().change(desk.view(), piece, stash) instanceof Result.Refused<?> no) {
            text = no.refusal().text();
        }
        trouble.setText(text);
        trouble.setVisible(!text.isEmpty());
        Asking.fit(this);
        return text.isEmpty();
    }
}
