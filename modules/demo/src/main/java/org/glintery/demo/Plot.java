package org.glintery.demo;

import static org.glintery.api.stash.Standing.HOPED_FOR;
import static org.glintery.api.stash.Standing.LET_GO;
import static org.glintery.api.stash.Standing.MADE;
import static org.glintery.api.stash.Standing.ON_THE_BENCH;
import static org.glintery.api.stash.Standing.ORDERED;
import static org.glintery.api.stash.Standing.RESTING;
import static org.glintery.api.stash.Standing.SHELVED;
import static org.glintery.demo.Told.painted;
import static org.glintery.demo.Told.titled;

import java.util.List;
import java.util.Set;
import org.glintery.demo.drills.BlockByBlock;
import org.glintery.demo.drills.SectionBySection;
import org.glintery.demo.scene.Light;
import org.glintery.demo.scene.Scenes;

/** All pieces of the demo. Invented, like the town they show. */
final class Plot {
    static final String RELAY = "Ferry Slip relay";
    static final String WINDOWS = "Net loft, north windows";
    static final String BOARD = "Last ferry, 21:40";
    static final String WATERLINE = "Hull under the crane";
    static final String LIT = "Windows at blue hour";
    static final String OWN_PICTURE = "Pilot boat, from my own photo";
    static final String LATEST = "Rope-walk at low water";
    static final String FUNNEL = "The noon ferry";

    private Plot() {}

    /** In the order of their standings; the made ones as they were finished, oldest first. */
    static List<Told> pieces() {
        return List.of(
                painted(RELAY, Scenes.HARBOUR_CHART, Light.MORNING, 40, 60, ON_THE_BENCH)
                        .inSections(9)
                        .laid(new SectionBySection(Set.of(1, 2, 3, 4, 5, 7), 8))
                        .inCase(1),
                painted(BOARD, Scenes.LAST_FERRY, Light.EVENING, 35, 45, ON_THE_BENCH)
                        .laid(new BlockByBlock(0.44))
                        .inCase(2),
                painted(WINDOWS, Scenes.NET_LOFT, Light.FROST, 35, 45, ON_THE_BENCH)
                        .laid(new BlockByBlock(0.62))
                        .inCase(3),
                painted(WATERLINE, Scenes.BOATYARD_CRANE, Light.MORNING, 40, 50, RESTING)
                        .laid(new BlockByBlock(0.36)),
                painted("Rope-walk by lamplight", Scenes.ROPE_WALK, Light.NIGHT, 30, 40, RESTING)
                        .laid(new BlockByBlock(0.14)),
                painted(LIT, Scenes.QUAY_HOUSES, Light.BLUE_HOUR, 35, 45, SHELVED)
                        .round(),
                painted("Signal board 7", Scenes.SIGNAL_BOARD, Light.NOON, 30, 40, SHELVED),
                painted("Crane at first light", Scenes.BOATYARD_CRANE, Light.EVENING, 35, 45, SHELVED)
                        .saying(Told.Known.ONLY_CODES),
                painted("Behind the breakwater", Scenes.BREAKWATER, Light.NOON, 40, 50, SHELVED)
                        .round(),
                painted("Tea tin, ferry blue", Scenes.TIN_LABEL, Light.NOON, 32, 14, SHELVED),
                painted("Small pail, roofs and waves", Scenes.PAIL_LABEL, Light.FROST, 30, 12, SHELVED),
                painted("Chandlery, the back shelves", Scenes.CHANDLERY_SHELVES, Light.NOON, 40, 60, SHELVED),
                painted("Five oilskins", Scenes.OILSKINS, Light.NOON, 40, 50, SHELVED)
                        .saying(Told.Known.ONLY_BAGS),
                titled("Mystery kit from the swap table", SHELVED),
                painted("Net loft, south windows", Scenes.NET_LOFT, Light.EVENING, 35, 45, ORDERED),
                painted("Signal board 9", Scenes.SIGNAL_BOARD, Light.BLUE_HOUR, 30, 40, ORDERED),
                titled("Lock keeper's window", ORDERED),
                painted("Fog at the slip", Scenes.LAST_FERRY, Light.FOG, 40, 60, HOPED_FOR),
                painted("Tide flats, early", Scenes.TIDE_FLATS, Light.MORNING, 40, 50, HOPED_FOR),
                painted(OWN_PICTURE, Scenes.PILOT_BOAT, Light.NOON, 40, 50, HOPED_FOR),
                titled("Timber stacks by the mill", HOPED_FOR),
                titled("The old weighbridge", HOPED_FOR),
                titled("A first kit, never begun", LET_GO),
                titled("Dock cranes, too large", LET_GO),
                titled("Blue boats", MADE),
                titled("The old slip", MADE),
                titled("Practice square", MADE),
                painted("Signal board 2", Scenes.SIGNAL_BOARD, Light.FROST, 25, 30, MADE)
                        .fromKit("Two signal boards"),
                painted("Signal board 3", Scenes.SIGNAL_BOARD, Light.MORNING, 25, 30, MADE)
                        .fromKit("Two signal boards"),
                painted("Cable ferry, early", Scenes.CABLE_FERRY, Light.MORNING, 35, 45, MADE)
                        .round(),
                painted("Rowing boats from the quay", Scenes.ROWING_BOATS, Light.NOON, 30, 40, MADE),
                painted("The long pier in winter", Scenes.LONG_PIER, Light.FROST, 35, 45, MADE),
                painted("Pilot boat in a swell", Scenes.PILOT_BOAT, Light.MORNING, 40, 50, MADE)
                        .round(),
                painted("Lock gates at noon", Scenes.LOCK_GATES, Light.NOON, 30, 40, MADE),
                painted(FUNNEL, Scenes.LAST_FERRY, Light.NOON, 40, 60, MADE),
                painted("Biscuit tin, red band", Scenes.TIN_LABEL, Light.EVENING, 36, 16, MADE),
                painted("Evening behind the breakwater", Scenes.BREAKWATER, Light.EVENING, 35, 45, MADE),
                painted(LATEST, Scenes.ROPE_WALK, Light.MORNING, 30, 40, MADE).inCase(6));
    }
}
