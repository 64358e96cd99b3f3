package org.glintery.workbench.start;

import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.glintery.workbench.parts.ChoiceBox;
import org.openide.util.NbBundle.Messages;

/** The currencies that are paid with somewhere, by ISO 4217 as Java knows it. */
public final class Currencies {
    private Currencies() {}

    /** Event thread. @param chosen its code is shown first */
    public static ChoiceBox<Currency> choice(String chosen) {
        ChoiceBox<Currency> box = new ChoiceBox<>(all(), Currencies::words);
        box.show(Currency.getInstance(chosen));
        return box;
    }

    /** What is paid with where this computer says it is; else what workshops usually begin with. */
    static String here(Locale locale, String otherwise) {
        try {
            Currency currency = Currency.getInstance(locale);
            return currency == null ? otherwise : currency.getCurrencyCode();
        } catch (IllegalArgumentException e) { // a locale without a country, or with one that is not on ISO's list
            return otherwise;
        }
    }

    static List<Currency> all() {
        return Stream.of(Locale.getISOCountries())
                .map(country -> Currency.getInstance(new Locale("", country)))
                .filter(Objects::nonNull)
                .distinct()
                .sorted(Comparator.comparing(Currency::getCurrencyCode))
                .toList();
    }

    @Messages({"# {0} - code", "# {1} - name", "Currencies.words={0}, {1}"})
    private static String words(Currency currency) {
        return Bundle.Currencies_words(currency.getCurrencyCode(), currency.getDisplayName(Locale.ENGLISH));
    }
}
