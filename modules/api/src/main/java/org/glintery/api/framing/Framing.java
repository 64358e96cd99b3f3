package org.glintery.api.framing;

import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;

/** Framing. Methods compute from the view and change nothing: apply what they give. Any thread. */
@Stable
public interface Framing {

    /**
     * Records a decision. Warns of open questions that should be settled before a one-way step. Refused with
     * {@code no-piece}, {@code bad-size}, {@code bad-length} or {@code no-place}.
     */
    Result<ChangeSet> decide(View view, UUID piece, FramePlan plan);

    /**
     * The sums. Refused with {@code no-piece}, with {@code no-size} or {@code no-moulding} when a number is missing, and as
     * {@link #decide} is when one can't be.
     */
    Result<FrameFigures> figures(View view, UUID piece, FramePlan plan);

    /** What the rebate has to take, by the tallest drill of the piece. */
    FrameDepth depth(View view, UUID piece, FramePlan plan);
}
