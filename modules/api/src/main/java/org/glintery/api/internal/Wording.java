package org.glintery.api.internal;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The sentences of the API, from the bundle of the package that says them. Any thread. */
public final class Wording {
    private Wording() {}

    /** @param values texts, made as they are to be shown: numbers would be written as the computer's country does */
    public static String of(Class<?> where, String key, String... values) {
        ResourceBundle texts = ResourceBundle.getBundle(where.getPackageName() + ".Bundle");
        return new MessageFormat(texts.getString(where.getSimpleName() + "." + key), Locale.ROOT).format(values);
    }
}
