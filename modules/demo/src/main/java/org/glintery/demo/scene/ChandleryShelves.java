package org.glintery.demo.scene;

import java.awt.Color;
import java.util.SplittableRandom;

/** Shelves of a chandlery: spools of twine, tins, bottles, coiled line, all in many colours. */
final class ChandleryShelves implements Scene {
    private static final int[] DYES = {
        0xC8452F, 0xE2A33B, 0x2F6F9E, 0x3A8A70, 0x8A4A6E, 0xE9DFC6, 0x29405E, 0xD9774A, 0x7FA9A4, 0x5B4A8A, 0xF0C987,
        0x9A2F3C
    };

    @Override
    public void draw(Brush brush, Air air, Light light, SplittableRandom chance) {
        double tall = brush.tall();
        Color wood = Tone.mix(Tone.of(0x6A4228), light.near(), light.lamps() ? 0.45 : 0.15);
        brush.sweep(0, tall, Tone.dim(wood, 0.62), Tone.dim(wood, 0.5));
        int shelves = (int) Math.round(tall / 225);
        double step = tall / shelves;
        for (int row = 0; row < shelves; row++) {
            double board = (row + 1) * step - 16;
            double x = 46;
            while (x < 930) {
                double w = 74 + chance.nextInt(3) * 18;
                if (x + w > 960) {
                    break;
                }
                Color dye =
                        Tone.mix(Tone.of(DYES[chance.nextInt(DYES.length)]), light.near(), light.lamps() ? 0.28 : 0.06);
                thing(brush, light, chance, x, board, w, step - 60, dye);
                x += w + 10;
            }
            brush.box(0, board, 1000, 30, wood);
            brush.box(0, board, 1000, 8, Tone.lift(wood, 0.3));
            brush.fill(
                    Brush.downwards(board + 30, board + 74, Tone.clear(Color.BLACK, 0.55), Tone.clear(Color.BLACK, 0)),
                    Brush.path(0, board + 30, 1000, board + 30, 1000, board + 74, 0, board + 74));
        }
        brush.box(0, 0, 26, tall, wood);
        brush.box(974, 0, 26, tall, wood);
        air.worn(0, 0, 1000, tall, 12, 5, 0.22);
        brush.glow(300, 0, 1000, light.lamps() ? light.lamp() : light.pale(), 0.30);
        air.finish(0.65, 0.12);
    }

    private static void thing(
            Brush brush,
            Light light,
            SplittableRandom chance,
            double x,
            double board,
            double w,
            double room,
            Color dye) {
        switch (chance.nextInt(5)) {
            case 0, 1 -> spool(brush, x, board, w, Math.min(room, 130 + chance.nextInt(2) * 24), dye);
            case 2 -> tin(brush, light, x, board, w, Math.min(room, 96 + chance.nextInt(60)), dye);
            case 3 -> bottle(brush, light, x, board, w * 0.72, Math.min(room, 150), dye);
            default -> coil(brush, x, board, w, dye);
        }
    }

    private static void spool(Brush brush, double x, double board, double w, double h, Color dye) {
        Color end = Tone.of(0xC9A06A);
        brush.box(x, board - h, w, 18, end);
        brush.box(x, board - 18, w, 18, Tone.dim(end, 0.2));
        brush.box(x + 6, board - h + 18, w - 12, h - 36, dye);
        for (double y = board - h + 26; y < board - 20; y += 13) {
            brush.line(x + 8, y, x + w - 8, y + 5, 3.5, Tone.dim(dye, 0.3));
        }
        shine(brush, x + 6, board - h + 18, w - 12, h - 36);
    }

    private static void tin(Brush brush, Light light, double x, double board, double w, double h, Color dye) {
        brush.box(x, board - h, w, h, dye);
        brush.box(x - 2, board - h - 4, w + 4, 20, Tone.mix(dye, light.pale(), 0.4));
        brush.box(x, board - h * 0.66, w, h * 0.34, Tone.mix(light.pale(), light.second(), 0.2));
        brush.box(x + w * 0.2, board - h * 0.55, w * 0.6, 8, Tone.dim(dye, 0.4));
        brush.box(x + w * 0.3, board - h * 0.44, w * 0.4, 6, Tone.dim(dye, 0.4));
        shine(brush, x, board - h, w, h);
    }

    private static void bottle(Brush brush, Light light, double x, double board, double w, double h, Color dye) {
        Color glass = Tone.mix(dye, light.dark(), 0.2);
        brush.blob(
                glass,
                x,
                board - h * 0.55,
                x + w * 0.34,
                board - h * 0.72,
                x + w * 0.36,
                board - h * 0.98,
                x + w * 0.64,
                board - h * 0.98,
                x + w * 0.66,
                board - h * 0.72,
                x + w,
                board - h * 0.55,
                x + w,
                board,
                x,
                board);
        brush.box(x + w * 0.33, board - h, w * 0.34, 20, Tone.of(0xB98A55));
        brush.box(x + 4, board - h * 0.42, w - 8, h * 0.26, light.pale());
        brush.line(x + w * 0.24, board - h * 0.5, x + w * 0.24, board - 14, 6, Tone.lift(glass, 0.5));
    }

    private static void coil(Brush brush, double x, double board, double w, Color dye) {
        for (int i = 0; i < 5; i++) {
            double y = board - 14 - i * 22;
            Color turn = Tone.mix(dye, Tone.of(0xE9D8B0), 0.25);
            brush.oval(x + w / 2, y, w / 2, 15, Tone.dim(turn, 0.4));
            brush.oval(x + w / 2, y - 4, w / 2 - 3, 11, turn);
            for (int k = 0; k < 5; k++) {
                brush.line(x + 10 + k * w / 5, y + 6, x + 20 + k * w / 5, y - 10, 3, Tone.dim(turn, 0.35));
            }
        }
        brush.oval(x + w / 2, board - 108, w * 0.22, 6, Tone.dim(dye, 0.65));
    }

    private static void shine(Brush brush, double x, double y, double w, double h) {
        brush.fill(
                Brush.across(x, x + w * 0.4, Tone.clear(Color.WHITE, 0.30), Tone.clear(Color.WHITE, 0)),
                Brush.path(x, y, x + w * 0.4, y, x + w * 0.4, y + h, x, y + h));
        brush.fill(
                Brush.across(x + w * 0.5, x + w, Tone.clear(Color.BLACK, 0), Tone.clear(Color.BLACK, 0.40)),
                Brush.path(x + w * 0.5, y, x + w, y, x + w, y + h, x + w * 0.5, y + h));
    }
}
