package org.glintery.workbench.menu;

import java.util.Currency;
import org.glintery.api.Result;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.start.Currencies;
import org.openide.util.NbBundle.Messages;

/** Asks for the currency of all prices. Event thread; returns when the dialog is closed. */
@Messages({
    "CurrencyQuestion.title=The currency of prices",
    "CurrencyQuestion.field=Prices are in",
    "CurrencyQuestion.hint=Prices that are written already keep their numbers.",
    "CurrencyQuestion.ok=Keep it"
})
final class CurrencyQuestion {
    private CurrencyQuestion() {}

    static void ask(Desk desk) {
        ChoiceBox<Currency> choice = Currencies.choice(
                Settings.of(desk.view()).orElse(Settings.USUAL).currency());
        FormSheet form = new FormSheet().field(Bundle.CurrencyQuestion_field(), choice, Bundle.CurrencyQuestion_hint());
        if (Asking.ask(Bundle.CurrencyQuestion_title(), form, Bundle.CurrencyQuestion_ok(), () -> true)) {
            String code = choice.chosen().getCurrencyCode();
            desk.change(view -> {
                ChangeSet.Builder change = ChangeSet.named(Bundle.CurrencyQuestion_title());
                Settings.price(change, view, code);
                return Result.ok(change.build());
            });
        }
    }
}
