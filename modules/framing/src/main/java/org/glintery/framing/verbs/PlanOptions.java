package org.glintery.framing.verbs;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.FramePlan.Glazing.Material;
import org.glintery.api.framing.Moulding;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.WrittenDay;
import org.glintery.api.verb.WrittenDecimal;
import org.openide.util.NbBundle.Messages;

/** A frame plan as options, over the plan there was. Used once; not safe for several threads. */
final class PlanOptions {

    private static final Map<String, Decision> DECISIONS = decisions();

    private static final Map<String, Material> MATERIALS =
            Map.of("none", Material.NONE, "glass", Material.GLASS, "acrylic", Material.ACRYLIC);

    private final VerbCall call;
    private Optional<String> misunderstood = Optional.empty();

    PlanOptions(VerbCall call) {
        this.call = call;
    }

    @Messages({
        "PlanOptions.notFramed=it stays as it is",
        "PlanOptions.frame=in a frame of moulding, mitred",
        "PlanOptions.stretched=on stretcher bars",
        "PlanOptions.onBoard=on a board",
        "PlanOptions.hanger=between two laths",
        "PlanOptions.sleeve=in a sleeve",
        "PlanOptions.undecided=leaves it open again",
        "PlanOptions.width=what goes into the frame, across; the drilled area when not said",
        "PlanOptions.height=what goes into the frame, down",
        "PlanOptions.moulding=what the moulding is called",
        "PlanOptions.mouldingWidth=its face, from outer edge to sight edge",
        "PlanOptions.lip=how far its lip lies over the piece",
        "PlanOptions.rebate=how deep its rebate is",
        "PlanOptions.allowance=play in the rebate, in all a dimension; 3.2 when not said",
        "PlanOptions.kerf=what one saw cut takes; 3 when not said",
        "PlanOptions.glazing=none, glass or acrylic",
        "PlanOptions.glazingThickness=how thick it is; 2 when not said",
        "PlanOptions.livesAt=where the piece is or will be",
        "PlanOptions.place=the keeping place where it is, by name or id",
        "PlanOptions.on=when it was decided",
        "PlanOptions.notes=anything else"
    })
    static List<Param> params() {
        return List.of(
                Param.flag("not-framed", Bundle.PlanOptions_notFramed()),
                Param.flag("frame", Bundle.PlanOptions_frame()),
                Param.flag("stretched", Bundle.PlanOptions_stretched()),
                Param.flag("on-board", Bundle.PlanOptions_onBoard()),
                Param.flag("hanger", Bundle.PlanOptions_hanger()),
                Param.flag("sleeve", Bundle.PlanOptions_sleeve()),
                Param.flag("undecided", Bundle.PlanOptions_undecided()),
                Param.option("width", "MM", Bundle.PlanOptions_width()),
                Param.option("height", "MM", Bundle.PlanOptions_height()),
                Param.option("moulding", "NAME", Bundle.PlanOptions_moulding()),
                Param.option("moulding-width", "MM", Bundle.PlanOptions_mouldingWidth()),
                Param.option("lip", "MM", Bundle.PlanOptions_lip()),
                Param.option("rebate", "MM", Bundle.PlanOptions_rebate()),
                Param.option("allowance", "MM", Bundle.PlanOptions_allowance()),
                Param.option("kerf", "MM", Bundle.PlanOptions_kerf()),
                Param.option("glazing", "WORD", Bundle.PlanOptions_glazing()),
                Param.option("glazing-thickness", "MM", Bundle.PlanOptions_glazingThickness()),
                Param.option("lives-at", "TEXT", Bundle.PlanOptions_livesAt()),
                Param.option("place", "PLACE", Bundle.PlanOptions_place()),
                Param.option("on", "DATE", Bundle.PlanOptions_on()),
                Param.option("notes", "TEXT", Bundle.PlanOptions_notes()));
    }

    /** What was first not understood; what {@link #over} gave is then not to be used. */
    Optional<String> misunderstood() {
        return misunderstood;
    }

    /** Whether any option says something about a plan. */
    boolean saySomething() {
        return params().stream()
                .anyMatch(p -> call.flag(p.name()) || call.value(p.name()).isPresent());
    }

    /** @param place the keeping place that {@code --place} named */
    FramePlan over(FramePlan before, Optional<UUID> place) {
        return new FramePlan(
                decision(before.decision()),
                millimetres("width").or(before::artworkWidthMm),
                millimetres("height").or(before::artworkHeightMm),
                moulding(before.moulding()),
                millimetres("allowance").orElse(before.allowanceMm()),
                millimetres("kerf").orElse(before.kerfMm()),
                glazing(before.glazing()),
                call.value("lives-at").map(String::strip).orElse(before.livesAt()),
                place.or(before::place),
                date(before.decidedOn()),
                call.value("notes").map(String::strip).orElse(before.notes()));
    }

