import type { SetAsideReason } from '#pitch/set-aside'

/** Why a tap changed nothing, where a coach wants to know; the others go without saying. */
const asideWords: Partial<Readonly<Record<SetAsideReason, string>>> = {
  alreadyBegun: 'Begin was tapped twice: the first counts.',
  sameRound: 'Two phones said that a round was done: the first counts.',
  sameTurn: 'Two phones started the same ball: the first counts.',
  isOut: 'Somebody who is out for today was tapped as here: out for today stands.',
  noTime: 'A ball had no time between those before and after it, and was left out.',
  nobodyThere: 'Nobody who had a place in a ball was there: it was left out.',
  wentOn: 'Stop was tapped, and then more was played: the practice went on.',
}

/** Each thing once. */
export function asideSentences(reasons: readonly SetAsideReason[]): readonly string[] {
  return [...new Set(reasons.flatMap((reason) => asideWords[reason] ?? []))]
}
