package org.glintery.workbench.parts;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.Icon;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** A picture of the workshop, scaled into the room there is; a drawn sheet while there is none. Event thread. */
@Stable
public final class PictureView extends DrawnComponent {
    private static final long serialVersionUID = 1L;
    private static final int PLACEHOLDER_PX = 32;
    private static final double ENLARGED_AT_MOST = 1.15;
    private final transient Desk desk;
    private final Dimension size;
    private transient Optional<Picture> picture = Optional.empty();
    private transient Optional<BufferedImage> image = Optional.empty();
    private int askedPx;

    /** @param widthPx and {@code heightPx} the preferred size at the usual text size */
    public PictureView(Desk desk, int widthPx, int heightPx) {
        super(AccessibleRole.ICON);
        this.desk = desk;
        size = new Dimension(Space.px(widthPx), Space.px(heightPx));
        setPicture(Optional.empty());
    }

    @Messages({"PictureView.none=No picture yet", "PictureView.picture=Picture"})
    public void setPicture(Optional<Picture> newPicture) {
        if (!newPicture.equals(picture) || image.isEmpty()) {
            image = Optional.empty();
            askedPx = 0;
        }
        picture = newPicture;
        String caption = newPicture
                .map(p -> p.caption().isBlank() ? Bundle.PictureView_picture() : p.caption())
                .orElseGet(Bundle::PictureView_none);
        getAccessibleContext().setAccessibleName(caption);
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet() ? super.getPreferredSize() : size;
    }

    @Override
    public Dimension getMinimumSize() {
        Dimension preferred = getPreferredSize();
        return new Dimension(preferred.width / 2, preferred.height / 2);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        double scale = Math.max(1, g.getTransform().getScaleX());
        ask((int) Math.ceil(getWidth() * scale), (int) Math.ceil(getHeight() * scale));
        if (image.isPresent()) {
            picture(g, image.get());
        } else {
            placeholder(g);
        }
        g.dispose();
    }

    private void ask(int widthPx, int heightPx) {
        int wantedPx = Math.max(widthPx, heightPx);
        boolean sharpEnough = wantedPx <= askedPx * ENLARGED_AT_MOST;
        if (sharpEnough || picture.isEmpty() || widthPx <= 0 || heightPx <= 0) {
            return;
        }
        askedPx = wantedPx;
        String hash = picture.get().hash();
        Optional<BufferedImage> atHand = PictureShelf.scaled(desk.workshop(), hash, widthPx, heightPx, read -> {
            if (picture.filter(p -> p.hash().equals(hash)).isPresent()) {
                image = read;
                repaint();
            }
        });
        image = atHand.or(() -> image);
    }

    /** Where the picture itself is within this component; empty until it has been read. */
    public Optional<Rectangle> shownAt() {
        return image.map(this::placed);
    }

    private Rectangle placed(BufferedImage shown) {
        double fit = Math.min((double) getWidth() / shown.getWidth(), (double) getHeight() / shown.getHeight());
        int width = (int) Math.round(shown.getWidth() * fit);
        int height = (int) Math.round(shown.getHeight() * fit);
        return new Rectangle((getWidth() - width) / 2, (getHeight() - height) / 2, width, height);
    }

    private void picture(Graphics2D g, BufferedImage shown) {
        Rectangle at = placed(shown);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(shown, at.x, at.y, at.width, at.height, null);
        g.setColor(Tone.LINE.colour());
        g.drawRect(at.x, at.y, at.width - 1, at.height - 1);
    }

    private void placeholder(Graphics2D g) {
        g.setColor(Tone.PAPER.colour());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Tone.LINE.colour());
        g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        Icon icon = Pictogram.PICTURE.at(Math.min(PLACEHOLDER_PX, Math.max(8, getHeight() / 2)), Tone.FAINT);
        icon.paintIcon(this, g, (getWidth() - icon.getIconWidth()) / 2, (getHeight() - icon.getIconHeight()) / 2);
    }
}
