package org.glintery.activework;

import java.util.Locale;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.time.About;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Days that have not been yet. Tomorrow may be today where somebody else's clock stands, and passes. Pure; any thread. */
public final class NotYet {

    private NotYet() {}

    @Messages({"# {0} - day", "NotYet.refusal={0} has not been yet. Check the date. Nothing was changed."})
    public static Optional<Refusal> refusal(View view, About on) {
        return on.earliest()
                .filter(day -> day.isAfter(view.day().plusDays(1)))
                .map(day -> new Refusal("future-day", Bundle.NotYet_refusal(capital(on.words()))));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
