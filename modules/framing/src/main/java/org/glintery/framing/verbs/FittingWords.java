package org.glintery.framing.verbs;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.verb.VerbCall;
import org.openide.util.NbBundle.Messages;

/**
 * Options of one call that can not both hold, such as a board with glass. What an earlier plan tells of a frame stays for
 * when the piece is framed after all, so only what is said now is looked at. Pure.
 */
final class FittingWords {

    private static final List<String> OF_FRAMES =
            List.of("moulding", "moulding-width", "lip", "rebate", "allowance", "glazing", "glazing-thickness");
    private static final String KERF = "kerf";
    private static final Set<Decision> SAWN =
            EnumSet.of(Decision.FRAMED, Decision.STRETCHED, Decision.HANGER, Decision.NOT_DECIDED);

    private FittingWords() {}

    /**
     * What does not fit, as a sentence.
     *
     * @param said the option of the decision, when this call says one
     */
    @Messages({
        "FittingWords.frame=--frame",
        "FittingWords.sawn=--frame, --stretched or --hanger",
        "# {0} - option of the decision",
        "# {1} - option that does not fit it",
        "# {2} - options that it fits",
        "FittingWords.apart=--{0} and --{1} don''t go together: --{1} belongs to {2}.",
        "# {0} - option that does not fit",
        "# {1} - options that it fits",
        "# {2} - what was decided",
        "FittingWords.decided=--{0} belongs to {1}, and this piece is: {2}. Say how it will hang now as well, or leave --{0} out."
    })
    static Optional<String> trouble(VerbCall call, Optional<String> said, Decision decision) {
        Optional<String> odd = odd(call, decision);
        return odd.map(option -> {
            String fits = option.equals(KERF) ? Bundle.FittingWords_sawn() : Bundle.FittingWords_frame();
            return said.map(words -> Bundle.FittingWords_apart(words, option, fits))
                    .orElseGet(() -> Bundle.FittingWords_decided(option, fits, PieceFrame.words(decision)));
        });
    }

    private static Optional<String> odd(VerbCall call, Decision decision) {
        if (decision == Decision.FRAMED || decision == Decision.NOT_DECIDED) {
            return Optional.empty();
        }
        return OF_FRAMES.stream()
                .filter(option -> call.value(option).isPresent() && !isNone(call, option))
                .findFirst()
                .or(() -> Optional.of(KERF).filter(kerf -> call.value(kerf).isPresent() && !SAWN.contains(decision)));
    }

    /** No glazing fits everything. */
    private static boolean isNone(VerbCall call, String option) {
        return option.equals("glazing")
                && call.value(option).filter(w -> w.strip().equals("none")).isPresent();
    }
}
