package org.glintery.stash.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.PictureView;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** The photo of the printed legend, beside the lines that are typed from it. Event thread. */
final class LegendPhoto extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 200;
    private static final int HEIGHT_PX = 360;

    private final PictureView view;

    @Messages({
        "LegendPhoto.choose=Choose a photo",
        "LegendPhoto.hint=A photo of the printed legend, to type from. Drop one here."
    })
    LegendPhoto(Desk desk, Consumer<PictureDrop.Taken> keep) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy " + Space.NEAR, "[grow, fill]", "[grow, fill][][]"));
        setOpaque(false);
        view = new PictureView(desk, WIDTH_PX, HEIGHT_PX);
        add(view, "grow");
        add(Texts.wrappedHint(Bundle.LegendPhoto_hint()), "wmin 0");
        add(
                Buttons.plain(
                        Pictogram.PICTURE,
                        Bundle.LegendPhoto_choose(),
                        () -> choose().ifPresent(file -> PictureDrop.take(desk, file, keep))),
                "growx 0");
        PictureDrop.onto(this, desk, keep);
    }

    void show(Optional<Picture> photo) {
        view.setPicture(photo);
    }

    private Optional<Path> choose() {
        JFileChooser chooser = new JFileChooser();
        return chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }
}
