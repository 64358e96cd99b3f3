package org.glintery.charts.picture;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import org.w3c.dom.NodeList;

/**
 * Finds the colour profile that a picture carries. One of curves and a matrix is applied after the averaging, so that
 * averages are of true light; of any other kind the reader's own conversion to sRGB is taken.
 */
final class EmbeddedProfile {

    private static final String PNG_FORMAT = "javax_imageio_png_1.0";
    private static final int MOST_BYTES = 4 << 20;

    private EmbeddedProfile() {}

    /** Sets the reading up for the picture's own colours; empty when they are sRGB or get converted to it. */
    static Optional<ColourProfile> chosen(ImageReader reader, ImageReadParam param) throws IOException {
        Iterator<ImageTypeSpecifier> types = reader.getImageTypes(0);
        while (types.hasNext()) {
            ImageTypeSpecifier type = types.next();
            ColorSpace space = type.getColorModel().getColorSpace();
            if (space instanceof ICC_ColorSpace own && space.getType() == ColorSpace.TYPE_RGB && !space.isCS_sRGB()) {
                Optional<ColourProfile> profile =
                        ColourProfile.of(own.getProfile().getData());
                if (profile.isPresent()) {
                    param.setDestinationType(type);
                    return profile;
                }
            }
        }
        return reader.getFormatName().equalsIgnoreCase("png") ? ofPng(reader.getImageMetadata(0)) : Optional.empty();
    }

    /** The JDK's reader of PNG passes a profile on but does not apply it. */
    private static Optional<ColourProfile> ofPng(IIOMetadata metadata) throws IOException {
        if (metadata == null || !PNG_FORMAT.equals(metadata.getNativeMetadataFormatName())) {
            return Optional.empty();
        }
        NodeList profiles = ((IIOMetadataNode) metadata.getAsTree(PNG_FORMAT)).getElementsByTagName("iCCP");
        if (profiles.getLength() == 0) {
            return Optional.empty();
        }
        byte[] deflated = (byte[]) ((IIOMetadataNode) profiles.item(0)).getUserObject();
        try (var inflated = new InflaterInputStream(new ByteArrayInputStream(deflated))) {
            return ColourProfile.of(inflated.readNBytes(MOST_BYTES));
        }
    }
}
