package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Checks a clearing against its round, packet by packet and with nothing of what made it. */
final class PlanCheck {

    private final Round round;
    private final Clearing clearing;
    private final List<String> wrong = new ArrayList<>();

    private PlanCheck(Round round, Clearing clearing) {
        this.round = round;
        this.clearing = clearing;
    }

    /** What is wrong; empty when all is well. */
    static List<String> complaints(Round round, Clearing clearing) {
        PlanCheck check = new PlanCheck(round, clearing);
        check.checkOffers();
        check.checkTraders();
        check.checkWants();
        check.checkParcels();
        check.checkBounds();
        return check.wrong;
    }

    private void checkOffers() {
        for (Transfer transfer : clearing.transfers()) {
            if (transfer.from() == transfer.to()) {
                wrong.add("to themselves: " + transfer);
            }
            if (transfer.packets() <= 0) {
                wrong.add("nothing in it: " + transfer);
            }
            int given = clearing.transfers().stream()
                    .filter(other -> other.from() == transfer.from() && other.kind() == transfer.kind())
                    .mapToInt(Transfer::packets)
                    .sum();
            int offered = round.offers().stream()
                    .filter(offer -> offer.trader() == transfer.from() && offer.kind() == transfer.kind())
                    .mapToInt(Offer::packets)
                    .sum();
            if (given > offered) {
                wrong.add("more than offered: " + transfer);
            }
        }
    }

    private void checkTraders() {
        long unfairness = 0;
        for (int t = 0; t < round.traders().size(); t++) {
            int trader = t;
            int given = clearing.transfers().stream()
                    .filter(transfer -> transfer.from() == trader)
                    .mapToInt(Transfer::packets)
                    .sum();
            int got = clearing.transfers().stream()
                    .filter(transfer -> transfer.to() == trader)
                    .mapToInt(Transfer::packets)
                    .sum();
            Trader allows = round.traders().get(t);
            if (given - got > allows.mayGiveMore()) {
                wrong.add(t + " gives too much: " + given + " for " + got);
            }
            if (got - given > allows.mayGetMore()) {
                wrong.add(t + " gets too much: " + got + " for " + given);
            }
            if (given > 0 && got == 0 && !allows.mayGiveForNothing()) {
                wrong.add(t + " is worse off than at home: gives " + given + " for nothing");
            }
            unfairness += given > got && allows.mayGiveForNothing() ? 0 : (long) (given - got) * (given - got);
        }
        if (unfairness != clearing.unfairness()) {
            wrong.add("unfairness " + unfairness + ", not " + clearing.unfairness());
        }
    }

    /** Gives each packet to a want, the most urgent wants first; moving others out of the way when need be. */
    private void checkWants() {
        List<int[]> places = new ArrayList<>();
        for (int j = 0; j < round.wants().size(); j++) {
            for (int p = 0; p < round.wants().get(j).packets(); p++) {
                places.add(new int[] {j, -1});
            }
        }
        places.sort((a, b) -> Integer.compare(
                round.wants().get(a[0]).priority(), round.wants().get(b[0]).priority()));
        List<int[]> packets = new ArrayList<>();
        for (Transfer transfer : clearing.transfers()) {
            for (int p = 0; p < transfer.packets(); p++) {
                packets.add(new int[] {transfer.to(), transfer.kind()});
            }
        }
        boolean[] taken = new boolean[packets.size()];
        int[] placeOf = new int[packets.size()];
        for (int place = 0; place < places.size(); place++) {
            fill(place, places, packets, placeOf, taken, new boolean[packets.size()]);
        }
        for (Clearing.Met met : clearing.met()) {
            long filled = places.stream()
                    .filter(place ->
                            place[1] >= 0 && round.wants().get(place[0]).priority() == met.priority())
                    .count();
            if (filled != met.packets()) {
                wrong.add("priority " + met.priority() + " gets " + filled + ", not " + met.packets());
            }
        }
        if (packets.size() != clearing.wantsMet()) {
            wrong.add(packets.size() + " packets for " + clearing.wantsMet() + " wants");
        }
    }

    private boolean fill(
            int place, List<int[]> places, List<int[]> packets, int[] placeOf, boolean[] taken, boolean[] tried) {
        Want want = round.wants().get(places.get(place)[0]);
        for (int p = 0; p < packets.size(); p++) {
            boolean serves = packets.get(p)[0] == want.trader() && want.kinds().contains(packets.get(p)[1]);
            if (serves && !tried[p]) {
                tried[p] = true;
                if (!taken[p] || fill(placeOf[p], places, packets, placeOf, taken, tried)) {
                    taken[p] = true;
                    placeOf[p] = place;
                    places.get(place)[1] = p;
                    return true;
                }
            }
        }
        return false;
    }

    private void checkParcels() {
        Set<Way> parcels = new HashSet<>();
        for (Transfer transfer : clearing.transfers()) {
            if (transfer.throughOrganiser()) {
                int organiser = round.postage().organiser().orElse(-1);
                parcels.add(new Way(transfer.from(), organiser));
                parcels.add(new Way(organiser, transfer.to()));
                if (organiser < 0 || organiser == transfer.from() || organiser == transfer.to()) {
                    wrong.add("through an organiser who is none: " + transfer);
                }
            } else {
                parcels.add(new Way(transfer.from(), transfer.to()));
            }
        }
        if (parcels.size() != clearing.parcels()) {
            wrong.add(parcels.size() + " parcels, not " + clearing.parcels());
        }
        long postage = parcels.stream().mapToLong(round.postage()::of).sum();
        if (postage != clearing.postage()) {
            wrong.add("postage " + postage + ", not " + clearing.postage());
        }
    }

    private void checkBounds() {
        if (clearing.wantsMet() > clearing.wantsBound()
                || clearing.postage() < clearing.postageBound()
                || clearing.parcels() < clearing.parcelsBound()
                || clearing.unfairness() < clearing.unfairnessBound()) {
            wrong.add("beyond a bound: " + clearing);
        }
    }
}
