package org.glintery.records;

import java.util.List;

/**
 * What a backup holds, so that restoring can tell whether it is whole.
 *
 * @param schema the database's schema version
 */
record BackupManifest(String format, int version, int schema, List<Part> parts) {
    static final String FORMAT = "glintery-backup";
    static final int VERSION = 1;
    static final String NAME = "manifest.json";
    static final String DATABASE = "database/" + Database.FILE;
    static final String EXPORT = "workshop.json";
    static final String README = "README.txt";
    static final String PICTURES = "pictures/";

    /** One file of the backup. @param sha256 lower-case hexadecimal */
    record Part(String name, long bytes, String sha256) {}
}
