/** What will become of a row or a session of a file, in a sentence, with the answers a person can give. */
export type Saying = {
  /** `ask` and `wrong` hold the import up. */
  readonly tone: 'new' | 'change' | 'same' | 'ask' | 'wrong' | 'passed'
  readonly says: string
  readonly choices: readonly SayingChoice[]
}

export type SayingChoice = { readonly value: string; readonly label: string }

export const leaveOut: SayingChoice = { value: 'leaveOut', label: 'Leave it out' }

export function say(tone: Saying['tone'], says: string, choices: readonly SayingChoice[] = []): Saying {
  return { tone, says, choices }
}

/** What every kind of file says alike of rows that are not written. */
export const sayLeftOut = say('passed', 'Left out.', [leaveOut])

export function sayWrong(problems: readonly string[]): Saying {
  return say('wrong', problems.join(' '), [leaveOut])
}

export function sayPassedOver(why: string): Saying {
  return say('passed', `Passed over: ${why}.`)
}
