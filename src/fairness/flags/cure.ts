import type { Seconds } from '#common/time'
import type { Finding, FlagRule } from '#fairness/flags/flag-rule'
import { minutesInWords } from '#fairness/flags/plain-words'
import { noise } from '#fairness/noise'
import type { SessionKind } from '#fairness/standing'

/** The smallest thing that would put a finding right. */
export type Cure =
  /**
   * So many turns more (or fewer) of the squad's median length, on top of what is due anyway. `longerTurns`: even in
   * turns and short in seconds, so the same time should come as longer turns, not more of them.
   */
  | {
      readonly kind: 'moreTurns' | 'fewerTurns' | 'longerTurns'
      readonly turns: number
      readonly seconds: Seconds
    }
  | { readonly kind: 'moreMatchTime' | 'lessMatchTime'; readonly turns: null; readonly seconds: Seconds }
  /** The rule's own advice. */
  | { readonly kind: 'advice'; readonly turns: null; readonly seconds: null }

const adviceOnly: Cure = { kind: 'advice', turns: null, seconds: null }

/** A difference of less than a turn is none. */
const evenTurns = 1

/**
 * The fewest turns that bring the gap inside the band, or the match time that does.
 * `medianTurnSeconds`: of the squad's written practice turns; null without any, and then no number of turns can be named.
 */
export function cureOf(
  finding: Finding,
  at: {
    readonly rule: Pick<FlagRule, 'advice'>
    readonly scope: SessionKind
    readonly medianTurnSeconds: Seconds | null
  },
): Cure {
  if (at.rule.advice !== undefined || finding.gapSeconds === 0) return adviceOnly
  const isShort = finding.gapSeconds < 0
  const gain = finding.gainPerTurn ?? 1
  if (gain <= 0) return adviceOnly
  const seconds = Math.max(0, Math.abs(finding.gapSeconds) - finding.toleranceSeconds) / gain
  if (at.scope === 'match') return { kind: isShort ? 'moreMatchTime' : 'lessMatchTime', turns: null, seconds }
  const turns = fewestTurns(finding, at.medianTurnSeconds)
  if (turns === null) return adviceOnly
  if (!isShort) return { kind: 'fewerTurns', turns, seconds }
  const isEvenInTurns = finding.turnGap !== undefined && finding.turnGap > -evenTurns + noise
  return { kind: isEvenInTurns ? 'longerTurns' : 'moreTurns', turns, seconds }
}

/** At least one: a flag that a turn cannot help should not have a number of them. Null when turns cannot narrow the gap. */
export function fewestTurns(
  finding: Pick<Finding, 'gapSeconds' | 'toleranceSeconds' | 'gainPerTurn'>,
  medianTurnSeconds: Seconds | null,
): number | null {
  const gain = (medianTurnSeconds ?? 0) * (finding.gainPerTurn ?? 1)
  if (gain <= 0) return null
  const isInside = (turns: number) =>
    Math.abs(finding.gapSeconds) - turns * gain <= finding.toleranceSeconds + noise
  let turns = Math.max(1, Math.ceil((Math.abs(finding.gapSeconds) - finding.toleranceSeconds) / gain))
  // The division may round across a whole number; the band itself decides.
  while (!isInside(turns)) turns += 1
  while (turns > 1 && isInside(turns - 1)) turns -= 1
  return turns
}

/** In a coach's words. Of what, the sentence of the flag has said before it. */
export function cureSentence(cure: Cure, advice: string | undefined): string {
  const turns = (count: number) => (count === 1 ? '1 turn' : `${count} turns`)
  switch (cure.kind) {
    case 'moreTurns':
      return `${turns(cure.turns)} more would bring it to about even.`
    case 'fewerTurns':
      return `${turns(cure.turns)} of something else would bring it to about even.`
    case 'longerTurns':
      return `Same number of turns, shorter ones: longer turns, not more of them (${minutesInWords(cure.seconds)} in all).`
    case 'moreMatchTime':
      return `${minutesInWords(cure.seconds)} more would bring it to about even.`
    case 'lessMatchTime':
      return `${minutesInWords(cure.seconds)} of something else would bring it to about even.`
    case 'advice':
      return advice ?? 'Talk it over with the squad’s coaches.'
  }
}
