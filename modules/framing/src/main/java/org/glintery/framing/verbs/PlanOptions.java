package org.glintery.framing.verbs;

import java.time.LocalDate;
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

/** A frame plan as options, over the plan there was. Used once; not safe for several threads. */
final class PlanOptions {

    static final List<Param> PARAMS = List.of(
            Param.flag("not-framed", "it stays as it is"),
            Param.flag("frame", "in a frame of moulding, mitred"),
            Param.flag("stretched", "on stretcher bars"),
            Param.flag("on-board", "on a board"),
            Param.flag("hanger", "between two laths"),
            Param.flag("sleeve", "in a sleeve"),
            Param.flag("undecided", "leaves it open again"),
            Param.option("width", "MM", "what goes into the frame, across; the drilled area when not said"),
            Param.option("height", "MM", "what goes into the frame, down"),
            Param.option("moulding", "NAME", "what the moulding is called"),
            Param.option("moulding-width", "MM", "its face, from outer edge to sight edge"),
            Param.option("lip", "MM", "how far its lip lies over the piece"),
            Param.option("rebate", "MM", "how deep its rebate is"),
            Param.option("allowance", "MM", "play in the rebate, in all a dimension; 3.2 when not said"),
            Param.option("kerf", "MM", "what one saw cut takes; 3 when not said"),
            Param.option("glazing", "WORD", "none, glass or acrylic"),
            Param.option("glazing-thickness", "MM", "how thick it is; 2 when not said"),
            Param.option("lives-at", "TEXT", "where the piece is or will be"),
            Param.option("place", "PLACE", "the keeping place where it is, by name or id"),
            Param.option("on", "DATE", "when it was decided"),
            Param.option("notes", "TEXT", "anything else"));

    private static final Map<String, Decision> DECISIONS = decisions();

    private static final Map<String, Material> MATERIALS =
            Map.of("none", Material.NONE, "glass", Material.GLASS, "acrylic", Material.ACRYLIC);

    private final VerbCall call;
    private Optional<String> misunderstood = Optional.empty();

    PlanOptions(VerbCall call) {
        this.call = call;
    }

    /** What was first not understood; what {@link #over} gave is then not to be used. */
    Optional<String> misunderstood() {
        return misunderstood;
    }

    /** Whether any option says something about a plan. */
    boolean saySomething() {
        return PARAMS.stream()
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

    private Decision decision(Decision before) {
        List<String> said = DECISIONS.keySet().stream().filter(call::flag).toList();
        if (said.size() > 1) {
            wrong("One decision at a time: --" + String.join(" or --", said) + ".");
        }
        return said.isEmpty() ? before : DECISIONS.get(said.get(0));
    }

    /** A moulding begins with its width; a lip that is not told covers nothing. */
    private Optional<Moulding> moulding(Optional<Moulding> before) {
        Optional<String> name = call.value("moulding").map(String::strip);
        Optional<Double> width = millimetres("moulding-width").or(() -> before.map(Moulding::widthMm));
        Optional<Double> lip = millimetres("lip").or(() -> before.map(Moulding::lipMm));
        Optional<Double> rebate = millimetres("rebate").or(() -> before.map(Moulding::rebateDepthMm));
        if (width.isEmpty()) {
            if (lip.isPresent() || rebate.isPresent() || name.isPresent()) {
                wrong("A moulding needs its width: --moulding-width MM.");
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
    private Glazing glazing(Glazing before) {
        Optional<String> word = call.value("glazing").map(String::strip);
        if (word.filter(w -> !MATERIALS.containsKey(w)).isPresent()) {
            wrong("--glazing is none, glass or acrylic, not '" + word.get() + "'.");
        }
        Material material =
                word.map(w -> MATERIALS.getOrDefault(w, before.material())).orElse(before.material());
        Optional<Double> thicknessMm = millimetres("glazing-thickness");
        if (thicknessMm.isPresent() && (material == Material.NONE || thicknessMm.get() == 0)) {
            wrong("--glazing-thickness is for glass or acrylic, and more than 0.");
            return before;
        }
        Glazing glazing = material == before.material() ? before : Glazing.usual(material);
        return thicknessMm.map(mm -> new Glazing(material, mm)).orElse(glazing);
    }

    private Optional<Double> millimetres(String option) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Optional.empty();
        }
        try {
            double number = Double.parseDouble(written.get().strip().replace(',', '.'));
            if (number >= 0 && Double.isFinite(number)) {
                return Optional.of(number);
            }
        } catch (NumberFormatException e) {
            // told below, as for a number that is out of range
        }
        wrong("--" + option + " is a number of millimetres, not '" + written.get() + "'.");
        return Optional.empty();
    }

    private Optional<About> date(Optional<About> before) {
        Optional<String> written = call.value("on");
        Optional<About> said = written.flatMap(words -> About.said(words, LocalDate.now(call.clock())));
        if (written.isPresent() && said.isEmpty()) {
            wrong("--on '" + written.get() + "' is not a date. Write it like 2025-03-31 or 'about October 2024'.");
        }
        return said.or(() -> before);
    }

    private void wrong(String text) {
        misunderstood = misunderstood.or(() -> Optional.of(text));
    }
}
