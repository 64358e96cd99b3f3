package org.glintery.records;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import org.glintery.api.Refusal;
import org.openide.util.NbBundle.Messages;

/** What to say when the disk would not. */
@Messages({
    "disk-full=The disk is full. Nothing was changed; make room and try again.",
    "disk-read-only=This folder can't be written to. Nothing was changed; choose another folder or ask for the right to write.",
    "# {0} - the system's words",
    "disk-failed=The disk could not be used ({0}). Nothing was changed.",
    "disk-full-closed=The disk became full in the middle of it. Make room, then close the workshop and open it again: all earlier changes are kept, and it shows whether this one is too.",
    "disk-read-only-closed=The folder could not be written to any more. Ask for the right to write, then close the workshop and open it again: all earlier changes are kept, and it shows whether this one is too.",
    "# {0} - the system's words",
    "disk-failed-closed=The disk could not be used any more ({0}). Close the workshop and open it again: all earlier changes are kept, and it shows whether this one is too."
})
final class DiskRefusals {
    private DiskRefusals() {}

    /** @param closed whether the database closed itself over it */
    static Refusal of(Throwable failure, boolean closed) {
        String words = "";
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            String message = String.valueOf(cause.getMessage());
            String lower = message.toLowerCase(Locale.ROOT);
            if (lower.contains("no space left") || lower.contains("not enough space") || lower.contains("disk full")) {
                return new Refusal("disk-full", closed ? Bundle.disk_full_closed() : Bundle.disk_full());
            }
            if (cause instanceof AccessDeniedException
                    || cause instanceof ReadOnlyFileSystemException
                    || lower.contains("permission denied")
                    || lower.contains("read only")
                    || lower.contains("read-only")
                    || lower.contains("access denied")) {
                return new Refusal("read-only", closed ? Bundle.disk_read_only_closed() : Bundle.disk_read_only());
            }
            if (cause instanceof IOException || words.isEmpty()) {
                words = message;
            }
        }
        int line = words.indexOf('\n');
        String first = line < 0 ? words : words.substring(0, line);
        return new Refusal("disk", closed ? Bundle.disk_failed_closed(first) : Bundle.disk_failed(first));
    }
}
