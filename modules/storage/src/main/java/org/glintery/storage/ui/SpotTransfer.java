package org.glintery.storage.ui;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.TransferHandler;
import org.glintery.api.ledger.Spot;

/**
 * Drags what lies in a place to another place; from the keyboard it is cut at one and pasted at the other. Event
 * thread.
 */
final class SpotTransfer extends TransferHandler {

    private static final long serialVersionUID = 1L;
    private static final DataFlavor SPOT =
            new DataFlavor(DataFlavor.javaJVMLocalObjectMimeType + ";class=" + Spot.class.getName(), "spot");

    private final transient BiConsumer<Spot, Spot> move;

    /** @param move from, to */
    SpotTransfer(BiConsumer<Spot, Spot> move) {
        this.move = move;
    }

    void serve(JComponent place) {
        place.setTransferHandler(this);
        place.getActionMap().put("cut", getCutAction());
        place.getActionMap().put("paste", getPasteAction());
        place.getInputMap().put(KeyStroke.getKeyStroke("control X"), "cut");
        place.getInputMap().put(KeyStroke.getKeyStroke("control V"), "paste");
    }

    @Override
    public int getSourceActions(JComponent source) {
        return MOVE;
    }

    @Override
    protected Transferable createTransferable(JComponent source) {
        return ((SpotPlace) source).picked().map(PickedUp::new).orElse(null);
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(SPOT) && target(support).isPresent();
    }

    @Override
    public boolean importData(TransferSupport support) {
        Optional<Spot> to = target(support);
        try {
            Spot from = (Spot) support.getTransferable().getTransferData(SPOT);
            if (to.isEmpty() || to.get().equals(from)) {
                return false;
            }
            move.accept(from, to.get());
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            return false; // something else lay on the clipboard
        }
    }

    private static Optional<Spot> target(TransferSupport support) {
        if (!(support.getComponent() instanceof SpotPlace place)) {
            return Optional.empty();
        }
        return support.isDrop() ? place.at(support.getDropLocation().getDropPoint()) : place.cursor();
    }

    /** The place from which drills were picked up. */
    private record PickedUp(Spot spot) implements Transferable {

        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {SPOT};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return SPOT.equals(flavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            if (!SPOT.equals(flavor)) {
                throw new UnsupportedFlavorException(flavor);
            }
            return spot;
        }
    }
}
