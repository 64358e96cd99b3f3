package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class ColourNamesTest {

    // Kelly and Judd, NBS Special Publication 440, 1976: 267 names.
    @Test
    void namesEveryIsccNbsCentroidItself() {
        ColourNames names = ColourNames.isccNbs();
        assertThat(names.all()).hasSize(267);
        for (NamedColour named : names.all()) {
            NearestName nearest = names.nearest(named.colour());
            assertThat(nearest.named()).isEqualTo(named);
            assertThat(nearest.difference()).isZero();
            assertThat(named.name()).doesNotContain("#");
        }
    }

    // CSS Color Module Level 4, section 6.1: 148 names, of which nine share their colour with an earlier one.
    @Test
    void namesEveryCssColour_byTheFirstNameOfThatColour() {
        ColourNames names = ColourNames.css();
        assertThat(names.all()).hasSize(148);
        long others = names.all().stream()
                .filter(named -> !names.nearest(named.colour()).named().equals(named))
                .peek(named -> assertThat(names.nearest(named.colour()).named().colour())
                        .isEqualTo(named.colour()))
                .count();
        assertThat(others).isEqualTo(9);
    }

    @Test
    void findsAColourByItsName_inAnyCase() {
        assertThat(ColourNames.css().named(" RebeccaPurple ")).contains(new Srgb(0x66, 0x33, 0x99));
        assertThat(ColourNames.isccNbs().named("vivid yellowish green"))
                .contains(Srgb.parse("#27a64c").orElseThrow());
        assertThat(ColourNames.css().named("no such colour")).isEmpty();
    }

    @Test
    void namesAColourBetween_byTheNearer() {
        Srgb nearlyWhite = new Srgb(0xf0, 0xf2, 0xf3);
        NearestName nearest = ColourNames.isccNbs().nearest(nearlyWhite);
        assertThat(nearest.named().name().toLowerCase(Locale.ROOT)).isEqualTo("white");
        assertThat(nearest.difference()).isPositive().isLessThan(2);
    }
}
