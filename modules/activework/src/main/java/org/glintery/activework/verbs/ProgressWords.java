package org.glintery.activework.verbs;

import org.glintery.api.activework.Progress;
import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/** How far a piece is, in one sentence. */
final class ProgressWords {

    private static final int PERCENT = 100;

    private ProgressWords() {}

    static String of(Progress progress) {
        if (progress.share().isEmpty()) {
            return withoutTotal(progress);
        }
        long percent = percent(progress.share().get());
        return progress.laidDrills().isPresent() && progress.totalDrills().isPresent()
                ? drills(progress.laidDrills().get(), progress.totalDrills().get(), percent, progress.estimated())
                : share(percent, progress.estimated());
    }

    @Messages({
        "# {0} - how many are laid",
        "# {1} - the same in figures",
        "# {2} - of how many",
        "# {3} - percent",
        "ProgressWords.drills={1} of {2} drills {0,choice,0#are|1#is|1<are} laid, {3} %.",
        "# {0} - how many are laid",
        "# {1} - the same in figures",
        "# {2} - of how many",
        "# {3} - percent",
        "ProgressWords.aboutDrills=About {1} of {2} drills {0,choice,0#are|1#is|1<are} laid, {3} %."
    })
    private static String drills(long laid, long total, long percent, boolean estimated) {
        String so = Balance.grouped(laid);
        String all = Balance.grouped(total);
        return estimated
                ? Bundle.ProgressWords_aboutDrills(laid, so, all, String.valueOf(percent))
                : Bundle.ProgressWords_drills(laid, so, all, String.valueOf(percent));
    }

    @Messages({
        "# {0} - percent",
        "ProgressWords.share={0} % is laid.",
        "# {0} - percent",
        "ProgressWords.aboutShare=About {0} % is laid."
    })
    private static String share(long percent, boolean estimated) {
        String so = String.valueOf(percent);
        return estimated ? Bundle.ProgressWords_aboutShare(so) : Bundle.ProgressWords_share(so);
    }

    @Messages({
        "# {0} - how many",
        "# {1} - the same in figures",
        "ProgressWords.noTotal={0,choice,0#0 drills are|1#1 drill is|1<{1} drills are} laid; how many the whole takes is not known.",
        "# {0} - how many",
        "# {1} - the same in figures",
        "ProgressWords.aboutNoTotal=About {0,choice,0#0 drills are|1#1 drill is|1<{1} drills are} laid; how many the whole takes is not known.",
        "ProgressWords.unknown=How far it is can't be told yet."
    })
    private static String withoutTotal(Progress progress) {
        if (progress.laidDrills().isEmpty()) {
            return Bundle.ProgressWords_unknown();
        }
        long laid = progress.laidDrills().get();
        return progress.estimated()
                ? Bundle.ProgressWords_aboutNoTotal(laid, Balance.grouped(laid))
                : Bundle.ProgressWords_noTotal(laid, Balance.grouped(laid));
    }

    /** Whole percents; 100 only when it is all. */
    private static long percent(double share) {
        return share >= 1 ? PERCENT : Math.min(PERCENT - 1, Math.round(share * PERCENT));
    }
}
