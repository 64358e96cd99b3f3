package org.glintery.demo.scene;

import java.awt.Color;

/** The colours of an hour and a weather. */
public enum Light {
    MORNING(false, "5E86A8 A9C3C8 F9D8A8 FCEBD6 92A9B4 567A8C 2E4C5E 17303F D9703F E3B25A FBF3E2 FFD98A"),
    NOON(false, "2F7FB8 76B4D6 DDEFEC FFFFFF 93B8C2 4E8C8A 24606A 143C4A D9472F F2B632 FFFBF0 FFE9A8"),
    EVENING(true, "2B2F63 A0527A F8A860 F7B98A 84577F 553C69 33284F 1B1633 E8603C F7C35F FCE3C2 FFD27A"),
    BLUE_HOUR(true, "16295C 3C5F9E D99A94 6F86B4 4A6496 2C4478 1C2D58 0D1736 C9503F E2A94C D5DCE8 FFCB66"),
    NIGHT(true, "0A1430 1B3358 4A7693 35557A 2C4C70 1B3354 122340 081226 C8563E D9A441 BFD2E0 FFCF70"),
    FOG(false, "AEBBBC CBD1CC ECE7DA F4F1E8 B4BCBA 87959A 556870 31424A B4483C C99A4A F6F3EA FFE2A6"),
    FROST(false, "7FA6D2 B4CCE4 F4E4E0 FFFFFF A7BCD6 6B8BB4 3A5882 213456 C23F4E E0A84E FFFFFF FFDFA0");

    private final boolean lamps;
    private final Color[] colours;

    Light(boolean lamps, String hex) {
        this.lamps = lamps;
        String[] words = hex.split(" ");
        this.colours = new Color[words.length];
        for (int i = 0; i < words.length; i++) {
            colours[i] = new Color(Integer.parseInt(words[i], 16));
        }
    }

    /** Whether lamps are lit and windows glow. */
    boolean lamps() {
        return lamps;
    }

    Color high() {
        return colours[0];
    }

    Color sky() {
        return colours[1];
    }

    Color horizon() {
        return colours[2];
    }

    Color cloud() {
        return colours[3];
    }

    Color far() {
        return colours[4];
    }

    Color middle() {
        return colours[5];
    }

    Color near() {
        return colours[6];
    }

    Color dark() {
        return colours[7];
    }

    Color accent() {
        return colours[8];
    }

    Color second() {
        return colours[9];
    }

    Color pale() {
        return colours[10];
    }

    Color lamp() {
        return colours[11];
    }

    /** A window pane: lit, or with the sky in it. */
    Color pane(boolean lit) {
        return lamps && lit ? lamp() : Tone.mix(near(), high(), lamps ? 0.25 : 0.4);
    }
}
