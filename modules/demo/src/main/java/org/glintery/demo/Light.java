package org.glintery.demo;

import java.awt.Color;

/** The light of one time of day, as the colours a scene is painted with. */
enum Light {
    MORNING(0x9CC3D5, 0xF6DFC3, 0x6F97A6, 0x3F6B7C, 0x24404D, 0xE8A86B, 0xF7F1E4),
    NOON(0x4E9BC7, 0xCFE6EC, 0x6FA08F, 0x3D7A6D, 0x1F4A4B, 0xD95F43, 0xFBF7EC),
    EVENING(0x3B3F6B, 0xF29C6B, 0x6B4E6D, 0x45365A, 0x231F37, 0xF7C35F, 0xFCE7C8),
    NIGHT(0x0E1A2F, 0x33517A, 0x24395A, 0x182843, 0x0B1424, 0xF2C66A, 0xD7E3EC),
    FOG(0xC5CDCB, 0xE6E4DA, 0xA3B0AE, 0x778886, 0x46565A, 0xB4574A, 0xF2F0E8),
    FROST(0xA9C0DE, 0xE9EEF4, 0x8AA3C2, 0x5A769C, 0x2C405F, 0xC94F5D, 0xFFFFFF);

    private final int[] colours;

    Light(int... colours) {
        this.colours = colours;
    }

    Color sky() {
        return new Color(colours[0]);
    }

    Color horizon() {
        return new Color(colours[1]);
    }

    Color far() {
        return new Color(colours[2]);
    }

    Color middle() {
        return new Color(colours[3]);
    }

    Color near() {
        return new Color(colours[4]);
    }

    Color accent() {
        return new Color(colours[5]);
    }

    Color pale() {
        return new Color(colours[6]);
    }
}
