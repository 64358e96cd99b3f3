package org.glintery.stash.verbs;

import org.glintery.api.stash.Standing;
import org.openide.util.NbBundle.Messages;

/** Where a piece is in its life, in words. */
final class StandingWords {

    private StandingWords() {}

    @Messages({
        "StandingWords.hopedFor=hoped for",
        "StandingWords.ordered=ordered",
        "StandingWords.shelved=shelved",
        "StandingWords.onTheBench=on the bench",
        "StandingWords.resting=resting",
        "StandingWords.made=made",
        "StandingWords.letGo=let go"
    })
    static String of(Standing standing) {
        return switch (standing) {
            case HOPED_FOR -> Bundle.StandingWords_hopedFor();
            case ORDERED -> Bundle.StandingWords_ordered();
            case SHELVED -> Bundle.StandingWords_shelved();
            case ON_THE_BENCH -> Bundle.StandingWords_onTheBench();
            case RESTING -> Bundle.StandingWords_resting();
            case MADE -> Bundle.StandingWords_made();
            case LET_GO -> Bundle.StandingWords_letGo();
        };
    }
}
