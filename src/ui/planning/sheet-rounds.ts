import type { PlannedTurn } from '#planning/practice-plan'
import type { DesignRound } from '#practice/design'

/** What a sheet knows of a plan: no pairs, limits, differences or reasons. */
export type SheetPlan = {
  readonly rounds: readonly DesignRound[]
  readonly turns: readonly PlannedTurn[]
  readonly players: readonly {
    readonly id: string
    readonly name: string
    readonly side: 0 | 1 | null
    readonly present: readonly (readonly [number, number])[]
  }[]
}

export type SheetName = { readonly name: string; readonly isOn: boolean }
export type SheetSide = { readonly letter: 'A' | 'D' | 'K'; readonly names: readonly SheetName[] }

export type SheetRound = {
  /** From 1. */
  readonly number: number
  readonly areas: readonly number[]
  /** Who is in goal throughout, where the round keeps its keepers; then they are not named turn by turn. */
  readonly keepers: readonly { readonly name: string; readonly area: number }[]
  readonly turns: readonly {
    readonly number: number
    readonly areas: readonly (readonly SheetSide[])[]
    readonly waiting: readonly SheetName[]
  }[]
}

const letters = { attack: 'A', defend: 'D', keep: 'K' } as const

/** A plan as its sheet shows it: round by round, names for places, who comes on marked inside a round. */
export function sheetRounds({ rounds, turns, players }: SheetPlan): readonly SheetRound[] {
  const names = new Map(players.map(({ id, name }) => [id, name]))
  return rounds.flatMap((design, index): SheetRound[] => {
    const own = turns.flatMap((turn, at) => (turn.round === index ? [{ turn, at }] : []))
    if (own.length === 0) return []
    const goals = own.map(({ turn }) => turn.stations.map(({ keep }) => keep.join()).join(' '))
    const isSteady =
      (design.keepersStay ?? false) && goals.every((goal) => goal === goals[0]) && goals[0] !== ''
    const keepers = isSteady
      ? (own[0]?.turn.stations.flatMap(({ keep }, index) => keep.map((id) => ({ id, area: index + 1 }))) ??
        [])
      : []
    const areaCount = Math.max(...own.map(({ turn }) => turn.stations.length))
    return [
      {
        number: index + 1,
        areas: Array.from({ length: areaCount }, (_, area) => area + 1),
        keepers: keepers.map(({ id, area }) => ({ name: names.get(id) ?? '', area })),
        turns: own.map(({ turn, at }, place) => {
          const before = place > 0 ? seatedIn(turns[at - 1]) : null
          const named = (id: string): SheetName => ({
            name: names.get(id) ?? '',
            isOn: before !== null && !before.has(id),
          })
          const seated = seatedIn(turn)
          const isThere = ({ present }: (typeof players)[number]) =>
            present.some(([from, to]) => from <= at + 1 && at + 1 <= to)
          return {
            number: at + 1,
            areas: turn.stations.map((station) =>
              (['attack', 'defend', 'keep'] as const)
                .filter((role) => station[role].length > 0 && !(role === 'keep' && isSteady))
                .map((role) => ({ letter: letters[role], names: station[role].map(named) })),
            ),
            waiting: players
              .filter((player) => isThere(player) && !seated.has(player.id))
              .map(({ name }) => ({ name, isOn: false })),
          }
        }),
      },
    ]
  })
}

function seatedIn(turn: SheetPlan['turns'][number] | undefined): ReadonlySet<string> {
  return new Set(turn?.stations.flatMap(({ attack, defend, keep }) => [...attack, ...defend, ...keep]) ?? [])
}
