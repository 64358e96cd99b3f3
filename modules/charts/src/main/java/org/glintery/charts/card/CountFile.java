package org.glintery.charts.card;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.MalformedException;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.verb.WrittenDecimal;
import org.openide.util.NbBundle.Messages;

/** Reads from a table how many drills of each code there are: the columns code and count, others are passed over. */
@Messages({
    "CountFile.noColumns=The list of what is in the house needs the columns code and count with a heading. Nothing was made.",
    "# {0} - most megabytes",
    "CountFile.tooLarge=The list of what is in the house is larger than {0} megabytes. Nothing was read.",
    "# {0} - what is wrong",
    "CountFile.malformed=The list of what is in the house can''t be read: {0}. Nothing was made.",
    "# {0} - code",
    "# {1} - what stands there",
    "CountFile.noCount={0}: ''{1}'' is no count; it is taken as none there.",
    "# {0} - how many",
    "CountFile.moreWarnings=And {0} more of this kind."
})
public final class CountFile {

    private static final int MOST_MEGABYTES = 8;
    private static final int MOST_WARNINGS = 20;
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000_000L);
    private static final List<String> COUNT = List.of("count", "drills", "amount", "quantity");

    private CountFile() {}

    /** By code, in the order of the file; the counts of a code that is there twice are added up. */
    public static Result<Map<String, Long>> read(byte[] file) {
        if (file.length > MOST_MEGABYTES << 20) {
            return Result.refused("counts-too-large", Bundle.CountFile_tooLarge(String.valueOf(MOST_MEGABYTES)));
        }
        try {
            return counts(CsvTable.of(CardText.of(file)));
        } catch (MalformedException e) {
            return Result.refused("counts-malformed", Bundle.CountFile_malformed(e.getMessage()));
        }
    }

    private static Result<Map<String, Long>> counts(CsvTable table) {
        int code = table.column(CsvCard.CODE);
        int count = table.column(COUNT);
        if (code < 0 || count < 0) {
            return Result.refused("counts-without-columns", Bundle.CountFile_noColumns());
        }
        Map<String, Long> counts = new LinkedHashMap<>();
        List<String> warnings = new ArrayList<>();
        for (int line = 1; line < table.lines().size(); line++) {
            String its = table.cell(line, code).strip();
            String written = table.cell(line, count).strip();
            Optional<Long> read = whole(written);
            if (!its.isEmpty() && read.isPresent()) {
                counts.merge(its, read.get(), Long::sum);
            } else if (!its.isEmpty() && !written.isEmpty()) {
                warnings.add(Bundle.CountFile_noCount(its, written));
            }
        }
        return Result.ok(counts, few(warnings));
    }

    private static Optional<Long> whole(String written) {
        return WrittenDecimal.of(written)
                .filter(number -> number.signum() >= 0 && number.compareTo(MOST) <= 0)
                .filter(number -> number.stripTrailingZeros().scale() <= 0)
                .map(BigDecimal::longValueExact);
    }

    private static List<String> few(List<String> warnings) {
        if (warnings.size() <= MOST_WARNINGS) {
            return warnings;
        }
        List<String> few = new ArrayList<>(warnings.subList(0, MOST_WARNINGS));
        few.add(Bundle.CountFile_moreWarnings(Balance.grouped(warnings.size() - MOST_WARNINGS)));
        return few;
    }
}
