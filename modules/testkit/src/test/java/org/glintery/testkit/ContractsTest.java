package org.glintery.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The contracts and guards catch what they are there for. */
class ContractsTest {

    @ParameterizedTest
    @ValueSource(classes = {FaultyAddons.SoundTab.class, FaultyAddons.SoundVerb.class})
    void letPass_whatIsSound(Class<?> sound) {
        assertThat(FailedTests.of(sound)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            classes = {
                FaultyAddons.PreparesOnTheScreen.class,
                FaultyAddons.MakesItsComponentAnew.class,
                FaultyAddons.WritesToDiskWhileShowing.class,
                FaultyAddons.Warns.class,
                FaultyAddons.IsNeverOffered.class
            })
    void catchATab(Class<?> faulty) {
        assertThat(FailedTests.of(faulty)).contains("showsEveryPieceThatItIsOfferedFor");
    }

    @Test
    void catchAVerb() {
        assertThat(FailedTests.of(FaultyAddons.RefusesAfterChanging.class))
                .containsExactly("saysWhy_andChangesNothing_whenItIsCalledWrongly");
        assertThat(FailedTests.of(FaultyAddons.AnswersSomethingElse.class))
                .containsExactly("answersWithItsRecord_andCanBeTakenBack");
        assertThat(FailedTests.of(FaultyAddons.TakesAHelpOfItsOwn.class))
                .containsExactly("declaresParametersThatCanBeRead");
    }

    @Test
    void catchAKindOfDocument() {
        assertThat(FailedTests.of(FaultyAddons.LosesAnEarlierVersion.class))
                .containsExactly("readsEveryEarlierVersion");
    }

    @Test
    void catchWhatIsLeftOpen() {
        assertThat(FailedTests.of(FaultyAddons.LeavesAWorkshopOpen.class)).containsExactly("leavesIt");
        FaultyAddons.LeavesAWorkshopOpen.left.close();
    }

    @Test
    void catchAWorkshop() {
        assertThat(FailedTests.of(FaultyWorkshops.ForgetsPreconditions.class))
                .contains("refusesAChange_thatWasComputedFromWhatNoLongerStands");
        assertThat(FailedTests.of(FaultyWorkshops.UndoesNothing.class))
                .contains("takesBackAndBringsBack_allThatAChangeDid");
        assertThat(FailedTests.of(FaultyWorkshops.LagsBehind.class)).contains("findsWhatWasPut_inTheOrderItCame");
        assertThat(FailedTests.of(FaultyWorkshops.TellsOnTheCallersThread.class))
                .contains("tellsOfChangesInOrder_onOneThreadThatIsNotTheCallers");
    }
}
