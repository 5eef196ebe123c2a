import type { LuckPractice } from '#fairness/luck/draw-of-practices'
import type { Station, Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

type Seats = { readonly [Role in keyof Station]?: string }

/** "ab" are two players; a turn is its seats, everyone else of the practice waits. */
export function luckPractice(
  players: string,
  turns: readonly (Seats & Partial<Pick<Turn, 'round' | 'continuesWait' | 'continuesTurn'>>)[],
  { able = '', still = '' }: { readonly able?: string; readonly still?: string } = {},
): LuckPractice {
  const all: readonly PlayerId[] = [...players]
  return {
    able: new Set(able),
    still: new Set(still),
    practice: {
      register: all.map((playerId) => ({ playerId, from: 0, to: turns.length * 60 })),
      turns: turns.map(({ attack = '', defend = '', keep = '', ...rest }, at) => ({
        start: at * 60,
        end: (at + 1) * 60,
        themeId: null,
        stations: [{ attack: [...attack], defend: [...defend], keep: [...keep] }],
        ...rest,
      })),
    },
  }
}
