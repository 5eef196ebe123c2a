import type { PlayerId } from '#squad/player'

/** What a person answered to the question of a row: one of the book's players, somebody new, a guest, or pass the row over. */
export type RowAnswer =
  | { readonly kind: 'player'; readonly playerId: PlayerId }
  | { readonly kind: 'new' }
  /** New to the book, and no member of the squad. */
  | { readonly kind: 'guest' }
  | { readonly kind: 'leaveOut' }

/** By line of the file. */
export type RowAnswers = ReadonlyMap<number, RowAnswer>

/** Reads answers as a form sends them: `{ "7": "new", "9": "leaveOut", "12": "<player id>" }`. */
export function readAnswers(sent: Readonly<Record<string, string>>): RowAnswers {
  return new Map(Object.entries(sent).map(([line, answer]) => [Number(line), readAnswer(answer)] as const))
}

function readAnswer(answer: string): RowAnswer {
  return answer === 'new' || answer === 'guest' || answer === 'leaveOut'
    ? { kind: answer }
    : { kind: 'player', playerId: answer }
}
