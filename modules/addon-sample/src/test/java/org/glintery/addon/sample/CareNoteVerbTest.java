package org.glintery.addon.sample;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.testkit.FakeCall;
import org.glintery.testkit.contract.VerbContract;
import org.junit.jupiter.api.Test;

class CareNoteVerbTest extends VerbContract {

    @Override
    protected Verb verb() {
        return new CareNoteVerb();
    }

    @Override
    protected void rightly(FakeCall call) {
        call.with("piece", piece(Standing.MADE)).with("words", "Dusted").with("on", "about March 2025");
    }

    @Override
    protected void wrongly(FakeCall call) {
        call.with("piece", piece(Standing.SHELVED)).with("words", "Dusted");
    }

    private String piece(Standing standing) {
        return workshop().view().all(Piece.TYPE).stream()
                .filter(piece -> piece.value().standing() == standing)
                .findFirst()
                .orElseThrow()
                .id()
                .toString();
    }

    @Test
    void isWrongUsage_whenTheDateIsNotUnderstood() {
        FakeCall call = new FakeCall(workshop())
                .with("piece", piece(Standing.MADE))
                .with("words", "Dusted")
                .with("on", "the other day or so");
        assertThat(new CareNoteVerb().run(call)).isInstanceOf(VerbResult.WrongUsage.class);
    }

    @Test
    void saysHowADateWasRead_thatCanBeReadInTwoWays() {
        FakeCall call = new FakeCall(workshop())
                .with("piece", piece(Standing.MADE))
                .with("words", "Dusted")
                .with("on", "3/4/2025");
        new CareNoteVerb().run(call);
        assertThat(call.said).anyMatch(said -> said.contains("3/4/2025") && said.contains("3 April 2025"));
    }
}
