import type { Policy } from '#squad/policy'
import { counted } from '#ui/plural'

export type PolicySentence = { readonly about: string; readonly text: string }

const percent = (part: number) => `${Math.round(part * 1000) / 10} %`
const minutes = (seconds: number) => counted(seconds / 60, 'minute')

/** The rules as a coach would say them, one sentence each, always in the same order. */
export function policySentences(policy: Policy): readonly PolicySentence[] {
  return [
    { about: 'About even', text: aboutEven(policy) },
    {
      about: 'Waiting',
      text: `Nobody waits more than ${counted(policy.restLimitTurns, 'turn')} in a row.`,
    },
    {
      about: 'Goal',
      text: `Nobody is in goal for more than ${partText(policy.goalShareLimit)} of their time in a term.`,
    },
    {
      about: 'Matches',
      text: `Everybody who is there plays at least ${partText(policy.leastMatchShare)} of the time of a match.`,
    },
    { about: 'The middle', text: theMiddle(policy) },
    { about: 'Attack and defence in matches', text: matchesNeeded(policy) },
    { about: 'First flags', text: firstFlags(policy) },
    {
      about: 'Writing down',
      text:
        policy.writtenShareNeeded === 0
          ? 'A squad is judged however little is written down.'
          : `A squad is judged once at least ${percent(policy.writtenShareNeeded)} of its sessions are written down.`,
    },
  ]
}

function aboutEven({ toleranceSeconds, toleranceShare }: Policy): string {
  if (toleranceSeconds === 0 && toleranceShare === 0) return 'Any difference from an even share is one.'
  if (toleranceShare === 0)
    return `A difference of up to ${minutes(toleranceSeconds)} from an even share is about even.`
  if (toleranceSeconds === 0)
    return `A difference of up to ${percent(toleranceShare)} of an even share is about even.`
  return `A difference of up to ${minutes(toleranceSeconds)} from an even share is about even, or up to ${percent(toleranceShare)} of the share where that is more.`
}

function theMiddle({ middleAttackShare }: Policy): string {
  if (middleAttackShare === 0.5)
    return 'Time in the middle of a match counts half as attack and half as defence.'
  if (middleAttackShare === 0) return 'Time in the middle of a match counts as defence.'
  if (middleAttackShare === 1) return 'Time in the middle of a match counts as attack.'
  return `Time in the middle of a match counts ${percent(middleAttackShare)} as attack and ${percent(1 - middleAttackShare)} as defence.`
}

function matchesNeeded({ matchesBeforeRoles }: Policy): string {
  if (matchesBeforeRoles <= 1) return 'Attack and defence in matches are looked at from the first match on.'
  return `Attack and defence in matches are looked at over at least ${counted(matchesBeforeRoles, 'match', 'matches')}; before that, only time played, time off and goal.`
}

function firstFlags({ sessionsBeforeFlags }: Policy): string {
  if (sessionsBeforeFlags <= 1) return 'Flags may speak from the first written session of a player on.'
  return `No flag speaks before ${counted(sessionsBeforeFlags, 'session')} of a player are written down, goal-keeping and safety excepted.`
}

function partText(part: number): string {
  if (part === 0.5) return 'half'
  if (part === 1) return 'all'
  return percent(part)
}
