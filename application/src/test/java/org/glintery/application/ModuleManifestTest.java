package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What each module shows to others, as the shipped manifests say it to the module system. */
class ModuleManifestTest {

    private static final String NEEDED = "OpenIDE-Module-Module-Dependencies";

    /** Two stars stand for the packages below as well. */
    private static final Map<String, Set<String>> EXPORTS = Map.of(
            "api",
            Set.of(
                    "org.glintery.api.*",
                    "org.glintery.api.activework.*",
                    "org.glintery.api.charts.*",
                    "org.glintery.api.disk.*",
                    "org.glintery.api.exchange.*",
                    "org.glintery.api.finishes.*",
                    "org.glintery.api.framing.*",
                    "org.glintery.api.kinds.*",
                    "org.glintery.api.ledger.*",
                    "org.glintery.api.stash.*",
                    "org.glintery.api.storage.*",
                    "org.glintery.api.time.*",
                    "org.glintery.api.verb.*",
                    "org.glintery.api.workshop.*"),
            "colour",
            Set.of("org.glintery.colour.*"),
            "planning",
            Set.of("org.glintery.planning.*", "org.glintery.planning.clearing.*", "org.glintery.planning.transport.*"),
            "workbench",
            Set.of("org.glintery.workbench.parts.*", "org.glintery.workbench.sheet.*", "org.glintery.workbench.spi.*"));

    @Test
    void exportsTheAgreedPackagesAndNoOther() {
        for (String module : ScannedModules.LEAST_CLASSES.keySet()) {
            assertThat(listed(ScannedModules.manifest(module), "OpenIDE-Module-Public-Packages"))
                    .as("what %s exports", module)
                    .isEqualTo(EXPORTS.getOrDefault(module, Set.of("-")));
        }
    }

    @Test
    void hasNoFriends_andNeedsNoParticularBuildOfAnother() {
        Set<String> needed = new HashSet<>();
        for (String module : ScannedModules.LEAST_CLASSES.keySet()) {
            Attributes manifest = ScannedModules.manifest(module);
            assertThat(manifest.getValue("OpenIDE-Module-Friends"))
                    .as("friends of %s", module)
                    .isNull();
            // api needs nobody and has no such line
            if (manifest.getValue(NEEDED) != null) {
                needed.addAll(listed(manifest, NEEDED));
            }
        }
        assertThat(needed).anyMatch(one -> one.startsWith("org.glintery.api")).noneMatch(one -> one.contains("="));
    }

    private static Set<String> listed(Attributes manifest, String name) {
        String value = manifest.getValue(name);
        assertThat(value).as(name).isNotNull();
        return Arrays.stream(value.split(",")).map(String::strip).collect(Collectors.toSet());
    }
}
