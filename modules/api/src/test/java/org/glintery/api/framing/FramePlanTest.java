package org.glintery.api.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.glintery.api.Json;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.FramePlan.Glazing.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FramePlanTest {
    @ParameterizedTest
    @CsvSource({"none, none, 0", "glass-2-mm, glass, 2", "acrylic-2-mm, acrylic, 2"})
    void takesMaterialAndThicknessOutOfTheOneWordOfVersion1(String word, String material, long thicknessMm) {
        Json.Obj old = Json.EMPTY.with("livesAt", new Json.Text("hall")).with("glazing", new Json.Text(word));

        Json.Obj raised = FramePlan.TYPE.upcasters().get(0).apply(old);

        assertThat(raised)
                .isEqualTo(old.with(
                        "glazing",
                        Json.EMPTY
                                .with("material", new Json.Text(material))
                                .with("thicknessMm", Json.Num.of(thicknessMm))));
    }

    @Test
    void hasNoThicknessWithoutGlazing_andNoGlazingWithoutThickness() {
        assertThatThrownBy(() -> new Glazing(Material.NONE, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Glazing(Material.GLASS, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Glazing(Material.GLASS, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Glazing.usual(Material.NONE)).isEqualTo(Glazing.NONE);
        assertThat(new Glazing(Material.GLASS, 2)).isEqualTo(Glazing.usual(Material.GLASS));
    }
}
