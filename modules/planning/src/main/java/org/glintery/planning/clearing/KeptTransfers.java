package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.planning.flow.FlowNetwork;
import org.glintery.planning.flow.Work;

/**
 * How much of an earlier clearing can stay: among the best plans of a face one with as many packets as possible that go from
 * the same to the same trader as before.
 *
 * @param kept what stays
 * @param plan all of the plan, with what stays in it
 */
record KeptTransfers(List<Sent> kept, List<Sent> plan) {

    int packets() {
        return kept.stream().mapToInt(Sent::packets).sum();
    }

    /**
     * @param straight the network without an organiser
     * @return empty when no plan of the face keeps the rule that nobody gives for nothing
     */
    static Optional<KeptTransfers> of(ParcelNetwork straight, List<Transfer> before, Work work) {
        return new Gates(straight, before).best(work);
    }

    /** The packets of an offer that go to one trader. */
    private record Stream(int offer, int to) {}

    /** The network with a gate for each stream there was before: what passes is rewarded up to what went then. */
    private static final class Gates {
        private final ParcelNetwork net;
        private final FlowNetwork network;
        private final Map<Stream, Transfer> before = new HashMap<>();
        private final Map<Stream, Integer> keptArc = new LinkedHashMap<>();

        Gates(ParcelNetwork net, List<Transfer> transfers) {
            this.net = net;
            transfers.forEach(this::remember);
            FlowNetwork plain = net.network();
            FlowNetwork.Builder builder = new FlowNetwork.Builder();
            builder.nodes(plain.nodes);
            Map<Stream, Integer> gates = new LinkedHashMap<>();
            Map<Stream, Integer> sources = new HashMap<>();
            for (int arc = 0; arc < plain.arcs; arc++) {
                int from = plain.from[arc];
                Optional<Stream> stream = stream(arc).filter(before::containsKey);
                if (stream.isPresent()) {
                    sources.put(stream.get(), from);
                    from = gates.computeIfAbsent(stream.get(), s -> builder.nodes(1));
                }
                builder.arc(from, plain.to[arc], plain.low[arc], plain.high[arc]);
            }
            gates.forEach((stream, gate) -> {
                int most = plain.high[net.offerArc()[stream.offer]];
                keptArc.put(
                        stream,
                        builder.arc(
                                sources.get(stream), gate, 0, before.get(stream).packets()));
                builder.arc(sources.get(stream), gate, 0, most);
            });
            network = builder.build();
        }

        private void remember(Transfer transfer) {
            for (int i = 0; i < net.offerArc().length; i++) {
                Offer offer = net.round().offers().get(i);
                if (offer.trader() == transfer.from() && offer.kind() == transfer.kind()) {
                    before.merge(new Stream(i, transfer.to()), transfer, (a, b) -> a.with(a.packets() + b.packets()));
                }
            }
        }

        private Optional<Stream> stream(int arc) {
            return arc < net.lanes().size()
                    ? Optional.of(new Stream(
                            net.lanes().get(arc).offer(),
                            net.traderOfWant(net.lanes().get(arc).want())))
                    : Optional.empty();
        }

        Optional<KeptTransfers> best(Work work) {
            long[] cost = new long[network.arcs];
            keptArc.values().forEach(arc -> cost[arc] = -1);
            GivingRule rule = GivingRule.of(net.round(), net.offerArc(), net.gets());
            return new RuledFlow(network, cost, rule, work)
                    .cheapest(network.bounds())
                    .map(this::taken);
        }

        private KeptTransfers taken(int[] flow) {
            Map<Stream, Integer> left = new HashMap<>();
            keptArc.forEach((stream, arc) -> left.put(stream, flow[arc]));
            List<Sent> kept = new ArrayList<>();
            List<Sent> plan = new ArrayList<>();
            for (int arc = 0; arc < net.lanes().size(); arc++) {
                Stream stream = stream(arc).orElseThrow();
                Lane lane = net.lanes().get(arc);
                int stays = Math.min(flow[arc], left.getOrDefault(stream, 0));
                if (stays > 0) {
                    boolean through = before.get(stream).throughOrganiser();
                    kept.add(new Sent(lane.offer(), lane.want(), stays, through));
                    left.merge(stream, -stays, Integer::sum);
                }
                if (flow[arc] > stays) {
                    plan.add(new Sent(lane.offer(), lane.want(), flow[arc] - stays, false));
                }
            }
            plan.addAll(kept);
            return new KeptTransfers(kept, plan);
        }
    }
}
