package org.glintery.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.openide.util.NbBundle.Messages;

/** Warns of folders on which a database may come to harm. */
@Messages({
    "network-folder=This folder is on a network drive. A broken connection can harm the workshop; a folder of this computer is safer.",
    "synced-folder=This folder looks like one that is copied to other computers as it changes. Have the workshop open on one computer only, and keep backups elsewhere."
})
final class RemoteFolders {
    private static final List<String> NETWORK = List.of("nfs", "cifs", "smb", "sshfs", "webdav", "9p", "afs");
    private static final List<String> SYNCED =
            List.of("drive", "dropbox", "onedrive", "nextcloud", "syncthing", "icloud");

    private RemoteFolders() {}

    static List<String> warnings(Path folder) {
        try {
            String kind = Files.getFileStore(folder).type().toLowerCase(Locale.ROOT);
            if (NETWORK.stream().anyMatch(kind::contains)) {
                return List.of(Bundle.network_folder());
            }
        } catch (IOException e) {
            return List.of();
        }
        for (Path part : folder.toAbsolutePath()) {
            String name = part.toString().toLowerCase(Locale.ROOT);
            if (SYNCED.stream().anyMatch(name::contains)) {
                return List.of(Bundle.synced_folder());
            }
        }
        return List.of();
    }
}
