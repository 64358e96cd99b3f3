package org.glintery.stash.ui;

import java.awt.Dimension;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.FlowRows;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.PictureView;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** The photo of the printed legend, beside the lines that are typed from it; it can be looked at closer. Event thread. */
final class LegendPhoto extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 280;
    private static final int HEIGHT_PX = 380;
    private static final double STEP = 1.5;
    private static final double CLOSEST = 8;
    private final transient Desk desk;
    private final transient Consumer<PictureDrop.Taken> keep;
    private final PictureView view;
    private double closer = 1;

    @Messages({
        "LegendPhoto.hint=Another photo can be dropped here.",
        "LegendPhoto.in=Look closer",
        "LegendPhoto.out=Step back"
    })
    LegendPhoto(Desk desk, Consumer<PictureDrop.Taken> keep) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy " + Space.NEAR, "[grow, fill]", "[grow, fill][][]"));
        this.desk = desk;
        this.keep = keep;
        setOpaque(false);
        view = new PictureView(desk, WIDTH_PX, HEIGHT_PX);
        JScrollPane scroll = new JScrollPane(view);
        scroll.setPreferredSize(new Dimension(Space.px(WIDTH_PX), Space.px(HEIGHT_PX)));
        scroll.getVerticalScrollBar().setUnitIncrement(Space.px(Space.SECTION));
        add(scroll, "grow, hmin " + Space.px(HEIGHT_PX / 2));
        add(
                FlowRows.of(
                        Buttons.plain(Pictogram.ADD, Bundle.LegendPhoto_in(), () -> look(closer * STEP)),
                        Buttons.plain(Pictogram.REMOVE, Bundle.LegendPhoto_out(), () -> look(closer / STEP))),
                "wmin 0");
        add(Texts.wrappedHint(Bundle.LegendPhoto_hint()), "wmin 0");
        PictureDrop.onto(this, desk, keep);
    }

    void show(Optional<Picture> photo) {
        view.setPicture(photo);
        setVisible(photo.isPresent());
    }

    /** Asks for a photo. */
    void choose() {
        JFileChooser chooser = new JFileChooser();
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            Path file = chooser.getSelectedFile().toPath();
            PictureDrop.take(desk, file, keep);
        }
    }

    private void look(double wanted) {
        closer = Math.max(1, Math.min(CLOSEST, wanted));
        view.setPreferredSize(new Dimension(
                (int) (Space.px(WIDTH_PX) * closer) - Space.px(Space.NEAR),
                (int) (Space.px(HEIGHT_PX) * closer) - Space.px(Space.NEAR)));
        view.revalidate();
    }
}
