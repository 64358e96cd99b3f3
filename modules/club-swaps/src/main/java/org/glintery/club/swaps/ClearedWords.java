package org.glintery.club.swaps;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
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
        "# {1} - wanted",
        "ClearedWords.met={0} of {1} wanted packets change hands; no plan does better.",
        "# {0} - met",
        "# {1} - wanted",
        "# {2} - bound",
        "ClearedWords.metAtLeast={0} of {1} wanted packets change hands; more than {2} can''t.",
        "ClearedWords.nothing=Nothing can change hands: nobody could get something for what they give."
    })
    private String wants() {
        int wanted = clearing.met().stream().mapToInt(Clearing.Met::wanted).sum();
        if (clearing.wantsBound() == 0) {
            return Bundle.ClearedWords_nothing();
        }
        return clearing.wantsProven()
                ? Bundle.ClearedWords_met(clearing.wantsMet(), wanted)
                : Bundle.ClearedWords_metAtLeast(clearing.wantsMet(), wanted, clearing.wantsBound());
    }

    @Messages({
        "# {0} - parcels",
        "# {1} - postage",
        "ClearedWords.proven={0,choice,0#No parcels|1#One parcel|1<{0} parcels}, {1} in postage; for the same packets it "
                + "can''t be less.",
        "# {0} - parcels",
        "# {1} - postage",
        "# {2} - least parcels",
        "# {3} - least postage",
        "ClearedWords.open={0} parcels, {1} in postage; whether it can be less is not known, but not below {2} parcels "
                + "and {3}."
    })
    String parcels() {
        String postage = named.price(clearing.postage()).toPlainString();
        return clearing.postage() == clearing.postageBound() && clearing.parcels() == clearing.parcelsBound()
                ? Bundle.ClearedWords_proven(clearing.parcels(), postage)
                : Bundle.ClearedWords_open(
                        clearing.parcels(),
                        postage,
                        clearing.parcelsBound(),
                        named.price(clearing.postageBound()).toPlainString());
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
        "ClearedWords.packets={0,choice,1#1 packet|1<{0} packets}",
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
                            ? Bundle.ClearedWords_both(name, packets(given), people(people.length), number(got))
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
                        transfer.packets(), named.kinds().get(transfer.kind())))
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
        return Bundle.ClearedWords_packets(count);
    }

    private static String number(int count) {
        return String.valueOf(count);
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
        return Bundle.ClearedWords_people(count - 2 < words.length ? words[count - 2] : number(count));
    }
}
