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
        double share = progress.share().get();
        return progress.laidDrills().isPresent() && progress.totalDrills().isPresent()
                ? drills(progress.laidDrills().get(), progress.totalDrills().get(), share, progress.estimated())
                : share(share, progress.estimated());
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
        "ProgressWords.aboutDrills=About {1} of {2} drills {0,choice,0#are|1#is|1<are} laid, {3} %.",
        "ProgressWords.lessThanOne=less than 1"
    })
    private static String drills(long laid, long total, double share, boolean estimated) {
        String so = Balance.grouped(laid);
        String all = Balance.grouped(total);
        String percent = isLittle(share) ? Bundle.ProgressWords_lessThanOne() : String.valueOf(percent(share));
        return estimated
                ? Bundle.ProgressWords_aboutDrills(laid, so, all, percent)
                : Bundle.ProgressWords_drills(laid, so, all, percent);
    }

    @Messages({
        "# {0} - percent",
        "ProgressWords.share={0} % is laid.",
        "# {0} - percent",
        "ProgressWords.aboutShare=About {0} % is laid.",
        "ProgressWords.littleShare=Less than 1 % is laid."
    })
    private static String share(double share, boolean estimated) {
        if (isLittle(share)) {
            return Bundle.ProgressWords_littleShare();
        }
        String so = String.valueOf(percent(share));
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

    /** More than nothing, and not yet half a percent. */
    private static boolean isLittle(double share) {
        return share > 0 && percent(share) == 0;
    }

    /** Whole percents; 100 only when it is all. */
    private static long percent(double share) {
        return share >= 1 ? PERCENT : Math.min(PERCENT - 1, Math.round(share * PERCENT));
    }
}
