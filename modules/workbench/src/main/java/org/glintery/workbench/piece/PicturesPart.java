package org.glintery.workbench.piece;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.PictureStrip;
import org.glintery.workbench.parts.SectionHeading;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The pictures of a piece: the design, the canvas, how it grew. */
final class PicturesPart implements ScreenPart<List<Picture>> {
    private final UUID piece;
    private final PictureStrip strip;
    private final JComponent page;

    @Messages({
        "PicturesPart.heading=Pictures",
        "PicturesPart.choose=Choose pictures",
        "PicturesPart.hint=The first one stands on the job card and on the shelves. Photos of the finished piece belong to its finish."
    })
    PicturesPart(Desk desk, UUID piece) {
        this.piece = piece;
        PieceChanges changes = new PieceChanges(piece);
        strip = new PictureStrip(desk, Bundle.PicturesPart_choose(), new PictureStrip.Acts() {
            @Override
            public void add(PictureDrop.Taken taken) {
                desk.change(changes.addPicture(taken));
            }

            @Override
            public void remove(Picture picture) {
                desk.change(changes.removePicture(picture));
            }

            @Override
            public Optional<Consumer<Picture>> putFirst() {
                return Optional.of(picture -> desk.change(changes.putFirst(picture)));
            }
        });
        JPanel column = new JPanel(
                new MigLayout("insets " + Space.SECTION + ", fillx, wrap 1, gapy " + Space.APART, "[grow, fill]"));
        column.setOpaque(false);
        column.add(new SectionHeading(Bundle.PicturesPart_heading()), "wmin 0");
        column.add(strip, "wmin 0");
        column.add(Texts.wrappedHint(Bundle.PicturesPart_hint()), "wmin 0");
        page = new PageScroll(column);
    }

    @Override
    public List<Picture> prepare(View view) {
        return view.find(Piece.TYPE, piece)
                .map(stored -> stored.value().pictures())
                .orElse(List.of());
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(List<Picture> pictures) {
        strip.show(pictures);
    }
}
