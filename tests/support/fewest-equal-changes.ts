/**
 * Fewest players coming on inside periods when everyone plays exactly as long, found by trying every choice of who is on
 * in every window. Players are alike, so a state is the list of (windows still to play, was on), sorted.
 */
export function fewestEqualChanges(match: {
  readonly players: number
  readonly onPitch: number
  readonly periods: number
  readonly windows: number
}): number {
  const { players, onPitch, periods, windows } = match
  const each = (onPitch * periods * windows) / players
  if (!Number.isInteger(each)) throw new Error('Equal time does not come out even in these windows.')
  const choices = setsOf(players, onPitch)
  let states = new Map<string, number>([[keyOf(Array.from({ length: players }, () => each * 2)), 0]])
  for (let window = 0; window < periods * windows; window += 1) {
    const next = new Map<string, number>()
    const left = periods * windows - window
    for (const [key, changes] of states) {
      const state = key.split(',').map(Number)
      for (const chosen of choices) {
        let more = 0
        let isPossible = true
        const then = state.map((code, player) => {
          const [toPlay, wasOn] = [code >> 1, code & 1]
          const isOn = chosen[player] === true
          if (isOn && !wasOn && window % windows > 0) more += 1
          const after = toPlay - (isOn ? 1 : 0)
          if (after < 0 || after > left - 1) isPossible = false
          return after * 2 + (isOn ? 1 : 0)
        })
        if (!isPossible) continue
        const sorted = keyOf(then)
        const known = next.get(sorted)
        if (known === undefined || changes + more < known) next.set(sorted, changes + more)
      }
    }
    states = next
  }
  return Math.min(...states.values())
}

function keyOf(state: readonly number[]): string {
  return [...state].sort((one, other) => one - other).join(',')
}

function setsOf(count: number, size: number): readonly (readonly boolean[])[] {
  return Array.from({ length: 2 ** count }, (_, bits) =>
    Array.from({ length: count }, (__, index) => (bits & (1 << index)) !== 0),
  ).filter((set) => set.filter(Boolean).length === size)
}
