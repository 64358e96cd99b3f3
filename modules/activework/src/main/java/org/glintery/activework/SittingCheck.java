package org.glintery.activework;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.Refusal;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.charts.Grid;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Whether a sitting can have been as it is told. Reads documents alone; any thread. */
public final class SittingCheck {

    /** A sitting of more than a day is a typing error. */
    static final int MOST_MINUTES = 1_440;

    private final View view;

    public SittingCheck(View view) {
        this.view = view;
    }

    /** @param before the sitting that is corrected: what it told of sections may stay */
    public Optional<Refusal> refusal(Sitting sitting, Optional<Sitting> before) {
        return minutes(sitting.minutes().orElse(0))
                .or(() -> minutes(sitting.pausedMinutes()))
                .or(() -> zone(sitting.zone()))
                .or(() -> day(sitting))
                .or(() -> amounts(sitting.laid()))
                .or(() -> sections(sitting, before))
                .or(() -> symbols(sitting.piece(), sitting.laid().bySymbol()));
    }

    @Messages({
        "# {0} - the most",
        "# {1} - what was told",
        "SittingCheck.minutes=A sitting lasts from 0 to {0} minutes, not {1}. Nothing was changed."
    })
    private static Optional<Refusal> minutes(int minutes) {
        return minutes < 0 || minutes > MOST_MINUTES
                ? refused(
                        "minutes", Bundle.SittingCheck_minutes(Balance.grouped(MOST_MINUTES), Balance.grouped(minutes)))
                : Optional.empty();
    }

    @Messages({"# {0} - what was told", "SittingCheck.zone=There is no time zone called ''{0}''. Nothing was changed."})
    private static Optional<Refusal> zone(Optional<String> zone) {
        try {
            zone.ifPresent(ZoneId::of);
            return Optional.empty();
        } catch (DateTimeException e) {
            return refused("zone", Bundle.SittingCheck_zone(zone.orElseThrow()));
        }
    }

    @Messages({
        "# {0} - what was told",
        "SittingCheck.percent=Between 0 and 100 percent of a piece can be laid, not {0}. Nothing was changed.",
        "SittingCheck.sections=No sitting lays fewer than 0 sections. Nothing was changed."
    })
    private static Optional<Refusal> amounts(Laid laid) {
        double percent = laid.percent().orElse(0.0);
        if (!(percent >= 0 && percent <= 100)) {
            return refused("percent", Bundle.SittingCheck_percent(written(percent)));
        }
        if (laid.sections().orElse(0) < 0) {
            return refused("negative", Bundle.SittingCheck_sections());
        }
        if (percent == 0 && laid.percent().isPresent()
                || laid.sections().filter(n -> n == 0).isPresent()) {
            return nothing();
        }
        return laid.drills()
                .flatMap(SittingCheck::count)
                .or(() -> laid.bySymbol().values().stream()
                        .flatMap(count -> count(count).stream())
                        .findFirst())
                .or(() -> sum(laid));
    }

    /** Drills told beside their symbols are all of them: those of the symbols and maybe more. */
    @Messages({
        "# {0} - drills of all symbols",
        "# {1} - drills in all",
        "SittingCheck.sum=The symbols come to {0} drills, but {1} in all were told. Nothing was changed; say which is right."
    })
    private static Optional<Refusal> sum(Laid laid) {
        long bySymbol =
                laid.bySymbol().values().stream().mapToLong(Long::longValue).sum();
        return laid.drills()
                .filter(all -> all < bySymbol)
                .flatMap(all ->
                        refused("contrary", Bundle.SittingCheck_sum(Balance.grouped(bySymbol), Balance.grouped(all))));
    }

    @Messages(
            "SittingCheck.nothing=A sitting that says how much was laid says more than 0. Leave the amount out if you do not know it. Nothing was changed.")
    private static Optional<Refusal> nothing() {
        return refused("nothing-laid", Bundle.SittingCheck_nothing());
    }

    /** A sitting that the clock began has its day from there, maybe from another time zone. */
    @Messages({
        "# {0} - day",
        "SittingCheck.future=A sitting of {0} has not been yet. Check the date. Nothing was changed."
    })
    private Optional<Refusal> day(Sitting sitting) {
        Optional<LocalDate> first = sitting.day().earliest();
        return sitting.startedAt().isEmpty()
                        && first.filter(day -> day.isAfter(view.day())).isPresent()
                ? refused("future-day", Bundle.SittingCheck_future(sitting.day().words()))
                : Optional.empty();
    }

    @Messages({
        "# {0} - title",
        "SittingCheck.noSections={0} is not divided into sections, so they do not tell how far it is. Write on its page in how many sections it is worked, or say drills or percent. Nothing was changed."
    })
    private Optional<Refusal> sections(Sitting sitting, Optional<Sitting> before) {
        Optional<Integer> told = sitting.laid().sections();
        Optional<Piece> piece = view.find(Piece.TYPE, sitting.piece()).map(Stored::value);
        boolean divided = piece.flatMap(Piece::sections).filter(n -> n > 0).isPresent();
        return told.isEmpty()
                        || divided
                        || piece.isEmpty()
                        || before.filter(old -> told.equals(old.laid().sections()))
                                .isPresent()
                ? Optional.empty()
                : refused(
                        "no-sections",
                        Bundle.SittingCheck_noSections(piece.get().title()));
    }

    private static String written(double percent) {
        return percent == Math.rint(percent) ? Balance.grouped((long) percent) : String.valueOf(percent);
    }

    @Messages({
        "SittingCheck.drills=No sitting lays fewer than 0 drills. Nothing was changed.",
        "# {0} - how many",
        "# {1} - the most",
        "SittingCheck.tooMany={0} drills are more than anyone lays: no canvas takes more than {1}. Check the number. Nothing was changed."
    })
    private static Optional<Refusal> count(long drills) {
        if (drills < 0) {
            return refused("negative", Bundle.SittingCheck_drills());
        }
        if (drills == 0) {
            return nothing();
        }
        return drills > Grid.MOST_CELLS
                ? refused(
                        "too-many",
                        Bundle.SittingCheck_tooMany(Balance.grouped(drills), Balance.grouped(Grid.MOST_CELLS)))
                : Optional.empty();
    }

    private Optional<Refusal> symbols(UUID piece, Map<String, Long> bySymbol) {
        Map<String, Set<Drill>> drills = Legend.of(view, piece).lines().stream()
                .collect(Collectors.groupingBy(
                        LegendLine::symbol, Collectors.mapping(LegendLine::drill, Collectors.toSet())));
        return bySymbol.keySet().stream()
                .flatMap(symbol -> symbol(symbol, drills.getOrDefault(symbol, Set.of())).stream())
                .findFirst();
    }

    @Messages({
        "# {0} - symbol",
        "SittingCheck.noSymbol=The legend has no symbol ''{0}''. Nothing was changed.",
        "# {0} - symbol",
        "SittingCheck.severalDrills=The symbol ''{0}'' stands for several drills in the legend. Correct the legend first, or tell the drills without symbols. Nothing was changed."
    })
    private static Optional<Refusal> symbol(String symbol, Set<Drill> drills) {
        if (drills.isEmpty()) {
            return refused("unknown-symbol", Bundle.SittingCheck_noSymbol(symbol));
        }
        return drills.size() > 1
                ? refused("ambiguous-symbol", Bundle.SittingCheck_severalDrills(symbol))
                : Optional.empty();
    }

    private static Optional<Refusal> refused(String code, String text) {
        return Optional.of(new Refusal(code, text));
    }
}
