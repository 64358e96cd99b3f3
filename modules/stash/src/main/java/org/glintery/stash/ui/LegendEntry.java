package org.glintery.stash.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.LegendLine;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.openide.util.NbBundle.Messages;

/** Types a legend by hand: Enter in any field adds the line and begins the next. Event thread. */
final class LegendEntry extends JPanel {

    private static final long serialVersionUID = 1L;

    private final JTextField symbol = new JTextField(6);
    private final JTextField code = new JTextField(10);
    private final JTextField needed = new JTextField(9);
    private final JTextField supplied = new JTextField(11);
    private final JComboBox<String> card = new JComboBox<>();
    private final JComboBox<Shape> shape = new KindBox<>(Shape.values());
    private final JComboBox<Body> body = new KindBox<>(Body.values());
    private final JComboBox<Coating> coating = new KindBox<>(Coating.values());
    private final WrappedText trouble = Texts.wrappedHint("");
    private final transient Consumer<LegendLine> add;
    private transient Drill shownNext;

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
    LegendEntry(Consumer<LegendLine> add) {
        super(new MigLayout(
                "insets 0, fillx, gapx " + Space.NEAR + ", gapy " + Space.TIGHT, "[fill][fill][fill][fill][grow]"));
        this.add = add;
        setOpaque(false);
        card.setEditable(true);
        labelled(Bundle.LegendEntry_symbol(), symbol, "");
        labelled(Bundle.LegendEntry_code(), code, "");
        labelled(Bundle.LegendEntry_needed(), needed, "");
        labelled(Bundle.LegendEntry_supplied(), supplied, "");
        labelled(Bundle.LegendEntry_card(), card, "newline");
        labelled(Bundle.LegendEntry_shape(), shape, "");
        labelled(Bundle.LegendEntry_body(), body, "");
        labelled(Bundle.LegendEntry_coating(), coating, "");
        trouble.setText(Bundle.LegendEntry_hint());
        add(trouble, "newline, span, growx, wmin 0");
        for (JTextField field : List.of(symbol, code, needed, supplied)) {
            field.addActionListener(e -> enter());
        }
    }

    /** Offers the cards there are, and the kind of drill that is most likely next, unless the user chose another. */
    void offer(List<String> cards, Drill next) {
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
        return (Shape) shape.getSelectedItem();
    }

    private void enter() {
        TypedLine typed = new TypedLine(symbol.getText(), code.getText(), needed.getText(), supplied.getText());
        Result<LegendLine> line = typed.understood(kind());
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
        return new Drill(
                its,
                size,
                (Body) body.getSelectedItem(),
                (Coating) coating.getSelectedItem(),
                Optional.empty(),
                cardName,
                "?");
    }

    private void labelled(String label, JComponent field, String where) {
        JPanel cell = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.HAIR, "[grow, fill]"));
        cell.setOpaque(false);
        cell.add(Texts.hint(label));
        cell.add(field);
        field.getAccessibleContext().setAccessibleName(label);
        add(cell, where);
    }
}
