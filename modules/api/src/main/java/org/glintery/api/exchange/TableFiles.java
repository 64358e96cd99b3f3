package org.glintery.api.exchange;

import java.nio.file.Path;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop.CopyReport;

/** A whole workshop as tables: one zip of CSV files, one a kind of document, and the pictures. Disk. */
@Preview(since = "1.0")
public interface TableFiles {
    Result<CopyReport> exportTables(Path zip);

    /** Brings tables into the workshop, which must be empty; gives an equal workshop. One change. */
    Result<CopyReport> importTables(Path zip);
}
