/**
 * What a coach says to a flag in one tap. `text` is kept with the flag and found again by it: never changed once in use.
 * `nextStep` is what a family may read of it, after "next step:".
 */
export const shortAnswers = [
  {
    text: 'Putting right next time',
    nextStep: 'the coach puts it right next time',
  },
  { text: 'Talked it over', nextStep: 'the coach has talked about it with your child' },
  { text: 'The player’s wish', nextStep: 'it stays as your child asked for it' },
  { text: 'Agreed with family', nextStep: 'it stays as agreed with you' },
  { text: 'Looking again in 2 weeks', nextStep: 'the coach looks at it again in two weeks' },
] as const

/** A coach's own words are for coaches: they may name others. A family is sent to the coach instead. */
export function nextStepOf(reason: string): string {
  return shortAnswers.find(({ text }) => text === reason)?.nextStep ?? 'the coach will tell you'
}
