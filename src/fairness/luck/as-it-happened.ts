import type { Written } from '#squad/written'

/** Written as it happened: what is as planned is even by construction, and what was typed in later is from memory. */
export function isAsItHappened(written: Written): boolean {
  return written === 'tapped' || written === 'roundByRound'
}

/** The part of all turns that was written as they happened; null: no turn was written. */
export function partAsItHappened(
  practices: readonly { readonly written: Written; readonly turns: number }[],
): number | null {
  const sum = (of: typeof practices) => of.reduce((all, { turns }) => all + turns, 0)
  const all = sum(practices)
  return all === 0 ? null : sum(practices.filter(({ written }) => isAsItHappened(written))) / all
}

/** Single players are spoken of only where most turns were written as they happened. */
export function speaksOfPlayers(part: number | null): boolean {
  return part !== null && part > 1 / 2
}
