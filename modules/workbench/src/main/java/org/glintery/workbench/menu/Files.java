package org.glintery.workbench.menu;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import org.openide.windows.WindowManager;

/** Asks for a file or a folder. Event thread; returns when the dialog is closed. */
final class Files {
    private Files() {}

    static Optional<Path> save(String title, String suggested) {
        JFileChooser chooser = chooser(title, JFileChooser.FILES_ONLY);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), suggested));
        return chosen(chooser, chooser.showSaveDialog(WindowManager.getDefault().getMainWindow()));
    }

    static Optional<Path> open(String title) {
        JFileChooser chooser = chooser(title, JFileChooser.FILES_ONLY);
        return chosen(chooser, chooser.showOpenDialog(WindowManager.getDefault().getMainWindow()));
    }

    static Optional<Path> folder(String title) {
        JFileChooser chooser = chooser(title, JFileChooser.DIRECTORIES_ONLY);
        return chosen(chooser, chooser.showDialog(WindowManager.getDefault().getMainWindow(), title));
    }

    private static JFileChooser chooser(String title, int mode) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(title);
        chooser.setFileSelectionMode(mode);
        return chooser;
    }

    private static Optional<Path> chosen(JFileChooser chooser, int answer) {
        return answer == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath().toAbsolutePath())
                : Optional.empty();
    }
}
