package org.glintery.planning.clearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RoundClearingTest {

    private static final Postage FLAT = Postage.flat(250);

    @Test
    void closesACircle_whichNoTwoCouldSwap() {
        Round round = new Round(
                traders(3, Trader.within(0)),
                List.of(new Offer(0, 10, 1), new Offer(1, 11, 1), new Offer(2, 12, 1)),
                List.of(want(0, 1, 1, 11), want(1, 1, 1, 12), want(2, 1, 1, 10)),
                FLAT);

        assertThat(PairwiseSwaps.packets(round)).isZero();
        Clearing clearing = cleared(round);
        assertThat(clearing.transfers())
                .containsExactly(
                        new Transfer(0, 2, 10, 1, false),
                        new Transfer(1, 0, 11, 1, false),
                        new Transfer(2, 1, 12, 1, false));
        assertThat(clearing.postage()).isEqualTo(750);
        assertThat(clearing.fairestProven()).isTrue();
    }

    @Test
    void meetsTheFirstPriorityBeforeAllOthers_evenWhenFewerWantsAreMetInAll() {
        // 0 can serve the urgent want of 1 and get one packet back, or close a circle of three with wants of priority
        // 2.
        Round round = new Round(
                traders(3, Trader.within(0)),
                List.of(new Offer(0, 10, 1), new Offer(1, 11, 1), new Offer(2, 12, 1)),
                List.of(want(1, 1, 1, 10), want(0, 1, 2, 11, 12), want(2, 1, 2, 10)),
                FLAT);

        Clearing clearing = cleared(round);
        assertThat(clearing.met()).containsExactly(new Clearing.Met(1, 1, 1), new Clearing.Met(2, 1, 2));
        assertThat(clearing.transfers())
                .containsExactly(new Transfer(0, 1, 10, 1, false), new Transfer(1, 0, 11, 1, false));
    }

    @Test
    void sendsFewParcels_whenTheSameWantsCanBeMetFromOneOrFromMany() {
        // 1, 2 and 3 could each send one kind to 0, but 3 has all of them.
        Round round = new Round(
                traders(4, Trader.within(3)),
                List.of(
                        new Offer(1, 10, 1),
                        new Offer(2, 11, 1),
                        new Offer(3, 10, 1),
                        new Offer(3, 11, 1),
                        new Offer(3, 12, 1),
                        new Offer(0, 20, 3)),
                List.of(want(0, 1, 1, 10), want(0, 1, 1, 11), want(0, 1, 1, 12), want(3, 3, 1, 20)),
                FLAT);

        Clearing clearing = cleared(round);
        assertThat(clearing.wantsMet()).isEqualTo(6);
        assertThat(clearing.parcels()).isEqualTo(2);
        assertThat(clearing.parcelsBound()).isEqualTo(2);
    }

    @Test
    void putsPostageBeforeParcels() {
        // One parcel from 1 costs 900; two from 2 and 3 cost 200 together.
        Postage postage = new Postage(100, Map.of(new Way(1, 0), 900L), OptionalInt.empty());
        Round round = new Round(
                List.of(Trader.within(2), Trader.generous(0), Trader.generous(0), Trader.generous(0)),
                List.of(new Offer(1, 10, 1), new Offer(1, 11, 1), new Offer(2, 10, 1), new Offer(3, 11, 1)),
                List.of(want(0, 1, 1, 10), want(0, 1, 1, 11)),
                postage);

        Clearing clearing = cleared(round);
        assertThat(clearing.postage()).isEqualTo(200);
        assertThat(clearing.parcels()).isEqualTo(2);
        assertThat(clearing.parcelsProven()).isTrue();
    }

    @Test
    void goesThroughTheOrganiser_whereThatSavesParcels() {
        // Three givers, three getters, a packet from each to each: nine parcels straight, six through the organiser.
        List<Offer> offers = List.of(new Offer(0, 10, 3), new Offer(1, 11, 3), new Offer(2, 12, 3));
        List<Want> wants = List.of(
                want(3, 1, 1, 10),
                want(3, 1, 1, 11),
                want(3, 1, 1, 12),
                want(4, 1, 1, 10),
                want(4, 1, 1, 11),
                want(4, 1, 1, 12),
                want(5, 1, 1, 10),
                want(5, 1, 1, 11),
                want(5, 1, 1, 12));
        List<Trader> traders = traders(7, Trader.generous(3));

        assertThat(cleared(new Round(traders, offers, wants, FLAT)).parcels()).isEqualTo(9);
        Clearing through = cleared(new Round(traders, offers, wants, FLAT.through(6)));
        assertThat(through.parcels()).isEqualTo(6);
        assertThat(through.parcelsProven()).isTrue();
        assertThat(through.transfers()).hasSize(9).allMatch(Transfer::throughOrganiser);
    }

    @Test
    void takesNothingFromThoseWhoGetNothing_unlessTheyAreGenerous() {
        List<Offer> offers = List.of(new Offer(0, 10, 2));
        List<Want> wants = List.of(want(1, 2, 1, 10));

        Round home = new Round(List.of(Trader.within(2), Trader.within(2)), offers, wants, FLAT);
        assertThat(cleared(home).transfers()).isEmpty();
        Round generous = new Round(List.of(Trader.generous(0), Trader.within(2)), offers, wants, FLAT);
        assertThat(cleared(generous).transfers()).containsExactly(new Transfer(0, 1, 10, 2, false));
    }

    @Test
    void keepsWithinTheDifferenceThatEachAllows() {
        List<Offer> offers = List.of(new Offer(0, 10, 5), new Offer(1, 11, 1));
        List<Want> wants = List.of(want(0, 1, 1, 11), want(1, 5, 1, 10));
        for (int allowed = 0; allowed <= 4; allowed++) {
            Clearing clearing =
                    cleared(new Round(List.of(Trader.within(allowed), Trader.within(4)), offers, wants, FLAT));
            assertThat(clearing.wantsMet()).as("allowed %d", allowed).isEqualTo(2 + allowed);
        }
    }

    @Test
    void spreadsWhatIsUneven_ratherThanLeaveItToOne() {
        // Two packets more are given than can come back: one each from 1 and 2 is fairer than both from one.
        Round round = new Round(
                List.of(Trader.within(2), Trader.within(2), Trader.within(2)),
                List.of(new Offer(1, 10, 3), new Offer(2, 10, 3), new Offer(0, 20, 1), new Offer(0, 21, 1)),
                List.of(want(0, 4, 1, 10), want(1, 1, 1, 20), want(2, 1, 1, 21)),
                FLAT);

        Clearing clearing = cleared(round);
        assertThat(clearing.wantsMet()).isEqualTo(6);
        assertThat(clearing.unfairness()).isEqualTo(1 + 1 + 4);
        assertThat(clearing.fairestProven()).isTrue();
    }

    @Test
    void neverSendsAnythingToThemselves_whenTheyWantWhatTheyOffer() {
        Round round = new Round(
                traders(2, Trader.within(0)),
                List.of(new Offer(0, 10, 1), new Offer(1, 10, 1)),
                List.of(want(0, 1, 1, 10), want(1, 1, 1, 10)),
                FLAT);

        assertThat(cleared(round).transfers())
                .containsExactly(new Transfer(0, 1, 10, 1, false), new Transfer(1, 0, 10, 1, false));
    }

    @Test
    void answersAnEmptyRound() {
        Clearing nobody = cleared(new Round(List.of(), List.of(), List.of(), FLAT));
        assertThat(nobody.transfers()).isEmpty();
        assertThat(nobody.fairestProven()).isTrue();
        Round idle =
                new Round(traders(2, Trader.within(1)), List.of(new Offer(0, 10, 0)), List.of(want(1, 0, 1, 10)), FLAT);
        assertThat(cleared(idle).wantsBound()).isZero();
    }

    @Test
    void refusesWhatIsNoRound() {
        List<Trader> one = traders(1, Trader.within(0));
        List<Offer> none = List.of();
        assertThatThrownBy(() -> new Round(one, List.of(new Offer(1, 10, 1)), List.of(), FLAT))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Round(one, List.of(new Offer(0, 10, -1)), List.of(), FLAT))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Round(one, List.of(new Offer(0, 10, 1), new Offer(0, 10, 1)), List.of(), FLAT))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Round(one, none, List.of(want(0, Integer.MAX_VALUE, 1, 10)), FLAT))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Round(one, none, List.of(), Postage.flat(-1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Trader.within(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Patience(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Clearing cleared(Round round) {
        Clearing clearing = RoundClearing.clear(round, Patience.SHORT);
        assertThat(PlanCheck.complaints(round, clearing)).isEmpty();
        assertThat(clearing.wantsProven()).isTrue();
        return clearing;
    }

    private static List<Trader> traders(int count, Trader each) {
        return Collections.nCopies(count, each);
    }

    private static Want want(int trader, int packets, int priority, Integer... kinds) {
        return new Want(trader, List.of(kinds), packets, priority);
    }
}
