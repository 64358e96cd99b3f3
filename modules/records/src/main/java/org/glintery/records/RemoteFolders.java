package org.glintery.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.openide.util.NbBundle.Messages;

/** Warns of folders on which a database may come to harm. */
@Messages({
    "network-folder=This folder is on a network drive. A broken connection can harm the workshop; a folder of this computer is safer.",
    "synced-folder=This folder looks like one that is copied to other computers as it changes. Have the workshop open on one computer only, and keep backups elsewhere."
})
final class RemoteFolders {
    private static final List<String> NETWORK = List.of("nfs", "cifs", "smb", "sshfs", "webdav", "9p", "afs");
    /** Folders as their programs name them, some with more behind it, such as "OneDrive - Club" or "Dropbox (Club)". */
    private static final Pattern SYNCED = Pattern.compile(
            "(google ?drive|my drive|googledrive-.+|dropbox|onedrive|nextcloud|owncloud|syncthing|sync|icloud ?drive|icloud"
                    + "|iclouddrive|mobile documents|com~apple~clouddocs)( [-(].*)?");

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
            if (SYNCED.matcher(part.toString().toLowerCase(Locale.ROOT)).matches()) {
                return List.of(Bundle.synced_folder());
            }
        }
        return List.of();
    }
}
