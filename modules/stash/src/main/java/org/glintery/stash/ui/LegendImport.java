package org.glintery.stash.ui;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JFileChooser;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Balance;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Brings lines in from a file or the clipboard: read in the background, shown, and taken in if wanted. Event thread. */
final class LegendImport {

    private final Desk desk;
    private final LegendEdits edits;

    LegendImport(Desk desk, LegendEdits edits) {
        this.desk = desk;
        this.edits = edits;
    }

    void fromFile(Component over, Assumed assumed, boolean hasLines) {
        JFileChooser chooser = new JFileChooser();
        if (chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION) {
            var file = chooser.getSelectedFile().toPath();
            read(reader -> reader.read(file, assumed), assumed, hasLines);
        }
    }

    @Messages("LegendImport.nothingCopied=There is no text to paste. Copy the rows in your spreadsheet first.")
    void fromClipboard(Assumed assumed, boolean hasLines) {
        Optional<String> text = copied();
        if (text.filter(t -> !t.isBlank()).isEmpty()) {
            desk.say(Bundle.LegendImport_nothingCopied());
        } else {
            read(reader -> reader.readText(text.get(), assumed), assumed, hasLines);
        }
    }

    @Messages("LegendImport.noReader=Legends can't be read because bringing kits in is switched off.")
    private void read(Function<LegendReader, Result<Reading>> read, Assumed assumed, boolean hasLines) {
        Optional<LegendReader> reader = desk.workshop().find(LegendReader.class);
        if (reader.isEmpty()) {
            desk.say(Bundle.LegendImport_noReader());
            return;
        }
        desk.compute(view -> read.apply(reader.get()), result -> {
            if (result instanceof Result.Ok<Reading> ok) {
                offer(ok.value(), assumed, hasLines);
            } else if (result instanceof Result.Refused<Reading> no) {
                desk.say(no.refusal().text());
            }
        });
    }

    @Messages({
        "LegendImport.title=What was understood",
        "# {0} - how many",
        "# {1} - how many in words",
        "LegendImport.take=Take in {0,choice,0#nothing|1#one line|1<{1} lines}",
        "LegendImport.badRows=Some rows can't be taken in. Put them right in the file and read it again. Nothing was changed."
    })
    private void offer(Reading reading, Assumed assumed, boolean hasLines) {
        LegendPreview preview = new LegendPreview(reading, hasLines);
        String doIt = Bundle.LegendImport_take(
                reading.lines().size(), Balance.grouped(reading.lines().size()));
        boolean wanted = Asking.ask(Bundle.LegendImport_title(), preview, doIt, () -> {
            boolean clean = reading.badRows().isEmpty() && !reading.lines().isEmpty();
            if (!clean) {
                desk.say(Bundle.LegendImport_badRows());
            }
            return clean;
        });
        if (wanted) {
            desk.change(edits.takeIn(reading, assumed.card(), preview.replaces()));
        }
    }

    /** Whether rows of a spreadsheet are on the clipboard, rather than a word for one field. */
    static boolean rowsCopied() {
        return copied().filter(text -> text.strip().matches("(?s).*[\\t\\n].*")).isPresent();
    }

    private static Optional<String> copied() {
        try {
            return Optional.of(
                    (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
            return Optional.empty(); // nothing copied, no text, or another program holds the clipboard
        }
    }
}
