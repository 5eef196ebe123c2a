import { sessionMinute } from '#common/session-minute'
import type { PlanDifference } from '#pitch/plan-differences'
import { counted } from '#ui/plural'

type Names = {
  readonly nameOf: (playerId: string) => string
  /** Of a round by its place in the plan's list, from 0. */
  readonly roundName: (round: number) => string
}

/** What was otherwise than planned, in a sentence. */
export function differenceSentence(one: PlanDifference, { nameOf, roundName }: Names): string {
  switch (one.kind) {
    case 'stoppedAfterRound':
      return one.round === null ? 'No round was played.' : `It stopped after ${roundName(one.round)}.`
    case 'fewerTurns':
    case 'moreTurns':
      return `${roundName(one.round)}: ${counted(one.played, 'turn')} where ${one.planned} were planned.`
    case 'missing':
      return `${nameOf(one.playerId)} was expected and did not come.`
    case 'extra':
      return `${nameOf(one.playerId)} came and was not planned for.`
    case 'late':
      return `${nameOf(one.playerId)} came late, in minute ${sessionMinute(one.from)}.`
    case 'left':
      return one.isOut
        ? `${nameOf(one.playerId)} was out for today from minute ${sessionMinute(one.at)} on.`
        : `${nameOf(one.playerId)} left in minute ${sessionMinute(one.at)}.`
    case 'changedDuringTurn':
      return `Places changed during turn ${Math.floor(one.turn) + 1}, in minute ${sessionMinute(one.at)}.`
    case 'plannedAnew':
      return `It was planned anew at the pitch. ${one.sentence}`.trim()
  }
}
