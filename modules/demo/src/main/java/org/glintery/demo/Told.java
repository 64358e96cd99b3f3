package org.glintery.demo;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Standing;

/**
 * One piece of the plot.
 *
 * @param scene absent when there is only a title
 * @param widthCm and heightCm: the drilled area
 * @param laid the share laid so far, for pieces on the bench or resting
 * @param sections how many it is worked in, 0 for none
 * @param inCase which case its drills are kitted up in, 0 for none
 */
record Told(
        String title,
        Optional<Supplier<Scene>> scene,
        Light light,
        int widthCm,
        int heightCm,
        Shape shape,
        Standing standing,
        double laid,
        int sections,
        int inCase) {

    static final String RELAY = "Ferry Slip relay";
    static final String WINDOWS = "Net loft, north windows";
    static final String BOARD = "Last ferry, 21:40";
    static final String WATERLINE = "Hull on the slip";
    static final String LIT = "Windows at blue hour";

    private static Told of(String title, Supplier<Scene> scene, Light light, int w, int h, Standing standing) {
        return new Told(title, Optional.of(scene), light, w, h, Shape.SQUARE, standing, 0, 0, 0);
    }

    private static Told only(String title, Standing standing) {
        return new Told(title, Optional.empty(), Light.NOON, 30, 40, Shape.SQUARE, standing, 0, 0, 0);
    }

    private Told bench(double share, int number) {
        return new Told(title, scene, light, widthCm, heightCm, shape, standing, share, sections, number);
    }

    private Told round() {
        return new Told(title, scene, light, widthCm, heightCm, Shape.ROUND, standing, laid, sections, inCase);
    }

    private Told inSections(int number) {
        return new Told(title, scene, light, widthCm, heightCm, shape, standing, laid, number, inCase);
    }

    /** The whole plot; the made pieces in the order they were finished, oldest first. */
    static List<Told> all() {
        return List.of(
                of(RELAY, HarbourChart::new, Light.MORNING, 40, 60, Standing.ON_THE_BENCH).inSections(Relay.EVENINGS.size()).bench(Relay.share(), 1),
                of(BOARD, DepartureBoard::new, Light.EVENING, 35, 45, Standing.ON_THE_BENCH).bench(0.44, 2),
                of(WINDOWS, NetLoft::new, Light.FROST, 35, 45, Standing.ON_THE_BENCH).bench(0.18, 3),
                of(WATERLINE, BoatyardCrane::new, Light.FOG, 40, 50, Standing.RESTING).bench(0.32, 4),
                of("Rope-walk by lamplight", RopeWalk::new, Light.NIGHT, 30, 40, Standing.RESTING).bench(0.12, 0),
                of(LIT, Breakwater::new, Light.NIGHT, 35, 45, Standing.SHELVED).round(),
                of("Signal board 7", SignalBoard::new, Light.NOON, 30, 40, Standing.SHELVED),
                of("Crane at first light", BoatyardCrane::new, Light.MORNING, 35, 45, Standing.SHELVED),
                of("Behind the breakwater", Breakwater::new, Light.NOON, 40, 50, Standing.SHELVED).round(),
                of("Tea tin, ferry blue", TinLabel::new, Light.FROST, 32, 14, Standing.SHELVED),
                of("Small pail", TinLabel::new, Light.EVENING, 30, 12, Standing.SHELVED),
                of("Harbour chart, north sheet", HarbourChart::new, Light.FROST, 40, 60, Standing.SHELVED),
                only("Mystery kit from the swap table", Standing.SHELVED),
                of("Net loft, south windows", NetLoft::new, Light.EVENING, 35, 45, Standing.ORDERED),
                of("Signal board 9", SignalBoard::new, Light.EVENING, 30, 40, Standing.ORDERED),
                only("Replacement canvas, crane", Standing.ORDERED),
                of("Fog at the slip", DepartureBoard::new, Light.FOG, 40, 60, Standing.HOPED_FOR),
                only("The long pier in winter", Standing.HOPED_FOR),
                only("Pilot boat, own photo", Standing.HOPED_FOR),
                only("Lock gates", Standing.HOPED_FOR),
                only("Cable ferry", Standing.HOPED_FOR),
                only("A first kit, never begun", Standing.LET_GO),
                only("Dock cranes, too large", Standing.LET_GO),
                only("Blue boats", Standing.MADE),
                only("The old slip", Standing.MADE),
                only("Practice square", Standing.MADE),
                of("Signal board 2", SignalBoard::new, Light.FROST, 25, 30, Standing.MADE),
                of("Signal board 3", SignalBoard::new, Light.MORNING, 25, 30, Standing.MADE),
                of("Rope-walk at low water", RopeWalk::new, Light.MORNING, 30, 40, Standing.MADE),
                of("Evening behind the wall", Breakwater::new, Light.EVENING, 35, 45, Standing.MADE),
                of("Crane in the fog", BoatyardCrane::new, Light.FOG, 30, 40, Standing.MADE).round(),
                of("Harbour chart, south sheet", HarbourChart::new, Light.EVENING, 40, 50, Standing.MADE),
                of("Net loft in autumn", NetLoft::new, Light.FOG, 30, 40, Standing.MADE),
                of("The noon ferry", DepartureBoard::new, Light.NOON, 40, 60, Standing.MADE),
                of("Biscuit tin, red band", TinLabel::new, Light.NOON, 36, 16, Standing.MADE),
                of("Breakwater, first frost", Breakwater::new, Light.FROST, 30, 40, Standing.MADE),
                of("Slip by night", BoatyardCrane::new, Light.NIGHT, 35, 45, Standing.MADE));
    }
}
