package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.tools.ToolProvider;

/** A type of ours compiled from its source with a change in it, beside the one that is packaged. */
final class PlantedType {
    private PlantedType() {}

    /**
     * Compiles and loads it.
     *
     * @param source under {@code modules}
     * @param old what stands in the source, exactly once
     */
    static Class<?> of(Path folder, Path source, String old, String instead) {
        try {
            String text = Files.readString(source);
            assertThat(text.split(java.util.regex.Pattern.quote(old), -1))
                    .as("'%s' in %s", old, source)
                    .hasSize(2);
            Path changed = folder.resolve(source.getFileName());
            Files.writeString(changed, text.replace(old, instead));
            int code = ToolProvider.getSystemJavaCompiler()
                    .run(
                            null,
                            null,
                            null,
                            "-proc:none",
                            "-cp",
                            System.getProperty("java.class.path"),
                            "-d",
                            folder.toString(),
                            changed.toString());
            assertThat(code).as("compiles").isZero();
            String name = text.replaceAll("(?s).*?\\npackage ([\\w.]+);.*|^package ([\\w.]+);.*", "$1$2") + "."
                    + source.getFileName().toString().replace(".java", "");
            return new Loader(folder, name).loadClass(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    /** Finds the changed type and those inside it itself, all else where everybody does. */
    private static final class Loader extends URLClassLoader {
        private final String own;

        Loader(Path folder, String own) throws MalformedURLException {
            super(new URL[] {folder.toUri().toURL()}, PlantedType.class.getClassLoader());
            this.own = own;
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            if (!name.equals(own) && !name.startsWith(own + "$")) {
                return super.loadClass(name, resolve);
            }
            synchronized (getClassLoadingLock(name)) {
                Class<?> known = findLoadedClass(name);
                return known != null ? known : findClass(name);
            }
        }
    }
}
