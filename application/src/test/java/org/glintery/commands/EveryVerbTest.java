package org.glintery.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.glintery.api.Result;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.junit.jupiter.api.Test;
import org.openide.util.Lookup;

/** What holds for every verb, as its parameters describe it. */
class EveryVerbTest {
    private static final int LEAST_VERBS = 41;
    private static final int LEAST_REQUIRED = 20;
    private static final List<String> OTHER_NAMES_OF_PREVIEW =
            List.of("plan", "plan-only", "dry-run", "dry", "try", "pretend", "show-only", "what-if");

    private final Collection<? extends Verb> verbs = Lookup.getDefault().lookupAll(Verb.class);

    @Test
    void isWrongUsage_whenARequiredArgumentIsBlank() {
        int looked = 0;
        for (Verb verb : verbs) {
            List<Param> required =
                    verb.params().stream().filter(Param::required).toList();
            for (Param blank : required) {
                looked++;
                for (String nothing : List.of("", "  ", "\n\u001b")) {
                    List<String> words = new ArrayList<>();
                    required.forEach(param -> {
                        if (param.kind() == Param.Kind.OPTION) {
                            words.add("--" + param.name());
                        }
                        words.add(param.equals(blank) ? nothing : "x");
                    });
                    assertThat(ArgumentReading.of(verb).read(words))
                            .as("%s with a blank %s", verb.name(), blank.name())
                            .isInstanceOfSatisfying(
                                    Result.Refused.class,
                                    no -> assertThat(no.refusal().text()).endsWith(" is empty: " + blank.help() + "."));
                }
            }
        }
        assertThat(looked).as("required arguments").isGreaterThan(LEAST_REQUIRED);
    }

    @Test
    void callsItPreview_whereOnlyWhatWouldHappenIsShown() {
        assertThat(verbs.size()).as("verbs").isGreaterThanOrEqualTo(LEAST_VERBS);
        List<String> previewing = new ArrayList<>();
        for (Verb verb : verbs) {
            for (Param param : verb.params()) {
                assertThat(OTHER_NAMES_OF_PREVIEW)
                        .as("the parameters of %s", verb.name())
                        .doesNotContain(param.name());
                if (param.name().equals("preview")) {
                    previewing.add(verb.name());
                    assertThat(param.kind()).isEqualTo(Param.Kind.FLAG);
                }
            }
        }
        assertThat(previewing).contains("kit add", "kitup", "piece frame");
    }
}
