package org.glintery.api.charts;

import java.util.Map;
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

    /**
     * A chart of a picture from what is in the house: no drill is laid oftener than it is there. Refused as {@link #make} is,
     * with {@code pinned-not-there}, or with {@code not-enough-drills} when the chart has more cells.
     *
     * @param inTheHouse by code of the card how many drills there are, all of one shape, size, body and coating; of a code
     *     that is not named there are none
     */
    Result<StockedChart> makeFromStock(ChartRequest request, Map<String, Long> inTheHouse, Watch watch);
}
