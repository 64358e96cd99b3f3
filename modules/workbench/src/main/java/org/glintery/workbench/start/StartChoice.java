package org.glintery.workbench.start;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;

/** What to do when the window has come up. */
sealed interface StartChoice {

    /** @param demo whether to fill it with the demo if it is new */
    record OpenFolder(Path folder, boolean demo) implements StartChoice {}

    /** @param suggested the folder offered */
    record AskFirst(Path suggested) implements StartChoice {}

    /**
     * @param named the folder named on the command line
     * @param demo whether the demo was asked for there
     * @param last the folder that was open last
     * @param isWorkshop whether a workshop is in a folder
     */
    static StartChoice choose(
            Optional<Path> named, boolean demo, Optional<Path> last, Path home, Predicate<Path> isWorkshop) {
        if (named.isPresent()) {
            return new OpenFolder(named.get(), demo);
        }
        if (last.isPresent() && isWorkshop.test(last.get())) {
            return new OpenFolder(last.get(), false);
        }
        return new AskFirst(home.resolve("Glintery"));
    }
}
