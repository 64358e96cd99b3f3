package org.glintery.api.activework;

import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;

/** What a feature contributes when a piece is completed; all parts become one change. */
@Stable
public interface CompletionPart {

    /**
     * This feature's part, computed from the view; no operations when there is nothing to do. A refusal keeps the whole from
     * being completed. Any thread.
     */
    Result<ChangeSet> completing(View view, Completion completion);
}
