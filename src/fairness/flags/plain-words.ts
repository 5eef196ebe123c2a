import { secondsInMinute } from '#common/time'
import type { Situation } from '#exposure/column'
import type { Finding } from '#fairness/flags/flag-rule'

/** "22 min", or "less than a minute". The sign is for the sentence around it. */
export function minutesInWords(seconds: number): string {
  const minutes = Math.round(Math.abs(seconds) / secondsInMinute)
  return minutes === 0 ? 'less than a minute' : `${minutes} min`
}

/** "once", "twice", "3 times". */
export function timesInWords(times: number): string {
  if (times === 1) return 'once'
  return times === 2 ? 'twice' : `${times} times`
}

const situationWords = {
  outnumbering: 'more of us',
  level: 'even numbers',
  outnumbered: 'fewer of us',
} satisfies Record<Situation, string>

/** The situation as the player's side has it, in a coach's words. */
export function situationInWords(situation: string): string {
  return situationWords[situation as Situation] ?? situation
}

/** "22 min less attacking than an even share; up to 10 min is about even." */
export function differenceSentence(finding: Finding, what: string): string {
  const side = finding.gapSeconds < 0 ? 'less' : 'more'
  const band = minutesInWords(finding.toleranceSeconds)
  return `${minutesInWords(finding.gapSeconds)} ${side} ${what} than an even share; up to ${band} is about even.`
}
