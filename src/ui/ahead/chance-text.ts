import type { ChanceInside } from '#ahead/chance/chances'

/** "87 %", and within what it lies 95 times in 100: "87 % (84-89)". */
export function chanceText({ chance, low, high }: ChanceInside): string {
  const [own, from, to] = [chance, low, high].map(percentOf)
  return from === to ? `${own} %` : `${own} % (${from}–${to})`
}

/** Whole, but what is not certain never reads 0 or 100. */
function percentOf(chance: number): number {
  if (chance <= 0 || chance >= 1) return chance <= 0 ? 0 : 100
  return Math.min(99, Math.max(1, Math.round(chance * 100)))
}
