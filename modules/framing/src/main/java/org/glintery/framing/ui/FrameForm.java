package org.glintery.framing.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.workshop.Stored;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.TextEdit;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** The form of a frame plan; each field is kept when it is left. Event thread. */
final class FrameForm extends JPanel {
    private static final List<Glazing> USUAL_GLAZINGS =
            Arrays.stream(Glazing.Material.values()).map(Glazing::usual).toList();

    private static final long serialVersionUID = 1L;

    /** A keeping place to choose, or none. */
    private record PlaceChoice(Optional<UUID> place, String name) {}

    private final transient Desk desk;
    private final transient PlanEdits edits;
    private final ChoiceBox<Decision> decision;
    private final ChoiceBox<Glazing> glazing;
    private final ChoiceBox<PlaceChoice> place;
    private final JTextField widthField = new JTextField();
    private final JTextField heightField = new JTextField();
    private final transient TextEdit width;
    private final transient TextEdit height;
    private final JTextField nameField = new JTextField();
    private final JTextField faceField = new JTextField();
    private final JTextField lipField = new JTextField();
    private final JTextField rebateField = new JTextField();
    private final JTextField allowanceField = new JTextField();
    private final JTextField kerfField = new JTextField();
    private final JTextField livesAtField = new JTextField();
    private final JTextField notesField = new JTextField();
    private final transient TextEdit name;
    private final transient TextEdit face;
    private final transient TextEdit lip;
    private final transient TextEdit rebate;
    private final transient TextEdit allowance;
    private final transient TextEdit kerf;
    private final transient TextEdit livesAt;
    private final transient TextEdit notes;
    private final FormSheet mouldingSheet;
    private final FormSheet cutSheet;
    private transient List<String> settleFirst = List.of();
    private Decision decided = Decision.NOT_DECIDED;

