package org.glintery.framing.ui;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.verb.WrittenDecimal;
import org.openide.util.NbBundle.Messages;

/** Lengths as they are typed and shown, to a tenth of a millimetre. Pure; any thread. */
final class Millimetres {

    private static final double TOO_LONG_MM = 100_000;

    private Millimetres() {}

    /** Empty for nothing typed; commas and points both divide, as the verbs read them. */
    @Messages({
        "# {0} - what was typed",
        "Millimetres.wrong=A length is a number of millimetres, such as 12.5, not {0}.",
        "# {0} - what was typed",
        "# {1} - the number with decimals",
        "# {2} - the number with thousands",
        "Millimetres.either={0} can be read as {1} or as {2} millimetres. Write {1}0 or {2}."
    })
    static Result<Optional<Double>> read(String typed) {
        String number = typed.strip().replaceAll("\\s*mm$", "");
        if (number.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        if (WrittenDecimal.doubt("", number).isPresent()) {
            return Result.refused(
                    "length", Bundle.Millimetres_either(number, number.replace(',', '.'), number.replace(",", "")));
        }
        Optional<Double> length =
                WrittenDecimal.of(number).map(BigDecimal::doubleValue).filter(mm -> mm >= 0 && mm < TOO_LONG_MM);
        return length.isPresent()
                ? Result.ok(length)
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
