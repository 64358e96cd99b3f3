package org.glintery.workbench.parts;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.PictureIntake;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Takes pictures that are dropped or pasted onto a component. Files are read in the background. Event thread. */
@Stable
public final class PictureDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;
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
                take(() -> pasted(desk, image));
            }
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            desk.say(Bundle.PictureDrop_unreadable());
            return false;
        }
    }

    /** Takes one file, as after choosing it. */
    public static void take(Desk desk, Path file, Consumer<Taken> taken) {
        new PictureDrop(desk, taken).take(() -> taken(intake(desk).read(file)));
    }

    private static PictureIntake intake(Desk desk) {
        return desk.workshop().find(PictureIntake.class).orElseThrow();
    }

    private static Result<Taken> taken(Result<NewPicture> checked) {
        return checked.then(one -> Result.ok(new Taken(one.picture(), one.blob())));
    }

    private interface Source {
        Result<Taken> read();
    }

    private void take(Source source) {
        desk.compute(view -> source.read(), result -> {
            if (result instanceof Result.Ok<Taken> ok) {
                taken.accept(ok.value());
            } else if (result instanceof Result.Refused<Taken> no) {
                desk.say(no.refusal().text());
            }
        });
    }

    @Messages("PictureDrop.unreadable=The picture can't be read. Nothing was changed.")
    private static Result<Taken> pasted(Desk desk, Image image) {
        try {
            return taken(intake(desk).of(png(image), ""));
        } catch (IOException e) {
            return Result.refused("unreadable", Bundle.PictureDrop_unreadable());
        }
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
