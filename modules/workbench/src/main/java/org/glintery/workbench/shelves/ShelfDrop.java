package org.glintery.workbench.shelves;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import javax.swing.TransferHandler;
import org.glintery.workbench.spi.Desk;

/** A photo or a legend file dropped onto the shelves begins a kit. Event thread. */
final class ShelfDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;
    private final transient Desk desk;

    ShelfDrop(Desk desk) {
        this.desk = desk;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            List<java.nio.file.Path> paths =
                    files.stream().map(f -> ((File) f).toPath()).toList();
            // after the drop has ended, so that the other program is not held up by our dialog
            java.awt.EventQueue.invokeLater(() -> Entries.newKitFrom(desk, paths));
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            desk.say(e.getMessage());
            return false;
        }
    }
}
