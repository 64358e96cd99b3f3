package org.glintery.workbench.desk;

import org.glintery.api.Refusal;

/** How the window speaks. Event thread. */
public interface Speech {

    /** In passing, in the foot. */
    void say(String sentence);

    /** Something was done, and the user should hear this about it. */
    void warn(String sentence);

    /** Something else was done since: what was said of the last is no longer of interest. */
    void goOn();

    /** Something was not done. */
    void refuse(Refusal refusal);
}
