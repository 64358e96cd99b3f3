package org.glintery.benchmarks.large;

import java.util.List;

/** Titles of pieces, each once, of things that stand about a harbour. */
final class Titles {

    private static final List<String> HOW = List.of(
            "Grey",
            "Tarred",
            "Old",
            "Long",
            "Little",
            "Leaning",
            "Quiet",
            "Patched",
            "Green",
            "Painted",
            "Empty",
            "Last",
            "Narrow",
            "Rusted",
            "Whitewashed",
            "Busy");

    private static final List<String> WHAT = List.of(
            "rope-walk",
            "boatyard crane",
            "signal-flag board",
            "ferry",
            "net loft",
            "slipway",
            "mooring post",
            "fish crate",
            "tide gauge",
            "customs shed",
            "chandlery",
            "sail loft",
            "gangway",
            "winch",
            "buoy store",
            "capstan",
            "dry dock",
            "harbour office",
            "pilot cutter",
            "herring barrel",
            "weighbridge",
            "boathouse",
            "coal hulk",
            "bollard row",
            "ice house");

    private static final List<String> WHERE = List.of(
            "at low water",
            "in fog",
            "after rain",
            "at dusk",
            "by the north quay",
            "under repair",
            "from the pier",
            "before the storm",
            "in first light",
            "behind the lock",
            "with open doors",
            "at slack tide",
            "in the thaw");

    private Titles() {}

    static String of(int number) {
        int how = number % HOW.size();
        int what = number / HOW.size() % WHAT.size();
        int where = number / (HOW.size() * WHAT.size()) % WHERE.size();
        return HOW.get(how) + " " + WHAT.get(what) + " " + WHERE.get(where);
    }

    /** As many different titles as there are. */
    static int most() {
        return HOW.size() * WHAT.size() * WHERE.size();
    }
}
