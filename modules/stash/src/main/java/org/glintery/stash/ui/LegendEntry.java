package org.glintery.stash.ui;

import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.text.DefaultEditorKit;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Source;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.Columns;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.openide.util.NbBundle.Messages;

/** Types a legend by hand: Enter in any field adds the line and begins the next. Event thread. */
final class LegendEntry extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int FIELDS_IN_A_ROW = 4;
    private static final int LEAST_FIELD_PX = 96;
    private final JTextField symbol = new JTextField();
    private final JTextField code = new JTextField();
    private final JTextField needed = new JTextField();
    private final JTextField supplied = new JTextField();
    private final JComboBox<String> card = new JComboBox<>();
    private final ChoiceBox<Shape> shape = new ChoiceBox<>(List.of(Shape.values()), LegendEntry::word);
    private final ChoiceBox<Body> body = new ChoiceBox<>(List.of(Body.values()), LegendEntry::word);
    private final ChoiceBox<Coating> coating = new ChoiceBox<>(List.of(Coating.values()), LegendEntry::word);
    private final WrappedText trouble = Texts.wrappedHint("");
    private final transient Consumer<LegendLine> add;
    private transient Drill shownNext;
    private int drillsPerBag = Source.USUAL_DRILLS_PER_BAG;

    @Messages({
        "LegendEntry.symbol=Symbol",
        "LegendEntry.code=Code",
        "LegendEntry.needed=Needed",
        "LegendEntry.supplied=Supplied",
        "LegendEntry.card=Card",
        "LegendEntry.shape=Shape",
        "LegendEntry.body=Made of",
        "LegendEntry.coating=Coating",
        "LegendEntry.hint=Enter adds the line. Leave a field empty if it is not known; 2 bags and about 200 are understood."
    })
    /** @param pasteRows takes in what was copied in a spreadsheet, when it is pasted into one of the fields */
    LegendEntry(Consumer<LegendLine> add, Runnable pasteRows) {
        super(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.NEAR, "[grow, fill]"));
        this.add = add;
        setOpaque(false);
        card.setEditable(true);
        Columns fields = new Columns(FIELDS_IN_A_ROW, LEAST_FIELD_PX, Space.NEAR);
        labelled(fields, Bundle.LegendEntry_symbol(), symbol);
        labelled(fields, Bundle.LegendEntry_code(), code);
        labelled(fields, Bundle.LegendEntry_needed(), needed);
        labelled(fields, Bundle.LegendEntry_supplied(), supplied);
        labelled(fields, Bundle.LegendEntry_card(), card);
        labelled(fields, Bundle.LegendEntry_shape(), shape);
        labelled(fields, Bundle.LegendEntry_body(), body);
        labelled(fields, Bundle.LegendEntry_coating(), coating);
        card.getEditor().getEditorComponent().getAccessibleContext().setAccessibleName(Bundle.LegendEntry_card());
        trouble.setText(Bundle.LegendEntry_hint());
        add(fields, "wmin 0");
        add(trouble, "wmin 0");
        for (JTextField field : List.of(symbol, code, needed, supplied)) {
            field.addActionListener(e -> enter());
            pasting(field, pasteRows);
        }
    }

    /** Offers the cards there are, and the kind of drill that is most likely next, unless the user chose another. */
    void offer(List<String> cards, Drill next, int bag) {
        drillsPerBag = bag;
        Object chosen = card.getSelectedItem();
        if (card.getItemCount() != cards.size()) {
            card.removeAllItems();
            cards.forEach(card::addItem);
            card.setSelectedItem(chosen == null ? next.card() : chosen);
        }
        if (shownNext == null) {
            card.setSelectedItem(next.card());
            shape.setSelectedItem(next.shape());
            body.setSelectedItem(next.body());
            coating.setSelectedItem(next.coating());
        }
        shownNext = next;
    }

    String chosenCard() {
        return String.valueOf(card.getSelectedItem()).strip();
    }

    Shape chosenShape() {
        return shape.chosen();
    }

    private void enter() {
        TypedLine typed = new TypedLine(symbol.getText(), code.getText(), needed.getText(), supplied.getText());
        Result<LegendLine> line = typed.understood(kind(), Map.of(), drillsPerBag);
        if (line instanceof Result.Refused<LegendLine> no) {
            trouble.setText(no.refusal().text());
            return;
        }
        trouble.setText(Bundle.LegendEntry_hint());
        add.accept(((Result.Ok<LegendLine>) line).value());
        for (JTextField field : List.of(symbol, code, needed, supplied)) {
            field.setText("");
        }
        symbol.requestFocusInWindow();
    }

    private Drill kind() {
        Shape its = chosenShape();
        int size = shownNext != null && shownNext.shape() == its
                ? shownNext.sizeHundredths()
                : Drill.usualSizeHundredths(its);
        String cardName = chosenCard().isEmpty() ? ColourCard.OWN : chosenCard();
        return new Drill(its, size, body.chosen(), coating.chosen(), Optional.empty(), cardName, "?");
    }

    private static void pasting(JTextField field, Runnable pasteRows) {
        Action usual = field.getActionMap().get(DefaultEditorKit.pasteAction);
        field.getActionMap().put(DefaultEditorKit.pasteAction, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                if (LegendImport.rowsCopied()) {
                    pasteRows.run();
                } else {
                    usual.actionPerformed(e);
                }
            }
        });
    }

    private static void labelled(Columns fields, String label, JComponent field) {
        JPanel cell = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.HAIR, "[grow, fill]"));
        cell.setOpaque(false);
        cell.add(Texts.explained(Texts.hint(label)));
        cell.add(field, "wmin 0");
        field.getAccessibleContext().setAccessibleName(label);
        fields.one(cell);
    }

    @Messages("LegendEntry.ab=AB")
    private static String word(Enum<?> kind) {
        return kind == Coating.AB ? Bundle.LegendEntry_ab() : kind.name().toLowerCase(Locale.ROOT);
    }
}
