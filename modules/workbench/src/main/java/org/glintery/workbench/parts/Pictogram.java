package org.glintery.workbench.parts;

import java.awt.Image;
import java.util.Locale;
import javax.swing.Icon;
import org.glintery.api.Stable;
import org.openide.util.ImageUtilities;

/** Our own icons: drawn as SVG in one ink and the accent, tinted for light and dark when painted. */
@Stable
public enum Pictogram {
    WORKSHOP,
    SHELVES,
    PIECE,
    KIT,
    CABINET,
    FRAMING,
    TODAY,
    LEGEND,
    SITTING,
    FINISH,
    FRAME,
    STORY,
    UNDO,
    REDO,
    ADD,
    REMOVE,
    CLOSE,
    DONE,
    SEARCH,
    WARNING,
    QUESTION,
    NOTE,
    REPAIR_PACKET,
    BAG,
    HOLDER,
    DRILL,
    BACKUP,
    RESTORE,
    OPEN,
    IMPORT,
    EXPORT,
    CHECK,
    PICTURE,
    EDIT,
    PLACE,
    BENCH,
    REST,
    LIGHT,
    TEXT_SIZE,
    GLOSSARY,
    MOVE,
    CLOCK,
    PRINT,
    MORE,
    GLINTERY;

    /** A square icon; usual sizes are 16, 24 and 32 pixels. It follows light and dark by itself. */
    public Icon at(int sizePx) {
        return new InkedIcon(resource(), sizePx, Tone.INK);
    }

    /** The same in another ink, such as {@link Tone#ON_ACCENT} on a filled button. */
    public Icon at(int sizePx, Tone ink) {
        return new InkedIcon(resource(), sizePx, ink);
    }

    /** As an image, for window tabs; in the colours of this moment. */
    public Image image(int sizePx) {
        return ImageUtilities.icon2Image(at(sizePx));
    }

    String resource() {
        return "icons/" + name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg";
    }
}
