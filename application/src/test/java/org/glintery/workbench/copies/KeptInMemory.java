package org.glintery.workbench.copies;

import java.util.HashMap;
import java.util.Map;
import java.util.prefs.AbstractPreferences;

/** Preferences of a computer that forgets them. */
final class KeptInMemory extends AbstractPreferences {
    private final Map<String, String> values = new HashMap<>();
    private final Map<String, KeptInMemory> children = new HashMap<>();

    KeptInMemory() {
        super(null, "");
    }

    private KeptInMemory(KeptInMemory parent, String name) {
        super(parent, name);
    }

    @Override
    protected void putSpi(String key, String value) {
        values.put(key, value);
    }

    @Override
    protected String getSpi(String key) {
        return values.get(key);
    }

    @Override
    protected void removeSpi(String key) {
        values.remove(key);
    }

    @Override
    protected void removeNodeSpi() {
        throw new UnsupportedOperationException();
    }

    @Override
    protected String[] keysSpi() {
        return values.keySet().toArray(String[]::new);
    }

    @Override
    protected String[] childrenNamesSpi() {
        return children.keySet().toArray(String[]::new);
    }

    @Override
    protected AbstractPreferences childSpi(String name) {
        return children.computeIfAbsent(name, n -> new KeptInMemory(this, n));
    }

    @Override
    protected void syncSpi() {
        // in memory only
    }

    @Override
    protected void flushSpi() {
        // in memory only
    }
}
