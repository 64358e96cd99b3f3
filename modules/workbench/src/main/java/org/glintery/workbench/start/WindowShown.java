package org.glintery.workbench.start;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.Optional;
import org.glintery.workbench.looks.Looks;
import org.openide.windows.OnShowing;

/**
 * Runs when the main window has come up; a headless run has none and starts nothing. {@code -J-Dglintery.workshop=DIR}
 * opens that folder, {@code -J-Dglintery.demo=true} fills it with the demo first when it is empty.
 */
@OnShowing
public final class WindowShown implements Runnable {
    @Override
    public void run() {
        if (GraphicsEnvironment.isHeadless()) {
            return;
        }
        Looks.restore();
        WindowTitle.show(Optional.empty());
        Optional<Path> named = Optional.ofNullable(System.getProperty("glintery.workshop"))
                .filter(text -> !text.isBlank())
                .map(Path::of);
        Opening.usual().begin(named.map(Path::toAbsolutePath), Boolean.getBoolean("glintery.demo"), home());
    }

    private static Path home() {
        return Path.of(System.getProperty("user.home"));
    }
}
