package org.glintery.charts.picture;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Xyz;

/**
 * How the numbers of a picture stand for light: a curve for each channel, and what light its primaries are.
 *
 * @param curves of red, green and blue
 * @param primaries of red, green and blue: the full light of each in the primaries of sRGB
 */
record ColourProfile(List<ToneCurve> curves, List<LinearRgb> primaries) {

    static final ColourProfile SRGB = new ColourProfile(
            List.of(ToneCurve.SRGB, ToneCurve.SRGB, ToneCurve.SRGB),
            List.of(new LinearRgb(1, 0, 0), new LinearRgb(0, 1, 0), new LinearRgb(0, 0, 1)));

    private static final int HEADER_BYTES = 128;
    private static final int TAG_BYTES = 12;

    /**
     * Of an embedded profile of three curves and a matrix (ICC.1:2022, 8.3.3); empty for one of another kind, which has
     * to be applied by tables, and for what is no profile.
     */
    static Optional<ColourProfile> of(byte[] profile) {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(profile);
            boolean matrix = text(bytes, 16).equals("RGB ")
                    && text(bytes, 20).equals("XYZ ")
                    && tag(bytes, "A2B0").isEmpty();
            if (!matrix) {
                return Optional.empty();
            }
            List<ToneCurve> curves = new ArrayList<>();
            List<LinearRgb> primaries = new ArrayList<>();
            for (String channel : List.of("r", "g", "b")) {
                tag(bytes, channel + "TRC").flatMap(ToneCurve::ofTag).ifPresent(curves::add);
                tag(bytes, channel + "XYZ").map(ColourProfile::primary).ifPresent(primaries::add);
            }
            return curves.size() == 3 && primaries.size() == 3
                    ? Optional.of(new ColourProfile(curves, primaries))
                    : Optional.empty();
        } catch (BufferUnderflowException | IndexOutOfBoundsException e) {
            // cut short: as good as none
            return Optional.empty();
        }
    }

    /** Numbers of a profile are under D50. */
    private static LinearRgb primary(ByteBuffer tag) {
        return new Xyz(tag.getInt(8) / 65536.0, tag.getInt(12) / 65536.0, tag.getInt(16) / 65536.0)
                .fromD50ToD65()
                .linearRgb();
    }

    private static Optional<ByteBuffer> tag(ByteBuffer profile, String wanted) {
        int tags = profile.getInt(HEADER_BYTES);
        for (int i = 0; i < tags; i++) {
            int entry = HEADER_BYTES + 4 + i * TAG_BYTES;
            if (text(profile, entry).equals(wanted)) {
                return Optional.of(profile.slice(profile.getInt(entry + 4), profile.getInt(entry + 8)));
            }
        }
        return Optional.empty();
    }

    private static String text(ByteBuffer bytes, int at) {
        byte[] text = new byte[4];
        bytes.get(at, text);
        return new String(text, StandardCharsets.ISO_8859_1);
    }

    /** The light of each channel by its number. @param numbers how many there are, such as 256 */
    double[][] tables(int numbers) {
        double[][] tables = new double[3][];
        for (int channel = 0; channel < tables.length; channel++) {
            int earlier = curves.indexOf(curves.get(channel));
            tables[channel] =
                    earlier < channel ? tables[earlier] : curves.get(channel).table(numbers);
        }
        return tables;
    }

    /** Turns light in this profile's primaries into light in those of sRGB, which may lie outside what a screen shows. */
    void toSrgb(double[] red, double[] green, double[] blue) {
        LinearRgb r = primaries.get(0);
        LinearRgb g = primaries.get(1);
        LinearRgb b = primaries.get(2);
        for (int i = 0; i < red.length; i++) {
            double ofRed = red[i];
            double ofGreen = green[i];
            double ofBlue = blue[i];
            red[i] = r.red() * ofRed + g.red() * ofGreen + b.red() * ofBlue;
            green[i] = r.green() * ofRed + g.green() * ofGreen + b.green() * ofBlue;
            blue[i] = r.blue() * ofRed + g.blue() * ofGreen + b.blue() * ofBlue;
        }
    }
}
