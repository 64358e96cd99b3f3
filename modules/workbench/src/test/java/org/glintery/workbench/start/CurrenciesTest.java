package org.glintery.workbench.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Currency;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CurrenciesTest {

    @Test
    void beginsWithWhatIsPaidWithHere_orWithTheUsualWhereNobodySaysWhere() {
        assertThat(Currencies.here(new Locale("de", "CH"), "EUR")).isEqualTo("CHF");
        assertThat(Currencies.here(Locale.ENGLISH, "EUR")).isEqualTo("EUR");
        assertThat(Currencies.here(new Locale("en", "ZZ"), "EUR")).isEqualTo("EUR");
    }

    @Test
    void offersWhatIsPaidWithSomewhere_once() {
        assertThat(Currencies.all())
                .doesNotHaveDuplicates()
                .contains(Currency.getInstance("EUR"), Currency.getInstance("USD"), Currency.getInstance("SEK"))
                .doesNotContain(Currency.getInstance("DEM"));
    }
}
