package org.glintery.api.charts;

import org.glintery.api.Preview;
import org.glintery.api.Result;

/** Makes charts. Any thread but the event thread. */
@Preview(since = "1.0")
public interface Charts {

    /**
     * A chart of a picture. Refused when the picture can't be read, no colour is left to use, more colours are pinned than
     * asked for, or the watch cancels it.
     */
    Result<MadeChart> make(ChartRequest request, Watch watch);
}
