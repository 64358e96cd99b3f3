package org.glintery.exchange.found;

import org.glintery.api.GlinteryException;
import org.glintery.api.JsonCodec;
import org.openide.util.Lookup;

/** The one place that asks the platform for the codec. Any thread. */
public final class InstalledCodec {
    private InstalledCodec() {}

    /**
     * @param needer what can't be without it, for the message
     * @throws GlinteryException when no module brings one
     */
    public static JsonCodec forUseBy(String needer) {
        JsonCodec codec = Lookup.getDefault().lookup(JsonCodec.class);
        if (codec == null) {
            throw new GlinteryException(needer + " need a JsonCodec, and none is installed");
        }
        return codec;
    }
}
