import type { UndoStep } from '#pitch/undo-steps'
import type { PlayerId } from '#squad/player'

type NotOutDeed =
  | { readonly kind: 'undo'; readonly undoes: string; readonly secondAnswer: true }
  | {
      readonly kind: 'register'
      readonly playerId: PlayerId
      readonly state: 'here'
      readonly secondAnswer: true
    }

/** What to tap so that somebody who was out for today is here again: the second answer was given. */
export function notOutAfterAll(
  undoable: readonly UndoStep<{ readonly kind: string }>[],
  playerId: PlayerId,
): readonly NotOutDeed[] {
  const undos = undoable
    .filter(
      ({ event: { deed }, needsSecondAnswer }) =>
        needsSecondAnswer && 'playerId' in deed && deed.playerId === playerId,
    )
    .flatMap(({ event, also }) =>
      [event.id, ...also].map((undoes) => ({ kind: 'undo', undoes, secondAnswer: true }) as const),
    )
  // The book alone has it so: there is no tap to be taken back.
  return undos.length > 0 ? undos : [{ kind: 'register', playerId, state: 'here', secondAnswer: true }]
}
