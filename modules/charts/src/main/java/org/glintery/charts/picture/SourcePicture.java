package org.glintery.charts.picture;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;

/** A picture that was read: its pixels, how they lie and how they stand for light. Not changed after; any thread. */
public final class SourcePicture {

    private static final int BYTE = 256;

    private final LightRows rows;
    private final ColourProfile profile;
    private final Lie lie;
    private final int fileWidth;
    private final int fileHeight;

    /** @param profile of the pixels as they are held; the image's own conversion is taken where they are held oddly */
    static SourcePicture of(BufferedImage image, ColourProfile profile, Lie lie) {
        boolean asHeld = isPlain(image) || image.getColorModel() instanceof IndexColorModel;
        ColourProfile taken = asHeld ? profile : ColourProfile.SRGB;
        LightRows rows = isPlain(image) ? plain(image, taken) : new ConvertedRows(image, taken.tables(BYTE));
        return new SourcePicture(rows, taken, lie, image.getWidth(), image.getHeight());
    }

    private SourcePicture(LightRows rows, ColourProfile profile, Lie lie, int fileWidth, int fileHeight) {
        this.rows = rows;
        this.profile = profile;
        this.lie = lie;
        this.fileWidth = fileWidth;
        this.fileHeight = fileHeight;
    }

    /** Pixels across, as it is shown. */
    public int width() {
        return lie.swapped() ? fileHeight : fileWidth;
    }

    /** Pixels down, as it is shown. */
    public int height() {
        return lie.swapped() ? fileWidth : fileHeight;
    }

    /** The same picture turned by quarters of a turn, to the right when positive. */
    public SourcePicture turned(int quartersToTheRight) {
        return new SourcePicture(rows, profile, lie.turned(quartersToTheRight), fileWidth, fileHeight);
    }

    /**
     * The picture averaged over the cells of a grid, in light.
     *
     * @param part which part of the shown picture the grid covers
     */
    public LightGrid averaged(PictureCut part, int columns, int rowsOfCells) {
        LightGrid inFile = AreaAverage.of(
                rows,
                fileWidth,
                fileHeight,
                part.inFile(lie, fileWidth, fileHeight),
                lie.swapped() ? rowsOfCells : columns,
                lie.swapped() ? columns : rowsOfCells);
        inFile.toSrgb(profile);
        return lie.equals(Lie.UPRIGHT) ? inFile : inFile.shown(lie);
    }

    private static boolean isPlain(BufferedImage image) {
        ColorModel model = image.getColorModel();
        int type = image.getSampleModel().getDataType();
        int channels = model.getNumColorComponents();
        return model instanceof ComponentColorModel
                && (type == DataBuffer.TYPE_BYTE || type == DataBuffer.TYPE_USHORT)
                && (channels == 1 || channels == 3)
                && !model.isAlphaPremultiplied();
    }

    private static LightRows plain(BufferedImage image, ColourProfile profile) {
        int numbers = 1 << image.getColorModel().getComponentSize(0);
        double[][] light = profile.tables(numbers);
        return numbers == BYTE
                ? ByteRows.of(image, light).orElseGet(() -> samples(image, light))
                : samples(image, light);
    }

    private static LightRows samples(BufferedImage image, double[][] light) {
        ColorModel model = image.getColorModel();
        int opaqueAt = model.hasAlpha() ? (1 << model.getComponentSize(model.getNumComponents() - 1)) - 1 : 0;
        return new SampleRows(image.getRaster(), light, opaqueAt);
    }
}
