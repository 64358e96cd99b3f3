package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.glintery.api.Json;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.testkit.FakeCall;
import org.glintery.testkit.PlainCodec;
import org.junit.jupiter.api.Test;

/** What every {@link Verb} keeps. Needs the demo on the class path, or a workshop of its own. */
public abstract class VerbContract extends OnTheDemo {
    private static final List<String> TAKEN = List.of("workshop", "json", "help");

    protected abstract Verb verb();

    /** Gives a call what it needs so that the verb answers. */
    protected abstract void rightly(FakeCall call);

    /** Gives a call something that the verb has to refuse, or that is wrong usage. */
    protected abstract void wrongly(FakeCall call);

    @Test
    void saysInWordsWhatItIs() {
        assertThat(verb().name()).matches("[a-z]+( [a-z]+)*");
        assertThat(verb().summary()).isNotBlank().doesNotContain("\n").matches("\\p{Lu}.*[^.]");
        assertThat(verb().feature()).matches("[a-z]+(-[a-z]+)*");
    }

    @Test
    void declaresParametersThatCanBeRead() {
        List<Param> params = verb().params();
        assertThat(params).extracting(Param::name).doesNotHaveDuplicates().doesNotContainAnyElementsOf(TAKEN);
        assertThat(params)
                .allSatisfy(param -> assertThat(param.name()).matches("[a-z]+(-[a-z]+)*"))
                .allSatisfy(param -> assertThat(param.help()).isNotBlank())
                .allSatisfy(
                        param -> assertThat(param.placeholder().isEmpty()).isEqualTo(param.kind() == Param.Kind.FLAG));
        List<Param> positionals =
                params.stream().filter(p -> p.kind() == Param.Kind.POSITIONAL).toList();
        for (int i = 1; i < positionals.size(); i++) {
            assertThat(positionals.get(i).required() && !positionals.get(i - 1).required())
                    .as(
                            "%s is required after one that is not",
                            positionals.get(i).name())
                    .isFalse();
            assertThat(positionals.get(i - 1).placeholder())
                    .as("only the last takes several words")
                    .doesNotEndWith("...");
        }
    }

    @Test
    void answersWithItsRecord_andCanBeTakenBack() throws Exception {
        String before = workshop().view().contentDigest();
        long revision = workshop().view().revision();
        FakeCall call = new FakeCall(workshop());
        rightly(call);
        VerbResult result = verb().run(call);
        if (result instanceof VerbResult.Said said) {
            assertThat(said.text()).isNotBlank();
            assertThat(said.answer()).isInstanceOf(verb().answers());
            assertReadable(said.answer());
        } else {
            assertThat(result).isEqualTo(new VerbResult.Streamed(false));
            assertThat(call.answers).isNotEmpty().allSatisfy(answer -> assertReadable(answer));
        }
        if (workshop().view().revision() > revision) {
            while (!workshop().view().contentDigest().equals(before)) {
                workshop().undo().orThrow();
            }
        }
    }

    private static void assertReadable(Object answer) {
        PlainCodec codec = new PlainCodec();
        Json json = codec.toJson(answer);
        assertThat(json).isInstanceOf(Json.Obj.class);
        assertThat(codec.parse(codec.compact(json))).isEqualTo(json);
    }

    @Test
    void saysWhy_andChangesNothing_whenItIsCalledWrongly() throws Exception {
        String before = workshop().view().contentDigest();
        FakeCall call = new FakeCall(workshop());
        wrongly(call);
        VerbResult result = verb().run(call);
        if (result instanceof VerbResult.Refused refused) {
            assertThat(refused.refusal().code()).matches("[a-z]+(-[a-z]+)*");
            assertThat(refused.refusal().text()).isNotBlank();
        } else {
            assertThat(result).isInstanceOf(VerbResult.WrongUsage.class);
            assertThat(((VerbResult.WrongUsage) result).text()).isNotBlank();
        }
        assertThat(workshop().view().contentDigest()).isEqualTo(before);
    }
}
