package org.glintery.framing.ui;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.glintery.api.Result;
import org.openide.util.NbBundle.Messages;

/** Lengths as they are typed and shown, to a tenth of a millimetre. Pure; any thread. */
final class Millimetres {

    private Millimetres() {}

    /** Empty for nothing typed; commas and points both divide. */
    @Messages({"# {0} - what was typed", "Millimetres.wrong=A length is a number of millimetres, such as 12.5, not {0}."
    })
    static Result<Optional<Double>> read(String typed) {
        String number = typed.strip().replace(',', '.').replaceAll("\\s*mm$", "");
        if (number.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        return number.matches("\\d{1,5}(\\.\\d{1,4})?")
                ? Result.ok(Optional.of(Double.parseDouble(number)))
                : Result.refused("length", Bundle.Millimetres_wrong(typed.strip()));
    }

    static String words(double mm) {
        BigDecimal rounded = BigDecimal.valueOf(mm).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String words(Optional<Double> mm) {
        return mm.map(Millimetres::words).orElse("");
    }
}
