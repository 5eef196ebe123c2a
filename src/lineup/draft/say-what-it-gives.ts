import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import { isSameValue } from '#lineup/compare-line-ups'
import type { LineUp } from '#lineup/line-up'
import { changesInside, secondsOf } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import type { PlayerId } from '#squad/player'

type Solved = { readonly problem: LineUpProblem; readonly lineUp: LineUp }

/** "everyone 35 minutes, six changes". */
export function sayWhatItGives({ problem, lineUp }: Solved): string {
  const minutes = problem.players.flatMap(({ isThere }, player) =>
    isThere.some(Boolean) ? [Math.round(secondsOf(problem, lineUp.plan[player]) / 60)] : [],
  )
  const [least, most] = [Math.min(...minutes), Math.max(...minutes)]
  const range = least === most ? `everyone ${least} minutes` : `everyone between ${least} and ${most} minutes`
  const promise = lineUp.proofs.promise.value > 0 ? ', a promise missed' : ''
  return `${range}, ${sayChanges(changesInside(problem, lineUp.plan))}${promise}`
}

/** What another line-up changes for the players: "costs one player 4 minutes", "as even as now". */
export function sayAgainst(other: Solved, now: Solved): string {
  const dueOf = new Map(now.problem.players.map(({ id }, player) => [id, player]))
  const moved = other.problem.players.flatMap(({ id }, player) => {
    const before = dueOf.get(id)
    if (before === undefined) return []
    const seconds =
      secondsOf(other.problem, other.lineUp.plan[player]) - secondsOf(now.problem, now.lineUp.plan[before])
    return Math.abs(seconds) >= 30 ? [{ id, seconds }] : []
  })
  const changes = sayChanges(changesInside(other.problem, other.lineUp.plan))
  const { minutes, promise } = other.lineUp.proofs
  const was = now.lineUp.proofs
  const worth = isSameValue(promise.value, was.promise.value)
    ? isSameValue(minutes.value, was.minutes.value)
      ? 'as even as now'
      : minutes.value > was.minutes.value
        ? 'less even'
        : 'more even'
    : promise.value > was.promise.value
      ? 'a promise would be missed'
      : 'keeps more of what was promised'
  return [changes, worth, sayMoved(moved), sayOther(other.lineUp, now.lineUp)].filter(Boolean).join(', ')
}

/** Goal, starts and lines that are shared less evenly then. */
function sayOther(other: LineUp, now: LineUp): string {
  const words = { goal: 'time in goal', starts: 'starts', lines: 'lines over the term' }
  const worse = (['goal', 'starts', 'lines'] as const).filter((goal) => {
    const [is, was] = [other.proofs[goal].value, now.proofs[goal].value]
    return is > was && !isSameValue(is, was)
  })
  return worse.length === 0 ? '' : `${andList(worse.map((goal) => words[goal]))} less evenly shared`
}

function sayMoved(moved: readonly { readonly id: PlayerId; readonly seconds: number }[]): string {
  const lost = moved.filter(({ seconds }) => seconds < 0)
  const won = moved.filter(({ seconds }) => seconds > 0)
  const most = (of: typeof moved) => Math.round(Math.max(...of.map(({ seconds }) => Math.abs(seconds))) / 60)
  const said = (of: typeof moved, verb: string) => {
    if (of.length === 0) return ''
    const who = of.length === 1 ? 'one player' : `${countWord(of.length)} players`
    const minutes = most(of)
    return `${verb} ${who} ${of.length === 1 ? '' : 'up to '}${minutes} ${minutes === 1 ? 'minute' : 'minutes'}`
  }
  return [said(lost, 'costs'), said(won, 'gives')].filter(Boolean).join(' and ')
}

function sayChanges(count: number): string {
  if (count === 0) return 'no changes inside periods'
  return `${countWord(count)} ${count === 1 ? 'change' : 'changes'}`
}
