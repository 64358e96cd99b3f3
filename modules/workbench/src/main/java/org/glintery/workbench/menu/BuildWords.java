package org.glintery.workbench.menu;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.glintery.api.time.About;
import org.openide.modules.ModuleInfo;
import org.openide.modules.Modules;
import org.openide.util.NbBundle.Messages;

/** Which build this is, in words, from what the build wrote into the module. */
final class BuildWords {
    private static final int DATE_DIGITS = 8;

    private BuildWords() {}

    /** Of the build that runs now; "own build" where there are no modules, as in a test. Any thread. */
    @Messages("BuildWords.own=A build of your own")
    static String now() {
        return Optional.ofNullable(Modules.getDefault().ownerOf(BuildWords.class))
                .map(BuildWords::of)
                .orElseGet(Bundle::BuildWords_own);
    }

    private static String of(ModuleInfo module) {
        return of(String.valueOf(module.getSpecificationVersion()), String.valueOf(module.getBuildVersion()));
    }

    /** @param build year, month and day in eight digits, and whatever comes after them; else no day is told */
    @Messages({
        "# {0} - version",
        "BuildWords.version=Version {0}",
        "# {0} - version",
        "# {1} - day",
        "BuildWords.versionOf=Version {0}, built on {1}"
    })
    static String of(String version, String build) {
        return day(build)
                .map(day -> Bundle.BuildWords_versionOf(version, About.on(day).words()))
                .orElseGet(() -> Bundle.BuildWords_version(version));
    }

    private static Optional<LocalDate> day(String build) {
        try {
            return build.length() < DATE_DIGITS
                    ? Optional.empty()
                    : Optional.of(LocalDate.parse(build.substring(0, DATE_DIGITS), DateTimeFormatter.BASIC_ISO_DATE));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
