package org.glintery.workbench.parts;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Takes pictures that are dropped or pasted onto a component. Files are read in the background. Event thread. */
@Stable
public final class PictureDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;
    private static final long MOST_BYTES = 64L << 20;
    private final transient Desk desk;
    private final transient Consumer<Taken> taken;

    /** A picture that was checked, with its bytes: put both into the same change. */
    public record Taken(Picture picture, Blob blob) {}

    /** @param taken called on the event thread for each picture; what can't be read is told in the window's foot */
    public static void onto(JComponent target, Desk desk, Consumer<Taken> taken) {
        target.setTransferHandler(new PictureDrop(desk, taken));
    }

    private PictureDrop(Desk desk, Consumer<Taken> taken) {
        this.desk = desk;
        this.taken = taken;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                || support.isDataFlavorSupported(DataFlavor.imageFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            Transferable data = support.getTransferable();
            if (support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
                for (Object file : (List<?>) data.getTransferData(DataFlavor.javaFileListFlavor)) {
                    take(desk, ((File) file).toPath(), taken);
                }
            } else {
                Image image = (Image) data.getTransferData(DataFlavor.imageFlavor);
                take(() -> png(image), "");
            }
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            desk.say(Bundle.PictureDrop_unreadable(e.getMessage()));
            return false;
        }
    }

    /** Takes one file, as after choosing it. */
    public static void take(Desk desk, Path file, Consumer<Taken> taken) {
        new PictureDrop(desk, taken).take(() -> bytes(file), String.valueOf(file.getFileName()));
    }

    private interface Source {
        byte[] read() throws IOException;
    }

    private void take(Source source, String caption) {
        desk.compute(view -> read(source, caption), result -> {
            if (result instanceof Result.Ok<Taken> ok) {
                taken.accept(ok.value());
            } else if (result instanceof Result.Refused<Taken> no) {
                desk.say(no.refusal().text());
            }
        });
    }

    @Messages({"# {0} - why", "PictureDrop.unreadable=The picture can''t be read: {0}. Nothing was changed."})
    private static Result<Taken> read(Source source, String caption) {
        try {
            byte[] bytes = source.read();
            return PictureBytes.facts(bytes).then(facts -> {
                Blob blob = Blob.of(facts.mediaType(), bytes);
                return Result.ok(new Taken(new Picture(blob.hash(), facts.mediaType(), caption), blob));
            });
        } catch (IOException e) {
            return Result.refused(
                    "unreadable",
                    Bundle.PictureDrop_unreadable(
                            Optional.ofNullable(e.getMessage()).orElse("")));
        }
    }

    @Messages({"PictureDrop.tooMuch=it is larger than 64 megabytes"})
    private static byte[] bytes(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException(Bundle.PictureDrop_tooMuch());
        }
        return Files.readAllBytes(file);
    }

    private static byte[] png(Image image) throws IOException {
        BufferedImage copy =
                new BufferedImage(image.getWidth(null), image.getHeight(null), BufferedImage.TYPE_INT_ARGB);
        var g = copy.createGraphics();
        g.drawImage(image, 0, 0, null);
        g.dispose();
        var out = new ByteArrayOutputStream();
        ImageIO.write(copy, "png", out);
        return out.toByteArray();
    }
}
