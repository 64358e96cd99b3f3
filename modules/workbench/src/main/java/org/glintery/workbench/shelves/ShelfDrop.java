package org.glintery.workbench.shelves;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.TransferHandler;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** A photo or a legend file dropped onto the shelves begins a kit. Event thread. */
final class ShelfDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;
    private static final Logger LOG = Logger.getLogger(ShelfDrop.class.getName());
    private final transient Desk desk;

    ShelfDrop(Desk desk) {
        this.desk = desk;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    @Messages(
            "ShelfDrop.unreadable=What was dropped could not be read. Nothing was changed; choose the file by Add instead.")
    public boolean importData(TransferSupport support) {
        try {
            List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            List<java.nio.file.Path> paths =
                    files.stream().map(f -> ((File) f).toPath()).toList();
            // after the drop has ended, so that the other program is not held up by our dialog
            java.awt.EventQueue.invokeLater(() -> Entries.newKitFrom(desk, paths));
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            LOG.log(Level.INFO, "Files that were dropped could not be taken", e);
            desk.say(Bundle.ShelfDrop_unreadable());
            return false;
        }
    }
}
