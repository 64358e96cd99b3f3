package org.glintery.exchange.kit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.glintery.api.time.About;

/** A kit as a file tells it. */
record KitInFile(
        String format,
        int version,
        String title,
        Optional<String> source,
        Optional<About> orderedOn,
        Optional<About> arrivedOn,
        Optional<BigDecimal> price,
        Optional<BigDecimal> postage,
        Optional<String> notes,
        Optional<List<PictureInFile>> pictures,
        List<PieceInFile> pieces) {
    static final String FORMAT = "glintery-kit";
    static final int VERSION = 1;
}
