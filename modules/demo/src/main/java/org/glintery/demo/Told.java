package org.glintery.demo;

import java.util.Optional;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Standing;
import org.glintery.demo.drills.Laying;
import org.glintery.demo.scene.Light;
import org.glintery.demo.scene.Scene;

/**
 * One piece of the plot.
 *
 * @param scene absent when there is only a title
 * @param widthCm and {@code heightCm}: the drilled area
 * @param laying what is laid so far, for pieces on the bench or resting
 * @param sections how many it is worked in, 0 for none
 * @param inCase which case its drills are kitted up in, from 1; 0 for none
 * @param kit the title of its kit, where that is not its own; pieces with the same share a kit
 * @param legend what is known of its legend
 */
record Told(
        String title,
        Optional<Scene> scene,
        Light light,
        int widthCm,
        int heightCm,
        Shape shape,
        Standing standing,
        Optional<Laying> laying,
        int sections,
        int inCase,
        Optional<String> kit,
        Known legend) {

    /** How much a printed legend says. */
    enum Known {
        NOTHING,
        ONLY_CODES,
        ONLY_BAGS,
        ALL
    }

    static Told painted(String title, Scene scene, Light light, int widthCm, int heightCm, Standing standing) {
        return new Told(
                title,
                Optional.of(scene),
                light,
                widthCm,
                heightCm,
                Shape.SQUARE,
                standing,
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                standing == Standing.HOPED_FOR ? Known.NOTHING : Known.ALL);
    }

    static Told titled(String title, Standing standing) {
        return new Told(
                title,
                Optional.empty(),
                Light.NOON,
                30,
                40,
                Shape.SQUARE,
                standing,
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                Known.NOTHING);
    }

    Told laid(Laying now) {
        return new Told(
                title,
                scene,
                light,
                widthCm,
                heightCm,
                shape,
                standing,
                Optional.of(now),
                sections,
                inCase,
                kit,
                legend);
    }

    Told inCase(int number) {
        return new Told(title, scene, light, widthCm, heightCm, shape, standing, laying, sections, number, kit, legend);
    }

    Told round() {
        return new Told(
                title, scene, light, widthCm, heightCm, Shape.ROUND, standing, laying, sections, inCase, kit, legend);
    }

    Told inSections(int number) {
        return new Told(title, scene, light, widthCm, heightCm, shape, standing, laying, number, inCase, kit, legend);
    }

    Told fromKit(String shared) {
        return new Told(
                title,
                scene,
                light,
                widthCm,
                heightCm,
                shape,
                standing,
                laying,
                sections,
                inCase,
                Optional.of(shared),
                legend);
    }

    Told saying(Known known) {
        return new Told(title, scene, light, widthCm, heightCm, shape, standing, laying, sections, inCase, kit, known);
    }

    boolean made() {
        return standing == Standing.MADE;
    }

    /** Whether its drills are or were in the house. */
    boolean arrived() {
        return switch (standing) {
            case SHELVED, ON_THE_BENCH, RESTING, MADE -> true;
            default -> false;
        };
    }

    double pitchMm() {
        return shape == Shape.ROUND ? 2.8 : 2.5;
    }

    int columns() {
        return (int) (widthCm * 10 / pitchMm());
    }

    int rows() {
        return (int) (heightCm * 10 / pitchMm());
    }
}
