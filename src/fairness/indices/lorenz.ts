/** The part of players with least that has this part of the whole; both 0-1. */
export type LorenzPoint = { readonly players: number; readonly share: number }

/** Lorenz curve from (0, 0) to (1, 1), one point more than values. Empty for nobody; all zeros: the line of equality. */
export function lorenzCurve(values: readonly number[]): readonly LorenzPoint[] {
  if (values.length === 0) return []
  const sum = values.reduce((total, x) => total + x, 0)
  const sorted = [...values].sort((a, b) => a - b)
  let soFar = 0
  const points = sorted.map((value, index) => {
    soFar += value
    const players = (index + 1) / sorted.length
    return { players, share: sum === 0 ? players : soFar / sum }
  })
  return [{ players: 0, share: 0 }, ...points]
}
