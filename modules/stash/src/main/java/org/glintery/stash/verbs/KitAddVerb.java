package org.glintery.stash.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader.BadRow;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Source;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code kit add}: shelves a kit from a legend, a kit file or what the options say. */
@ServiceProvider(service = Verb.class)
public final class KitAddVerb implements Verb {

    private static final int MOST_ROWS_NAMED = 20;

    @Override
    public String name() {
        return "kit add";
    }

    @Override
    @Messages("KitAddVerb.summary=Shelve a kit: from a legend as CSV, from a kit as JSON, or by its title")
    public String summary() {
        return Bundle.KitAddVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages({
        "KitAddVerb.file=a kit as .json, or a legend",
        "KitAddVerb.legend=its legend",
        "KitAddVerb.jsonFile=a whole kit, in the form that 'kit schema' prints",
        "KitAddVerb.card=the colour card of the legend's codes; your own when not said",
        "KitAddVerb.cover=a picture of it",
        "KitAddVerb.preview=only show what was understood",
        "# {0} - usual number",
        "KitAddVerb.bagSize=drills in one bag of this source; {0} when not said"
    })
    public List<Param> params() {
        List<Param> params = new ArrayList<>(List.of(
                Param.optionalPositional("file", "FILE", Bundle.KitAddVerb_file()),
                Param.option("legend", "FILE.csv", Bundle.KitAddVerb_legend()),
                Param.option("json-file", "FILE.json", Bundle.KitAddVerb_jsonFile()),
                Param.option("card", "CARD", Bundle.KitAddVerb_card()),
                Param.option("bag-size", "N", Bundle.KitAddVerb_bagSize(Balance.grouped(Source.USUAL_DRILLS_PER_BAG))),
                Param.option("cover", "PICTURE", Bundle.KitAddVerb_cover()),
                Param.flag("preview", Bundle.KitAddVerb_preview())));
        params.addAll(KitOptions.PARAMS);
        return params;
    }

    @Override
    public Class<? extends Record> answers() {
        return KitAdded.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbEnd.of(KitToAdd.bagSize(call)
                .then(size -> KitToAdd.from(call).then(adding -> Result.ok(add(call, adding, size)))));
    }

    private static VerbResult add(VerbCall call, KitToAdd adding, Optional<Integer> bagSize) {
        List<BadRow> badRows = adding.reading().map(Reading::badRows).orElse(List.of());
        Result<ChangeSet> change = StashOfCall.of(call).shelve(call.workshop().view(), adding.kit());
        List<String> warnings = warnings(adding, change);
        if (call.flag("preview")) {
            boolean possible = badRows.isEmpty() && change instanceof Result.Ok<ChangeSet>;
            KitAdded preview = KitAdded.of(
                    adding, possible ? KitAdded.Outcome.WOULD_BE_SHELVED : KitAdded.Outcome.WOULD_BE_REFUSED, warnings);
            return VerbResult.said(preview, preview.text());
        }
        if (!badRows.isEmpty()) {
            return VerbResult.refused("bad-rows", badRowsText(badRows));
        }
        Result<ChangeSet> withSource =
                change.then(made -> Result.ok(made.join(source(call, bagSize, adding.making()))));
        return VerbSteps.apply(call, withSource, () -> {
            saidByTheFile(adding, change).forEach(call::say);
            KitAdded added = KitAdded.of(adding, KitAdded.Outcome.SHELVED, warnings);
            return VerbResult.said(added, added.text());
        });
    }

    /** What the file's reader warned of and the change does not say again. */
    private static List<String> saidByTheFile(KitToAdd adding, Result<ChangeSet> change) {
        List<String> again = change instanceof Result.Ok<ChangeSet> ok ? ok.warnings() : List.of();
        return adding.reading().map(Reading::warnings).orElse(List.of()).stream()
                .filter(text -> !again.contains(text))
                .toList();
    }

    private static List<String> warnings(KitToAdd adding, Result<ChangeSet> change) {
        List<String> warnings =
                new ArrayList<>(adding.reading().map(Reading::warnings).orElse(List.of()));
        if (change instanceof Result.Ok<ChangeSet> ok) {
            ok.warnings().stream().filter(text -> !warnings.contains(text)).forEach(warnings::add);
        } else {
            warnings.add(((Result.Refused<ChangeSet>) change).refusal().text());
        }
        return warnings;
    }

    /** The bag size that was told is kept with its source, for the next kit; and the place is made. */
    @Messages("KitAddVerb.keepBagSize=Keep the bag size")
    private static ChangeSet source(VerbCall call, Optional<Integer> bagSize, List<Operation> making) {
        ChangeSet.Builder change =
                ChangeSet.named(Bundle.KitAddVerb_keepBagSize()).addAll(making);
        Optional<String> name = call.value("source").filter(source -> !source.isBlank());
        if (name.isPresent() && bagSize.isPresent()) {
            change.put(Source.TYPE, Source.idOf(name.get()), new Source(name.get(), bagSize.get()));
        }
        return change.build();
    }

    @Messages({
        "# {0} - number of the line",
        "# {1} - what is wrong",
        "KitAddVerb.badRow=line {0}: {1}",
        "# {0} - how many",
        "# {1} - how many in words",
        "# {2} - lines and what is wrong",
        "KitAddVerb.badRows=Nothing was imported, because of {0,choice,1#1 row|1<{1} rows}: {2}.",
        "# {0} - how many in words",
        "# {1} - lines and what is wrong",
        "# {2} - how many more",
        "KitAddVerb.manyBadRows=Nothing was imported, because of {0} rows: {1}; and {2} more."
    })
    private static String badRowsText(List<BadRow> rows) {
        String named = rows.stream()
                .limit(MOST_ROWS_NAMED)
                .map(row -> Bundle.KitAddVerb_badRow(String.valueOf(row.line()), row.reason()))
                .collect(Collectors.joining("; "));
        String count = Balance.grouped(rows.size());
        return rows.size() > MOST_ROWS_NAMED
                ? Bundle.KitAddVerb_manyBadRows(count, named, Balance.grouped(rows.size() - MOST_ROWS_NAMED))
                : Bundle.KitAddVerb_badRows(rows.size(), count, named);
    }
}
