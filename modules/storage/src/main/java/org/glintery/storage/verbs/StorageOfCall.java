package org.glintery.storage.verbs;

import org.glintery.api.GlinteryException;
import org.glintery.api.storage.Storage;
import org.glintery.api.verb.VerbCall;

/** The storage of the workshop that a verb was called for. */
final class StorageOfCall {

    private StorageOfCall() {}

    static Storage of(VerbCall call) {
        return call.workshop()
                .find(Storage.class)
                .orElseThrow(() -> new GlinteryException("storage brings this verb but not its service"));
    }
}
