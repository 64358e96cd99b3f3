package org.glintery.commands.workshop;

import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Settings.Depth;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop new}: makes an empty workshop. */
@ServiceProvider(service = Verb.class)
public final class WorkshopNewVerb extends WorkshopVerb {

    /** The workshop that was made. */
    public record Made(String folder, Depth depth, String currency) {}

    public WorkshopNewVerb() {
        super("new", Made.class);
    }

    @Override
    @Messages("WorkshopNewVerb.summary=Make an empty workshop in a new or empty folder")
    public String summary() {
        return Bundle.WorkshopNewVerb_summary();
    }

    @Override
    @Messages({
        "WorkshopNewVerb.onlyTheBook=keep pieces, sittings and finishes, not the drills",
        "WorkshopNewVerb.currency=what prices are in, such as EUR, which it is when not said"
    })
    public List<Param> params() {
        return List.of(
                newFolder(),
                Param.flag("only-the-book", Bundle.WorkshopNewVerb_onlyTheBook()),
                Param.option("currency", "CODE", Bundle.WorkshopNewVerb_currency()));
    }

    @Override
    @Messages({
        "# {0} - what was written",
        "WorkshopNewVerb.noCurrency=''{0}'' is not a currency of ISO 4217, such as EUR.",
        "# {0} - folder",
        "WorkshopNewVerb.made=Made a workshop in {0}."
    })
    public VerbResult run(VerbCall call) {
        Optional<String> currency =
                call.value("currency").map(code -> code.strip().toUpperCase(Locale.ROOT));
        if (currency.isPresent() && !isCurrency(currency.get())) {
            return VerbResult.wrongUsage(Bundle.WorkshopNewVerb_noCurrency(currency.get()));
        }
        Result<Workshop> made = call.workshops().create(newFolder(call));
        if (made instanceof Result.Refused<Workshop> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<Workshop> ok = (Result.Ok<Workshop>) made;
        ok.warnings().forEach(call::say);
        Depth depth = call.flag("only-the-book") ? Depth.ONLY_THE_BOOK : Depth.DRILLS_AS_WELL;
        Settings settings = new Settings(depth, currency.orElse(Settings.USUAL.currency()), false);
        try (Workshop workshop = ok.value()) {
            // nothing is written that was not chosen: an empty workshop can take an import
            Optional<Refusal> refusal = settings.equals(Settings.USUAL) ? Optional.empty() : choose(workshop, settings);
            String folder = workshop.folder().toString();
            return refusal.map(VerbResult::refused)
                    .orElseGet(() -> VerbResult.said(
                            new Made(folder, settings.depth(), settings.currency()),
                            Bundle.WorkshopNewVerb_made(folder)));
        }
    }

    @Messages("WorkshopNewVerb.setUp=Set the workshop up")
    private static Optional<Refusal> choose(Workshop workshop, Settings settings) {
        Result<Applied> applied = workshop.apply(ChangeSet.named(Bundle.WorkshopNewVerb_setUp())
                .create(Settings.TYPE, Settings.ID, settings)
                .build());
        return applied instanceof Result.Refused<Applied> no ? Optional.of(no.refusal()) : Optional.empty();
    }

    private static boolean isCurrency(String code) {
        return Currency.getAvailableCurrencies().stream()
                .anyMatch(known -> known.getCurrencyCode().equals(code));
    }
}
