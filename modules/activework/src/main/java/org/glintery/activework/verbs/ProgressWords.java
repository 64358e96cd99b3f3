package org.glintery.activework.verbs;

import org.glintery.api.activework.Progress;

/** How far a piece is, in one sentence. */
final class ProgressWords {

    private static final int PERCENT = 100;

    private ProgressWords() {}

    static String of(Progress progress) {
        String about = progress.estimated() ? "About " : "";
        if (progress.share().isPresent()
                && progress.laidDrills().isPresent()
                && progress.totalDrills().isPresent()) {
            return about + progress.laidDrills().get() + " of "
                    + progress.totalDrills().get() + " drills are laid, "
                    + percent(progress.share().get()) + ".";
        }
        if (progress.share().isPresent()) {
            return about + percent(progress.share().get()) + " is laid.";
        }
        return progress.laidDrills()
                .map(laid -> about + laid + " drills are laid; how many the whole takes is not known.")
                .orElse("How far it is can't be told yet.");
    }

    /** Whole percents; 100 only when it is all. */
    private static String percent(double share) {
        return (share >= 1 ? PERCENT : Math.min(PERCENT - 1, Math.round(share * PERCENT))) + " %";
    }
}
