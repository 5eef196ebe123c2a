import type { Day } from '#common/time'
import { type Cell, writeCsv } from '#exchange/csv/write-csv'
import type { Spell } from '#match/match'
import { seatRoles, type Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** A practice with its turns, or a match with its spells; names are looked up by id. */
export type TurnsSource = {
  readonly sessions: readonly ({
    /** Code or id. */
    readonly key: string
    readonly day: Day
    readonly title: string
  } & (
    | { readonly kind: 'practice'; readonly turns: readonly Turn[] }
    | { readonly kind: 'match'; readonly spells: readonly Spell[] }
  ))[]
  readonly nameOf: (playerId: PlayerId) => string
  readonly keyOf: (playerId: PlayerId) => string
  readonly themeOf: (themeId: string) => string
}

const header = [
  'Date',
  'Practice or match',
  'Title',
  'Session',
  'Turn',
  'Start second',
  'End second',
  'Round',
  'Theme',
  'Area',
  'Role',
  'Player',
  'Code',
]

/** Turns and spells as CSV: a row for each place of a turn and for each spell; a turn without places has a row of its own. */
export function writeTurns({ sessions, nameOf, keyOf, themeOf }: TurnsSource): string {
  const player = (id: PlayerId): readonly Cell[] => [nameOf(id), keyOf(id)]
  const rows = sessions.flatMap((session): readonly (readonly Cell[])[] => {
    const frame = [session.day, session.kind, session.title, session.key]
    if (session.kind === 'match') {
      return session.spells.map(({ playerId, line, start, end }) => [
        ...frame,
        ...[null, start, end, null, null, null, line],
        ...player(playerId),
      ])
    }
    return session.turns.flatMap((turn, index) => {
      const theme = turn.themeId === null ? null : themeOf(turn.themeId)
      const common = [...frame, index + 1, turn.start, turn.end, turn.round ?? null, theme]
      const places = placesOf(turn)
      if (places.length === 0) return [[...common, null, null, null, null]]
      return places.map(({ area, role, playerId }) => [...common, area, role, ...player(playerId)])
    })
  })
  return writeCsv([header, ...rows])
}

function placesOf(turn: Turn) {
  return turn.stations.flatMap((station, index) =>
    seatRoles.flatMap((role) => station[role].map((playerId) => ({ area: index + 1, role, playerId }))),
  )
}
