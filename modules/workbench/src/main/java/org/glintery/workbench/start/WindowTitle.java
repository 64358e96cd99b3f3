package org.glintery.workbench.start;

import java.nio.file.Path;
import java.util.Optional;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.WindowManager;

/** The title of the main window: the workshop's name, then ours. Event thread. */
final class WindowTitle {
    private WindowTitle() {}

    @Messages({"WindowTitle.none=Glintery", "# {0} - name of the workshop", "WindowTitle.workshop={0} - Glintery"})
    static void show(Optional<Path> folder) {
        WindowManager.getDefault()
                .getMainWindow()
                .setTitle(folder.map(f -> Bundle.WindowTitle_workshop(f.getFileName()))
                        .orElseGet(Bundle::WindowTitle_none));
    }
}
