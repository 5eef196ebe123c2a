import type { RequestKind, RequestOutcome } from '#rights/child-request'

/** What is asked, as the administrator reads it. */
export const requestWords: Readonly<Record<RequestKind, string>> = {
  copy: 'A copy of all that is kept',
  correction: 'Put something right',
  erasure: 'Erase the child',
  objection: 'An objection',
  question: 'A question',
}

/** The same as the family chooses it. */
export const askWords: Readonly<Record<RequestKind, string>> = {
  copy: 'Give me a copy of all that is kept of my child',
  correction: 'Something is wrong; put it right',
  erasure: 'Take my child’s name out of the book',
  objection: 'Stop something that you do with it',
  question: 'I have a question',
}

export const outcomeWords: Readonly<Record<RequestOutcome, string>> = {
  done: 'Done',
  refused: 'Refused',
  withdrawn: 'Taken back by the family',
}
