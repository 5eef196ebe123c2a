import { isSameValue } from '#lineup/compare-line-ups'
import { sayLineUpFault } from '#lineup/draft/say-line-up-fault'
import type { LineUpSwap, SwappedLineUp } from '#lineup/draft/swap-line-up'
import type { LineUpPlan } from '#lineup/line-up'
import { secondsOf } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'

/** What a swap would do, in a coach's words; not allowed where it breaks a rule. */
export function sayLineUpSwap(
  problem: LineUpProblem,
  of: {
    readonly plan: LineUpPlan
    readonly swap: LineUpSwap
    readonly swapped: SwappedLineUp
    readonly nameOf: (player: string) => string
  },
): { readonly isAllowed: boolean; readonly sentences: readonly string[] } {
  const { swapped, nameOf } = of
  if (swapped.faults.length > 0) {
    const said = swapped.faults.map((fault) => sayLineUpFault(problem, fault, nameOf))
    return { isAllowed: false, sentences: [...new Set(said)] }
  }
  const sentences = [
    ...minutesOf(problem, of),
    sayPromise(swapped),
    sayEvenness(swapped),
    sayOther(swapped),
    sayChanges(swapped),
  ]
  return { isAllowed: true, sentences: sentences.filter(Boolean) }
}

function minutesOf(
  problem: LineUpProblem,
  { plan, swap, swapped, nameOf }: Parameters<typeof sayLineUpSwap>[1],
): readonly string[] {
  const said = [swap.one, swap.other].flatMap((player) => {
    const [was, is] = [secondsOf(problem, plan[player]), secondsOf(problem, swapped.plan[player])]
    const name = nameOf(problem.players[player]?.id ?? '')
    return was === is ? [] : [`${name} plays ${minutes(is)} minutes in place of ${minutes(was)}.`]
  })
  return said.length > 0 ? said : ['Both play as long as before.']
}

function sayPromise({ before, after }: SwappedLineUp): string {
  if (isSameValue(before.promise, after.promise)) return ''
  return after.promise > before.promise
    ? 'Somebody gets less than was promised then.'
    : 'It keeps more of what was promised.'
}

function sayEvenness({ before, after }: SwappedLineUp): string {
  if (isSameValue(before.minutes, after.minutes)) return 'It is as even as before.'
  return after.minutes > before.minutes ? 'Less even than before.' : 'More even than before.'
}

function sayOther({ before, after }: SwappedLineUp): string {
  const worse = (['goal', 'starts', 'lines'] as const).filter(
    (goal) => after[goal] > before[goal] && !isSameValue(before[goal], after[goal]),
  )
  const words = { goal: 'time in goal', starts: 'starts', lines: 'lines over the term' }
  return worse.length === 0 ? '' : `Less evenly shared: ${worse.map((goal) => words[goal]).join(', ')}.`
}

function sayChanges({ before, after }: SwappedLineUp): string {
  const more = after.changes - before.changes
  if (more === 0) return ''
  const count = `${Math.abs(more)} ${Math.abs(more) === 1 ? 'change' : 'changes'}`
  return more > 0 ? `${count} more.` : `${count} fewer.`
}

function minutes(seconds: number): string {
  const rounded = Math.round(seconds / 6) / 10
  return String(rounded)
}
