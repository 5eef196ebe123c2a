import type { Choice } from '#pitch/pitch-state'
import type { PlayedTurn } from '#pitch/played-turns'
import type { PlannedTurn, PracticePlan } from '#planning/practice-plan'
import type { Turn } from '#practice/turn'

/**
 * The turns of the book: one for each stretch in which nobody changed place, the later ones of a turn joined to the
 * first. The second half of a free game goes on with the waits of the first.
 */
export function turnsOfPitch(
  played: readonly PlayedTurn[],
  at: {
    readonly plan: PracticePlan | null
    /** The plan's turns as they stand. */
    readonly turns: readonly PlannedTurn[]
    readonly choices: readonly Pick<Choice, 'turn' | 'by'>[]
  },
): readonly Turn[] {
  return played.flatMap((turn) => {
    const round = turn.round === null ? null : (at.plan?.design.rounds[turn.round] ?? null)
    const choice = at.choices.findLast(({ turn: index }) => index === turn.index)
    const isSecondHalf = (round?.isFreeGame ?? false) && halfOf(turn, at.turns) === 1
    return turn.parts.map(
      ({ start, end, stations }, part): Turn => ({
        start,
        end,
        themeId: at.plan?.design.themeId ?? null,
        stations,
        round: round?.title || null,
        chosenBy: choice?.by === 'attack' ? 'attack' : null,
        continuesWait: isSecondHalf && part === 0,
        continuesTurn: part > 0,
      }),
    )
  })
}

/** Turns of a free game go in pairs: its first half or its second. */
function halfOf(turn: PlayedTurn, planned: readonly PlannedTurn[]): 0 | 1 {
  const before = planned.slice(0, turn.index).filter(({ round }) => round === turn.round).length
  return (before % 2) as 0 | 1
}
