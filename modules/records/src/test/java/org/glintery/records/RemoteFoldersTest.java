package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder that other computers see too is known by its whole name, at any depth. */
class RemoteFoldersTest {
    @TempDir
    Path temp;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Dropbox",
                "Dropbox (Harbour club)",
                "OneDrive",
                "OneDrive - Harbour club",
                "Google Drive",
                "GoogleDrive-me@example.org",
                "My Drive",
                "Nextcloud",
                "iCloud Drive",
                "iCloudDrive",
                "Mobile Documents",
                "Syncthing",
                "Sync"
            })
    void warnsOfAFolderThatIsCopiedAsItChanges(String name) throws IOException {
        Path inside = Files.createDirectories(temp.resolve(name).resolve("crafts/workshop"));
        assertThat(RemoteFolders.warnings(inside)).containsExactly(Bundle.synced_folder());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Overdrive",
                "Drive test",
                "harddrive",
                "drive",
                "Slip drive",
                "Not in Dropbox",
                "synchronised swimming",
                "Dropboxes",
                "Driveway"
            })
    void saysNothingOfANameThatOnlyHoldsSuchAWord(String name) throws IOException {
        assertThat(RemoteFolders.warnings(
                        Files.createDirectories(temp.resolve(name).resolve("workshop"))))
                .isEmpty();
    }
}