    @Messages({
        "FrameForm.decision=How it will hang",
        "FrameForm.livesAt=Where it lives, or will",
        "FrameForm.place=Keeping place",
        "FrameForm.noPlace=None",
        "FrameForm.width=Artwork across, in mm",
        "FrameForm.height=Artwork down, in mm",
        "FrameForm.sizeHint=The drilled area when left empty",
        "FrameForm.moulding=Moulding",
        "FrameForm.name=What it is called",
        "FrameForm.face=Width of its face, in mm",
        "FrameForm.faceHint=From the outer edge to the sight edge",
        "FrameForm.lip=Lip over the piece, in mm",
        "FrameForm.rebate=Depth of its rebate, in mm",
        "FrameForm.allowance=Play in the rebate, in mm",
        "FrameForm.allowanceHint=In all across, and in all down",
        "FrameForm.kerf=One saw cut takes, in mm",
        "FrameForm.glazing=Glazing",
        "FrameForm.notes=Notes"
    })
    FrameForm(Desk desk, PlanEdits edits) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.APART, "[grow, fill]"));
        setOpaque(false);
        this.desk = desk;
        this.edits = edits;
        width = length(widthField, (copy, mm) -> copy.artworkWidthMm = mm);
        height = length(heightField, (copy, mm) -> copy.artworkHeightMm = mm);
        name = text(nameField, (copy, text) -> copy.mouldingName = text);
        face = length(faceField, FrameForm::setFace);
        lip = length(lipField, (copy, mm) -> copy.lipMm = mm);
        rebate = length(rebateField, (copy, mm) -> copy.rebateMm = mm);
        allowance = length(allowanceField, (copy, mm) -> copy.allowanceMm = mm);
        kerf = length(kerfField, (copy, mm) -> copy.kerfMm = mm);
        livesAt = text(livesAtField, (copy, text) -> copy.livesAt = text);
        notes = text(notesField, (copy, text) -> copy.notes = text);
        decision = new ChoiceBox<>(List.of(Decision.values()), DecisionWords::of, this::decide);
        glazing = new ChoiceBox<>(
                USUAL_GLAZINGS, DecisionWords::of, chosen -> desk.change(edits.set(copy -> copy.glazing = chosen)));
        place = new ChoiceBox<>(
                List.of(), PlaceChoice::name, chosen -> desk.change(edits.set(copy -> copy.place = chosen.place())));
        add(
                new FormSheet(2)
                        .field(Bundle.FrameForm_decision(), decision)
                        .field(Bundle.FrameForm_place(), place)
                        .wide(Bundle.FrameForm_livesAt(), livesAtField, "")
                        .field(Bundle.FrameForm_width(), widthField, Bundle.FrameForm_sizeHint())
                        .field(Bundle.FrameForm_height(), heightField, Bundle.FrameForm_sizeHint()),
                "wmin 0");
        mouldingSheet = new FormSheet(2)
                .section(Bundle.FrameForm_moulding())
                .wide(Bundle.FrameForm_name(), nameField, "")
                .field(Bundle.FrameForm_face(), faceField, Bundle.FrameForm_faceHint())
                .field(Bundle.FrameForm_lip(), lipField)
                .field(Bundle.FrameForm_rebate(), rebateField)
                .field(Bundle.FrameForm_allowance(), allowanceField, Bundle.FrameForm_allowanceHint())
                .field(Bundle.FrameForm_glazing(), glazing);
        add(mouldingSheet, "wmin 0");
        cutSheet = new FormSheet(2).field(Bundle.FrameForm_kerf(), kerfField);
        add(cutSheet, "wmin 0");
        add(new FormSheet().field(Bundle.FrameForm_notes(), notesField), "wmin 0");
    }

    void show(FramePage page) {
        FramePlan plan = page.plan();
        List<Stored<KeepingPlace>> places = page.places();
        decided = plan.decision();
        settleFirst = page.settleFirst();
        decision.show(plan.decision());
        boolean usual = USUAL_GLAZINGS.contains(plan.glazing());
        glazing.show(
                usual
                        ? USUAL_GLAZINGS
                        : Stream.concat(USUAL_GLAZINGS.stream(), Stream.of(plan.glazing()))
                                .toList(),
                plan.glazing());
        List<PlaceChoice> choices = new ArrayList<>();
        choices.add(new PlaceChoice(Optional.empty(), Bundle.FrameForm_noPlace()));
        places.forEach(
                p -> choices.add(new PlaceChoice(Optional.of(p.id()), p.value().name())));
        place.show(
                choices,
                choices.stream()
                        .filter(choice -> choice.place().equals(plan.place()))
                        .findFirst()
                        .orElse(choices.get(0)));
        width.show(Millimetres.words(plan.artworkWidthMm()));
        height.show(Millimetres.words(plan.artworkHeightMm()));
        name.show(plan.moulding().map(Moulding::name).orElse(""));
        face.show(Millimetres.words(plan.moulding().map(Moulding::widthMm)));
        lip.show(Millimetres.words(plan.moulding().map(Moulding::lipMm)));
        rebate.show(Millimetres.words(plan.moulding().map(Moulding::rebateDepthMm)));
        allowance.show(Millimetres.words(plan.allowanceMm()));
        kerf.show(Millimetres.words(plan.kerfMm()));
        livesAt.show(plan.livesAt());
        notes.show(plan.notes());
        boolean framed = plan.decision() == Decision.FRAMED || plan.moulding().isPresent();
        mouldingSheet.setVisible(framed);
        cutSheet.setVisible(framed || plan.decision() == Decision.STRETCHED || plan.decision() == Decision.HANGER);
        revalidate();
    }

    private void decide(Decision chosen) {
        switch (OneWayStep.answer(chosen, settleFirst)) {
            case GO -> desk.change(edits.decide(chosen));
            case LEAVE_WHOLE -> desk.change(edits.decide(Decision.NOT_FRAMED));
            case NOT_NOW -> decision.show(decided);
        }
    }

    private static void setFace(PlanCopy copy, Optional<Double> mm) {
        if (mm.isEmpty()) {
            copy.noMoulding();
        }
        copy.mouldingWidthMm = mm;
    }

    private TextEdit length(JTextField field, BiConsumer<PlanCopy, Optional<Double>> set) {
        return TextEdit.of(field, typed -> desk.change(edits.length(typed, set)));
    }

    private TextEdit text(JTextField field, BiConsumer<PlanCopy, String> set) {
        return TextEdit.of(field, typed -> desk.change(edits.set(copy -> set.accept(copy, typed))));
    }
}
