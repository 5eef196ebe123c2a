import type { MatchSetAsideReason } from '#touchline/match-set-aside'

/** Why a tap changed nothing, where a coach wants to know; the others go without saying. */
const asideWords: Partial<Readonly<Record<MatchSetAsideReason, string>>> = {
  alreadyBegun: 'A kick-off was tapped twice: the first counts.',
  alreadyEnded: 'A whistle was tapped twice: the first counts.',
  sameChange: 'Two phones said the same of a change: the first counts.',
  notRunning: 'Something was tapped while no period was running, and was left out.',
  isOut: 'Somebody who is out for today was tapped as here: out for today stands.',
  wentOn: 'Full time was tapped, and then more was played: the match went on.',
}

/** Each thing once. */
export function matchAsideSentences(reasons: readonly MatchSetAsideReason[]): readonly string[] {
  return [...new Set(reasons.flatMap((reason) => asideWords[reason] ?? []))]
}
