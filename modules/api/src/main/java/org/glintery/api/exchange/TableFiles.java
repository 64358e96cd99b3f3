package org.glintery.api.exchange;

import java.nio.file.Path;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop.CopyReport;

/** A whole workshop as tables: one zip of CSV files, one a kind of document, and the pictures. Disk; not on the event thread. */
@Preview(since = "1.0")
public interface TableFiles {

    /** Pictures go along byte for byte. Refused if the file exists or can't be written. */
    Result<CopyReport> exportTables(Path zip);

    /**
     * Brings tables into the workshop, which must be empty; gives an equal workshop. One change. Refused with
     * {@code not-empty}, {@code unreadable}, {@code not-tables}, {@code unsafe-names}, {@code too-large} or {@code damaged}.
     */
    Result<CopyReport> importTables(Path zip);
}