    private static Map<String, Decision> decisions() {
        Map<String, Decision> decisions = new LinkedHashMap<>();
        decisions.put("not-framed", Decision.NOT_FRAMED);
        decisions.put("frame", Decision.FRAMED);
        decisions.put("stretched", Decision.STRETCHED);
        decisions.put("on-board", Decision.ON_BOARD);
        decisions.put("hanger", Decision.HANGER);
        decisions.put("sleeve", Decision.SLEEVE);
        decisions.put("undecided", Decision.NOT_DECIDED);
        return decisions;
    }

    @Messages({
        "# {0} - the first option",
        "# {1} - the second",
        "PlanOptions.severalDecisions=One decision at a time: --{0} or --{1}."
    })
    private Decision decision(Decision before) {
        List<String> said = DECISIONS.keySet().stream().filter(call::flag).toList();
        if (said.size() > 1) {
            wrong(Bundle.PlanOptions_severalDecisions(said.get(0), said.get(1)));
        }
        Decision decision = said.isEmpty() ? before : DECISIONS.get(said.get(0));
        FittingWords.trouble(call, said.stream().findFirst(), decision).ifPresent(this::wrong);
        return decision;
    }

    /** A moulding begins with its width; a lip that is not told covers nothing. */
    @Messages("PlanOptions.noMouldingWidth=A moulding needs its width: --moulding-width MM.")
    private Optional<Moulding> moulding(Optional<Moulding> before) {
        Optional<String> name = call.value("moulding").map(String::strip);
        Optional<Double> width = millimetres("moulding-width").or(() -> before.map(Moulding::widthMm));
        Optional<Double> lip = millimetres("lip").or(() -> before.map(Moulding::lipMm));
        Optional<Double> rebate = millimetres("rebate").or(() -> before.map(Moulding::rebateDepthMm));
        if (width.isEmpty()) {
            if (lip.isPresent() || rebate.isPresent() || name.isPresent()) {
                wrong(Bundle.PlanOptions_noMouldingWidth());
            }
            return Optional.empty();
        }
        return Optional.of(new Moulding(
                name.or(() -> before.map(Moulding::name)).orElse(""),
                width.get(),
                lip.orElse(0.0),
                rebate.orElse(0.0)));
    }

    /** Another material is as thick as is usual, if nothing else is said. */
    @Messages({
        "# {0} - what was written",
        "PlanOptions.noGlazing=--glazing is none, glass or acrylic, not ''{0}''.",
        "PlanOptions.noThickness=--glazing-thickness is for glass or acrylic, and more than 0."
    })
    private Glazing glazing(Glazing before) {
        Optional<String> word = call.value("glazing").map(String::strip);
        if (word.filter(w -> !MATERIALS.containsKey(w)).isPresent()) {
            wrong(Bundle.PlanOptions_noGlazing(word.get()));
        }
        Material material =
                word.map(w -> MATERIALS.getOrDefault(w, before.material())).orElse(before.material());
        Optional<Double> thicknessMm = millimetres("glazing-thickness");
        if (thicknessMm.isPresent() && (material == Material.NONE || thicknessMm.get() == 0)) {
            wrong(Bundle.PlanOptions_noThickness());
            return before;
        }
        Glazing glazing = material == before.material() ? before : Glazing.usual(material);
        return thicknessMm.map(mm -> new Glazing(material, mm)).orElse(glazing);
    }

    @Messages({
        "# {0} - option",
        "# {1} - what was written",
        "PlanOptions.noMillimetres=--{0} is a number of millimetres, not ''{1}''."
    })
    private Optional<Double> millimetres(String option) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> number =
                WrittenDecimal.of(written.get()).map(BigDecimal::doubleValue).filter(mm -> mm >= 0);
        if (number.isEmpty()) {
            wrong(WrittenDecimal.doubt(option, written.get())
                    .orElseGet(() -> Bundle.PlanOptions_noMillimetres(option, written.get())));
        }
        return number;
    }

    @Messages({
        "# {0} - what was written",
        "PlanOptions.noDate=--on ''{0}'' is not a date. Write it like 2025-03-31 or ''about October 2024''."
    })
    private Optional<About> date(Optional<About> before) {
        Optional<String> written = call.value("on");
        Optional<About> said = written.flatMap(words -> WrittenDay.of(call, words));
        if (written.isPresent() && said.isEmpty()) {
            wrong(Bundle.PlanOptions_noDate(written.get()));
        }
        return said.or(() -> before);
    }

    private void wrong(String text) {
        misunderstood = misunderstood.or(() -> Optional.of(text));
    }
}
