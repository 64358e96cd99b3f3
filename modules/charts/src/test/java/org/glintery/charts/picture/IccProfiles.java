package org.glintery.charts.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Small colour profiles for tests, laid out as ICC.1:2022 says. */
final class IccProfiles {

    private IccProfiles() {}

    /** Of curves and a matrix. @param xyz of red, green and blue under D50 @param curve the whole tag */
    static byte[] matrix(double[][] xyz, byte[] curve) {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        String[] channels = {"r", "g", "b"};
        tags.put("desc", text("desc", "test"));
        tags.put("cprt", text("text", "none"));
        tags.put("wtpt", xyz(new double[] {0.9642, 1, 0.8249}));
        for (int i = 0; i < 3; i++) {
            tags.put(channels[i] + "XYZ", xyz(xyz[i]));
            tags.put(channels[i] + "TRC", curve);
        }
        return profile(tags);
    }

    private static byte[] profile(Map<String, byte[]> tags) {
        int at = 128 + 4 + 12 * tags.size();
        ByteBuffer table = ByteBuffer.allocate(4 + 12 * tags.size()).putInt(tags.size());
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
            table.put(ascii(tag.getKey())).putInt(at + data.size()).putInt(tag.getValue().length);
            data.writeBytes(tag.getValue());
            data.writeBytes(new byte[(4 - tag.getValue().length % 4) % 4]);
        }
        ByteBuffer profile = ByteBuffer.allocate(at + data.size());
        profile.putInt(profile.capacity()).putInt(0).putInt(0x02400000);
        profile.put(ascii("mntr")).put(ascii("RGB ")).put(ascii("XYZ "));
        profile.position(36).put(ascii("acsp"));
        profile.position(68).putInt(fixed(0.9642)).putInt(fixed(1)).putInt(fixed(0.8249));
        profile.position(128).put(table.array()).put(data.toByteArray());
        return profile.array();
    }

    /** One gamma for a curve. */
    static byte[] gamma(double gamma) {
        return ByteBuffer.allocate(14)
                .put(ascii("curv"))
                .putInt(0)
                .putInt(1)
                .putShort((short) Math.round(256 * gamma))
                .array();
    }

    /** The curve of sRGB as a parametric one of type 3. */
    static byte[] srgbCurve() {
        return parametric(3, 2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045);
    }

    static byte[] parametric(int type, double... parameters) {
        ByteBuffer tag = ByteBuffer.allocate(12 + 4 * parameters.length);
        tag.put(ascii("para")).putInt(0).putShort((short) type).putShort((short) 0);
        for (double parameter : parameters) {
            tag.putInt(fixed(parameter));
        }
        return tag.array();
    }

    /** By numbers from 0 to 65535. */
    static byte[] table(int... values) {
        ByteBuffer tag = ByteBuffer.allocate(12 + 2 * values.length);
        tag.put(ascii("curv")).putInt(0).putInt(values.length);
        for (int value : values) {
            tag.putShort((short) value);
        }
        return tag.array();
    }

    private static byte[] xyz(double[] xyz) {
        return ByteBuffer.allocate(20)
                .put(ascii("XYZ "))
                .putInt(0)
                .putInt(fixed(xyz[0]))
                .putInt(fixed(xyz[1]))
                .putInt(fixed(xyz[2]))
                .array();
    }

    private static byte[] text(String type, String text) {
        ByteBuffer tag = ByteBuffer.allocate(104).put(ascii(type)).putInt(0);
        if (type.equals("desc")) {
            tag.putInt(text.length() + 1);
        }
        return tag.put(ascii(text)).array();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static int fixed(double value) {
        return (int) Math.round(value * 65536);
    }
}
