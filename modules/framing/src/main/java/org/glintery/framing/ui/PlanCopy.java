package org.glintery.framing.ui;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.time.About;
import org.openide.util.NbBundle.Messages;

/** A frame plan while it is being edited: one field is set, the others stay. Not safe for use by several threads. */
final class PlanCopy {

    Decision decision;
    Optional<Double> artworkWidthMm;
    Optional<Double> artworkHeightMm;
    String mouldingName;
    Optional<Double> mouldingWidthMm;
    Optional<Double> lipMm;
    Optional<Double> rebateMm;
    Optional<Double> allowanceMm;
    Optional<Double> kerfMm;
    Glazing glazing;
    String livesAt;
    Optional<UUID> place;
    Optional<About> decidedOn;
    String notes;

    PlanCopy(FramePlan plan) {
        decision = plan.decision();
        artworkWidthMm = plan.artworkWidthMm();
        artworkHeightMm = plan.artworkHeightMm();
        mouldingName = plan.moulding().map(Moulding::name).orElse("");
        mouldingWidthMm = plan.moulding().map(Moulding::widthMm);
        lipMm = plan.moulding().map(Moulding::lipMm);
        rebateMm = plan.moulding().map(Moulding::rebateDepthMm);
        allowanceMm = Optional.of(plan.allowanceMm());
        kerfMm = Optional.of(plan.kerfMm());
        glazing = plan.glazing();
        livesAt = plan.livesAt();
        place = plan.place();
        decidedOn = plan.decidedOn();
        notes = plan.notes();
    }

    /** The plan; a moulding without a width is refused, for nothing could be cut from it. */
    @Messages("PlanCopy.noWidth=Tell how wide the moulding is first. Nothing was changed.")
    Result<FramePlan> plan() {
        boolean named = !mouldingName.isBlank() || lipMm.isPresent() || rebateMm.isPresent();
        if (mouldingWidthMm.isEmpty() && named) {
            return Result.refused("no-width", Bundle.PlanCopy_noWidth());
        }
        FramePlan usual = FramePlan.decided(decision, livesAt);
        return Result.ok(new FramePlan(
                decision,
                artworkWidthMm,
                artworkHeightMm,
                mouldingWidthMm.map(
                        width -> new Moulding(mouldingName.strip(), width, lipMm.orElse(0.0), rebateMm.orElse(0.0))),
                allowanceMm.orElse(usual.allowanceMm()),
                kerfMm.orElse(usual.kerfMm()),
                glazing,
                livesAt.strip(),
                place,
                decidedOn,
                notes.strip()));
    }

    /** Forgets the moulding. */
    void noMoulding() {
        mouldingName = "";
        mouldingWidthMm = Optional.empty();
        lipMm = Optional.empty();
        rebateMm = Optional.empty();
    }
}
