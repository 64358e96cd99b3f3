package org.glintery.charts.verbs;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code chart lay}: marks rows, columns or a symbol of a kept chart as laid. */
@ServiceProvider(service = Verb.class)
@Messages({
    "ChartLayVerb.summary=Mark cells of a kept chart as laid, or as not laid",
    "ChartLayVerb.rows=rows from the top, such as 12 or 1-40; all when not said",
    "ChartLayVerb.columns=columns from the left; all when not said",
    "ChartLayVerb.symbol=only cells with this symbol",
    "ChartLayVerb.not=mark them as not laid",
    "# {0} - option",
    "# {1} - what was written",
    "ChartLayVerb.range=--{0} takes a number such as 12 or two such as 1-40, not ''{1}''.",
    "# {0} - symbol",
    "ChartLayVerb.noSymbol=The chart has no symbol ''{0}''."
})
public final class ChartLayVerb implements Verb {

    private static final Pattern RANGE = Pattern.compile("(\\d{1,7})(?:-(\\d{1,7}))?");

    @Override
    public String name() {
        return "chart lay";
    }

    @Override
    public String summary() {
        return Bundle.ChartLayVerb_summary();
    }

    @Override
    public String feature() {
        return "charts";
    }

    @Override
    public List<Param> params() {
        return List.of(
                Param.positional("design", "CHART", Bundle.ChartShowVerb_design()),
                Param.option("rows", "FROM-TO", Bundle.ChartLayVerb_rows()),
                Param.option("columns", "FROM-TO", Bundle.ChartLayVerb_columns()),
                Param.option("symbol", "SYMBOL", Bundle.ChartLayVerb_symbol()),
                Param.flag("not", Bundle.ChartLayVerb_not()));
    }

    @Override
    public Class<? extends Record> answers() {
        return DesignAnswer.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        for (String option : List.of("rows", "columns")) {
            Optional<String> written =
                    call.value(option).filter(text -> range(text, 1).isEmpty());
            if (written.isPresent()) {
                return VerbResult.wrongUsage(Bundle.ChartLayVerb_range(option, written.get()));
            }
        }
        return DesignsOfCall.named(call, design -> lay(call, design));
    }

    private static VerbResult lay(VerbCall call, Stored<Design> design) {
        Optional<String> symbol = call.value("symbol");
        BitSet lines = new BitSet();
        for (int line = 0; line < design.value().lines().size(); line++) {
            String its = design.value().lines().get(line).symbol();
            lines.set(line, symbol.isEmpty() || symbol.get().equals(its));
        }
        if (symbol.isPresent() && lines.isEmpty()) {
            return VerbResult.wrongUsage(Bundle.ChartLayVerb_noSymbol(symbol.get()));
        }
        var view = call.workshop().view();
        DesignCells cells = DesignCells.of(view, design.id()).orElseThrow();
        BitSet meant = new BitSet();
        Range rows = range(call.value("rows").orElse("1-" + cells.rows()), cells.rows())
                .orElseThrow();
        Range columns = range(call.value("columns").orElse("1-" + cells.columns()), cells.columns())
                .orElseThrow();
        for (int row = rows.from(); row < rows.to(); row++) {
            for (int column = columns.from(); column < columns.to(); column++) {
                int cell = row * cells.columns() + column;
                meant.set(cell, cells.line(cell) >= 0 && lines.get(cells.line(cell)));
            }
        }
        return VerbSteps.apply(call, DesignsOfCall.of(call).mark(view, design.id(), meant, !call.flag("not")), () -> {
            DesignAnswer answer = DesignAnswer.of(call.workshop().view(), DesignsOfCall.of(call), design);
            return VerbResult.said(answer, answer.text());
        });
    }

    /** From the first, counted from 0, to the one behind the last. */
    private record Range(int from, int to) {}

    /** @param most there are; what lies beyond is left out */
    private static Optional<Range> range(String text, int most) {
        Matcher matcher = RANGE.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int first = Integer.parseInt(matcher.group(1));
        int last = matcher.group(2) == null ? first : Integer.parseInt(matcher.group(2));
        return Optional.of(new Range(Math.max(0, first - 1), Math.min(most, last)));
    }
}
