import type { PriceProof } from '#solver/generate-columns'
import { arcCostsOf, type Generation } from '#solver/generation'

/**
 * Arcs that no plan cheaper than `value` has, by player and turn (1: closed), for all that the prices of a bound can
 * show. Values in units²; `bound` is that of the proof. Reduced-cost fixing, common practice.
 */
export function closedArcs(
  generation: Generation,
  proof: PriceProof,
  { value, bound }: { readonly value: number; readonly bound: number },
): readonly (readonly Uint8Array[])[] {
  const { rows, near, part } = generation
  const room = value - bound
  return rows.pricers.map((pricer, player) => {
    const arcCosts = arcCostsOf(generation, player, proof.prices)
    const most = (proof.byPlayer[player] ?? 0) + room
    return pricer
      .arcBounds({ arcCosts, near: near[player] ?? [] })
      .map((bounds, turn) =>
        Uint8Array.from(bounds, (least, arc) =>
          least >= most || part.closed?.[player]?.[turn]?.[arc] ? 1 : 0,
        ),
      )
  })
}
