package org.glintery.finishes.ui;

import java.io.File;
import java.util.List;
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

/** Pictures in a row; more are dropped, pasted or chosen. Event thread. */
final class PictureStrip extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 150;
    private static final int HEIGHT_PX = 120;

    private final transient Desk desk;
    private final transient Consumer<Picture> remove;
    private final JPanel row = new JPanel(new MigLayout("insets 0, wrap 4, gap " + Space.APART));
    private transient List<Picture> shown = List.of();

    @Messages("PictureStrip.hint=Drop pictures here, or choose them.")
    PictureStrip(Desk desk, String choose, Consumer<PictureDrop.Taken> add, Consumer<Picture> remove) {
        super(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.NEAR, "[grow, fill]"));
        this.desk = desk;
        this.remove = remove;
        setOpaque(false);
        row.setOpaque(false);
        add(row, "wmin 0");
        JPanel ways = new JPanel(new MigLayout("insets 0, gap " + Space.APART));
        ways.setOpaque(false);
        ways.add(Buttons.plain(Pictogram.PICTURE, choose, () -> choose(add)));
        ways.add(Texts.hint(Bundle.PictureStrip_hint()));
        add(ways, "wmin 0");
        PictureDrop.onto(this, desk, add);
    }

    void show(List<Picture> pictures) {
        if (pictures.equals(shown)) {
            return;
        }
        shown = pictures;
        row.removeAll();
        pictures.forEach(picture -> row.add(framed(picture)));
        row.revalidate();
        row.repaint();
    }

    @Messages("PictureStrip.remove=Take this picture away")
    private JPanel framed(Picture picture) {
        JPanel cell = new JPanel(new MigLayout("insets 0, wrap 1, gapy " + Space.HAIR, "[grow, fill]"));
        cell.setOpaque(false);
        PictureView view = new PictureView(desk, WIDTH_PX, HEIGHT_PX);
        view.setPicture(Optional.of(picture));
        view.setToolTipText(picture.caption().isBlank() ? null : picture.caption());
        cell.add(view);
        cell.add(
                Buttons.icon(Pictogram.REMOVE, Bundle.PictureStrip_remove(), () -> remove.accept(picture)),
                "growx 0, align right");
        return cell;
    }

    private void choose(Consumer<PictureDrop.Taken> add) {
        JFileChooser chooser = new JFileChooser();
        chooser.setMultiSelectionEnabled(true);
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            for (File file : chooser.getSelectedFiles()) {
                PictureDrop.take(desk, file.toPath(), add);
            }
        }
    }
}
