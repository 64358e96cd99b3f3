package org.glintery.club.swaps;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.glintery.planning.clearing.Clearing;

/**
 * What {@code swap clear} answers.
 *
 * @param wantsMet packets that meet wants, and {@code bound} how many could be met by any plan that puts the same
 *     priorities first; {@code proven} when no plan meets more
 */
public record Cleared(
        List<Packets> transfers, int wantsMet, int bound, boolean proven, long parcels, BigDecimal postage) {

    /**
     * Packets of one kind from one member to another.
     *
     * @param through the organiser, when they go there first
     */
    public record Packets(String from, String to, String kind, int packets, Optional<String> through) {}

    static Cleared of(NamedRound named, Clearing clearing) {
        List<Packets> transfers = clearing.transfers().stream()
                .map(transfer -> new Packets(
                        named.members().get(transfer.from()),
                        named.members().get(transfer.to()),
                        named.kinds().get(transfer.kind()),
                        transfer.packets(),
                        transfer.throughOrganiser()
                                ? Optional.of(
                                        named.members().get(named.organiser().orElseThrow()))
                                : Optional.empty()))
                .toList();
        return new Cleared(
                transfers,
                clearing.wantsMet(),
                clearing.wantsBound(),
                clearing.wantsProven(),
                clearing.parcels(),
                named.price(clearing.postage()));
    }
}
