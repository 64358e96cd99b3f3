package org.glintery.workbench.parts;

import java.io.File;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Pictures in rows; more are dropped, pasted or chosen. Event thread. */
@Stable
public final class PictureStrip extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 150;
    private static final int HEIGHT_PX = 120;
    private final transient Desk desk;
    private final transient Acts acts;
    private final FlowRows row = FlowRows.of();
    private transient List<Picture> shown = List.of();

    /** What can be done with the pictures. */
    public interface Acts {
        void add(PictureDrop.Taken taken);

        void remove(Picture picture);

        /** Puts one before the others; nothing is offered where it is empty. */
        default Optional<Consumer<Picture>> putFirst() {
            return Optional.empty();
        }
    }

    /** @param choose the words of the button, such as "Choose photos" */
    @Messages("PictureStrip.hint=Drop pictures here, or choose them.")
    public PictureStrip(Desk desk, String choose, Acts acts) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.NEAR, "[grow, fill]"));
        this.desk = desk;
        this.acts = acts;
        setOpaque(false);
        row.setVisible(false);
        add(row, "wmin 0");
        add(
                FlowRows.of(
                        Buttons.plain(Pictogram.PICTURE, choose, this::choose), Texts.hint(Bundle.PictureStrip_hint())),
                "wmin 0");
        PictureDrop.onto(this, desk, acts::add);
    }

    public void show(List<Picture> pictures) {
        if (pictures.equals(shown)) {
            return;
        }
        shown = pictures;
        row.removeAll();
        for (int i = 0; i < pictures.size(); i++) {
            row.add(framed(pictures.get(i), i));
        }
        row.setVisible(!pictures.isEmpty());
        row.revalidate();
        row.repaint();
    }

    @Messages({
        "# {0} - caption or number",
        "PictureStrip.remove=Take {0} away",
        "# {0} - caption or number",
        "PictureStrip.first=Show {0} first",
        "# {0} - number",
        "PictureStrip.nth=picture {0}"
    })
    private JPanel framed(Picture picture, int index) {
        String name =
                picture.caption().isBlank() ? Bundle.PictureStrip_nth(String.valueOf(index + 1)) : picture.caption();
        JPanel cell = new JPanel(new MigLayout("insets 0, wrap 1, gapy " + Space.HAIR, "[grow, fill]"));
        cell.setOpaque(false);
        PictureView view = new PictureView(desk, WIDTH_PX, HEIGHT_PX);
        view.setPicture(Optional.of(picture));
        view.setToolTipText(picture.caption().isBlank() ? null : picture.caption());
        cell.add(view);
        FlowRows ways = FlowRows.of();
        if (index > 0) {
            acts.putFirst()
                    .ifPresent(put -> ways.add(
                            Buttons.icon(Pictogram.MOVE, Bundle.PictureStrip_first(name), () -> put.accept(picture))));
        }
        ways.add(Buttons.icon(Pictogram.REMOVE, Bundle.PictureStrip_remove(name), () -> acts.remove(picture)));
        cell.add(ways, "growx 0, center");
        return cell;
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser();
        chooser.setMultiSelectionEnabled(true);
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            for (File file : chooser.getSelectedFiles()) {
                PictureDrop.take(desk, file.toPath(), acts::add);
            }
        }
    }
}
