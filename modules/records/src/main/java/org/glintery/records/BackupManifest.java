package org.glintery.records;

import java.util.List;
import java.util.Optional;
import org.glintery.api.workshop.PictureKind;

/**
 * What a backup holds, so that restoring can tell whether it is whole.
 *
 * @param schema the database's schema version
 * @param lost the hashes of pictures that were not whole any more and are not in it
 */
record BackupManifest(String format, int version, int schema, List<Part> parts, Optional<List<String>> lost) {
    static final String FORMAT = "glintery-backup";
    static final int VERSION = 1;
    static final String NAME = "manifest.json";
    static final String DATABASE = "database/" + Database.FILE;
    static final String EXPORT = "workshop.json";
    static final String README = "README.txt";
    static final String PICTURES = "pictures/";

    /** A picture's name: that of its bytes, with an ending that other programs know it by. */
    static String picture(KeptBlob blob) {
        return PICTURES + blob.hash() + "." + PictureKind.extensionOf(blob.mediaType());
    }

    /** One file of the backup. @param sha256 lower-case hexadecimal */
    record Part(String name, long bytes, String sha256) {}
}
