package org.glintery.charts.picture;

/** A part of a picture in pixels, which need not be whole. */
public record PictureCut(double left, double top, double width, double height) {

    /** The same part in the file, for a part of a shown picture. @param fileWidth of the whole picture in the file */
    PictureCut inFile(Lie lie, int fileWidth, int fileHeight) {
        double across = lie.swapped() ? top : left;
        double down = lie.swapped() ? left : top;
        double wide = lie.swapped() ? height : width;
        double high = lie.swapped() ? width : height;
        return new PictureCut(
                lie.flippedAcross() ? fileWidth - across - wide : across,
                lie.flippedDown() ? fileHeight - down - high : down,
                wide,
                high);
    }
}
