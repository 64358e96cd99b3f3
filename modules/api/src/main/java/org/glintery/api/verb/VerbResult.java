package org.glintery.api.verb;

import java.util.List;
import org.glintery.api.Refusal;
import org.glintery.api.Stable;

/** How a verb ended. */
@Stable
public sealed interface VerbResult {

    /** Exit 0. The record is printed under {@code --json}, else the text. */
    record Said(Record answer, String text) implements VerbResult {}

    /** Exit 0, or 1 when {@code refusedSome}: all has been printed line by line. */
    record Streamed(boolean refusedSome) implements VerbResult {}

    /** Exit 1; nothing was changed. */
    record Refused(Refusal refusal) implements VerbResult {}

    /** Exit 2. @param candidates what may have been meant */
    record WrongUsage(String text, List<String> candidates) implements VerbResult {
        public WrongUsage {
            candidates = List.copyOf(candidates);
        }
    }

    static VerbResult said(Record answer, String text) {
        return new Said(answer, text);
    }

    static VerbResult refused(String code, String text) {
        return new Refused(new Refusal(code, text));
    }

    static VerbResult wrongUsage(String text) {
        return new WrongUsage(text, List.of());
    }

    /** Exit 2 for a name that is unknown or ambiguous, exit 1 for any other refusal. */
    static VerbResult refused(Refusal refusal) {
        boolean misnamed =
                refusal.code().equals("unknown-name") || refusal.code().equals("ambiguous-name");
        return misnamed ? wrongUsage(refusal.text()) : new Refused(refusal);
    }
}
