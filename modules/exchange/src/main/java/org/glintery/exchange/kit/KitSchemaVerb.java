package org.glintery.exchange.kit;

import java.util.List;
import org.glintery.api.Json;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code kit schema}: the form of a kit file, for whoever writes one. Opens no workshop. */
@ServiceProvider(service = Verb.class)
public final class KitSchemaVerb implements Verb {

    /** @param schema a JSON Schema (2020-12) */
    public record Published(Json schema) {}

    @Override
    public String name() {
        return "kit schema";
    }

    @Override
    @Messages("KitSchemaVerb.summary=Print the form of a kit file, as a JSON Schema")
    public String summary() {
        return Bundle.KitSchemaVerb_summary();
    }

    @Override
    public String feature() {
        return "exchange";
    }

    @Override
    public List<Param> params() {
        return List.of();
    }

    @Override
    public Class<? extends Record> answers() {
        return Published.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        String text = KitSchema.text();
        return VerbResult.said(new Published(call.codec().parse(text)), text.strip());
    }
}
