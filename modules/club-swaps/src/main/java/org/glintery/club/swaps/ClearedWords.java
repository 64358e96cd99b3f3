package org.glintery.club.swaps;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.glintery.api.ledger.Balance;
import org.glintery.planning.clearing.Clearing;
import org.glintery.planning.clearing.Transfer;
import org.openide.util.NbBundle.Messages;

/** Tells a cleared round to its members. */
final class ClearedWords {

    private final NamedRound named;
    private final Clearing clearing;

    ClearedWords(NamedRound named, Clearing clearing) {
        this.named = named;
        this.clearing = clearing;
    }

    /** The round in all, then member by member. */
    String text() {
        List<String> lines = new ArrayList<>(List.of(wants(), parcels()));
        for (int member = 0; member < named.members().size(); member++) {
            tell(member, lines);
        }
        return String.join("\n", lines);
    }

    @Messages({
        "# {0} - met",
        "# {1} - met in words",
        "# {2} - wanted",
        "# {3} - wanted in words",
        "ClearedWords.met={1} of {3} wanted {2,choice,1#packet|1<packets} {0,choice,0#change|1#changes|1<change} hands; "
                + "no plan does better.",
        "# {0} - met",
        "# {1} - met in words",
        "# {2} - wanted",
        "# {3} - wanted in words",
        "# {4} - bound in words",
        "ClearedWords.metAtLeast={1} of {3} wanted {2,choice,1#packet|1<packets} {0,choice,0#change|1#changes|1<change} "
                + "hands; more than {4} can''t.",
        "ClearedWords.nothing=Nothing can change hands: nobody could get something for what they give."
    })
    private String wants() {
        int wanted = clearing.met().stream().mapToInt(Clearing.Met::wanted).sum();
        if (clearing.wantsBound() == 0) {
            return Bundle.ClearedWords_nothing();
        }
        int met = clearing.wantsMet();
        return clearing.wantsProven()
                ? Bundle.ClearedWords_met(met, Balance.grouped(met), wanted, Balance.grouped(wanted))
                : Bundle.ClearedWords_metAtLeast(
                        met,
                        Balance.grouped(met),
                        wanted,
                        Balance.grouped(wanted),
                        Balance.grouped(clearing.wantsBound()));
    }

    @Messages({
        "# {0} - parcels",
        "# {1} - parcels in words",
        "# {2} - postage",
        "ClearedWords.proven={0,choice,0#No parcels|1#One parcel|1<{1} parcels}, {2} in postage; for the same packets it "
                + "can''t be less.",
        "# {0} - parcels",
        "# {1} - parcels in words",
        "# {2} - postage",
        "# {3} - least parcels",
        "# {4} - least parcels in words",
        "# {5} - least postage",
        "ClearedWords.open={0,choice,0#No parcels|1#One parcel|1<{1} parcels}, {2} in postage; whether it can be less is "
                + "not known, but not below {3,choice,0#no parcels|1#one parcel|1<{4} parcels} and {5}."
    })
    String parcels() {
        String parcels = Balance.grouped(clearing.parcels());
        String postage = named.priceWords(clearing.postage());
        return clearing.postage() == clearing.postageBound() && clearing.parcels() == clearing.parcelsBound()
                ? Bundle.ClearedWords_proven(clearing.parcels(), parcels, postage)
                : Bundle.ClearedWords_open(
                        clearing.parcels(),
                        parcels,
                        postage,
                        clearing.parcelsBound(),
                        Balance.grouped(clearing.parcelsBound()),
                        named.priceWords(clearing.postageBound()));
    }

    @Messages({
        "# {0} - member",
        "# {1} - packets given",
        "# {2} - to how many",
        "# {3} - packets got",
        "ClearedWords.both={0}: you send {1} to {2}, you get {3}.",
        "# {0} - member",
        "# {1} - packets given",
        "# {2} - to how many",
        "ClearedWords.gives={0}: you send {1} to {2}, you get nothing back.",
        "# {0} - member",
        "# {1} - packets got",
        "ClearedWords.gets={0}: you send nothing, you get {1}.",
        "# {0} - packets",
        "# {1} - packets in words",
        "ClearedWords.packets={0,choice,1#1 packet|1<{1} packets}",
        "# {0} - to",
        "# {1} - list of kinds",
        "ClearedWords.to=  to {0}: {1}",
        "# {0} - to",
        "# {1} - organiser",
        "# {2} - list of kinds",
        "ClearedWords.through=  to {0} through {1}: {2}"
    })
    private void tell(int member, List<String> lines) {
        List<Transfer> sent = clearing.transfers().stream()
                .filter(transfer -> transfer.from() == member)
                .toList();
        int given = sent.stream().mapToInt(Transfer::packets).sum();
        int got = clearing.transfers().stream()
                .filter(transfer -> transfer.to() == member)
                .mapToInt(Transfer::packets)
                .sum();
        String name = named.members().get(member);
        int[] people = sent.stream().mapToInt(Transfer::to).distinct().toArray();
        if (given > 0) {
            lines.add(
                    got > 0
                            ? Bundle.ClearedWords_both(
                                    name, packets(given), people(people.length), Balance.grouped(got))
                            : Bundle.ClearedWords_gives(name, packets(given), people(people.length)));
        } else if (got > 0) {
            lines.add(Bundle.ClearedWords_gets(name, packets(got)));
        }
        for (int to : people) {
            toOne(sent, to, false, lines);
            toOne(sent, to, true, lines);
        }
    }

    @Messages({"# {0} - how many", "# {1} - kind", "ClearedWords.some={0} of {1}"})
    private void toOne(List<Transfer> sent, int to, boolean through, List<String> lines) {
        String kinds = sent.stream()
                .filter(transfer -> transfer.to() == to && transfer.throughOrganiser() == through)
                .map(transfer -> Bundle.ClearedWords_some(
                        Balance.grouped(transfer.packets()), named.kinds().get(transfer.kind())))
                .collect(Collectors.joining(", "));
        if (!kinds.isEmpty()) {
            String name = named.members().get(to);
            lines.add(
                    through
                            ? Bundle.ClearedWords_through(
                                    name, named.members().get(named.organiser().orElseThrow()), kinds)
                            : Bundle.ClearedWords_to(name, kinds));
        }
    }

    private static String packets(int count) {
        return Bundle.ClearedWords_packets(count, Balance.grouped(count));
    }

    @Messages({
        "ClearedWords.one=one person",
        "# {0} - number in words",
        "ClearedWords.people={0} people",
        "ClearedWords.numbers=two three four five six seven eight nine ten eleven twelve"
    })
    private static String people(int count) {
        if (count == 1) {
            return Bundle.ClearedWords_one();
        }
        String[] words = Bundle.ClearedWords_numbers().split(" ");
        return Bundle.ClearedWords_people(count - 2 < words.length ? words[count - 2] : Balance.grouped(count));
    }
}
