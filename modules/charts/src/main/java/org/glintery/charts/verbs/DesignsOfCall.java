package org.glintery.charts.verbs;

import java.util.function.Function;
import org.glintery.api.GlinteryException;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.Designs;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;

/** The designs of the workshop that a verb was called for. */
final class DesignsOfCall {

    private DesignsOfCall() {}

    static Designs of(VerbCall call) {
        return call.workshop()
                .find(Designs.class)
                .orElseThrow(() -> new GlinteryException("charts bring this verb but not its service"));
    }

    /** Goes on with the design that the argument {@code design} means. */
    static VerbResult named(VerbCall call, Function<Stored<Design>, VerbResult> next) {
        return VerbSteps.named(call, Design.TYPE, Design::title, call.need("design"), next);
    }
}
