package org.glintery.api.disk;

import java.text.MessageFormat;
import java.util.ResourceBundle;

/** The sentences of this package. */
final class DiskTexts {
    private DiskTexts() {}

    static String text(String key, Object... values) {
        ResourceBundle texts = ResourceBundle.getBundle(DiskTexts.class.getPackageName() + ".Bundle");
        return MessageFormat.format(texts.getString(key), values);
    }
}
