import { checkMatch } from '#match/checks/check-match'
import type { Spell } from '#match/match'
import type { PlayerId } from '#squad/player'
import type { MatchBook } from '#touchline/book-of-match'
import type { PlacedPlayer } from '#touchline/match-deed'

type Times = Pick<Spell, 'start' | 'end'>

export function spellsAt<Own extends Times>(spells: readonly Own[], second: number): readonly Own[] {
  return spells.filter(({ start, end }) => start <= second && second < end)
}

/** Who a plan, or a record, has on at a second of its own time, and where. */
export function onByPlan(
  { spells }: { readonly spells: readonly Spell[] },
  second: number,
): readonly PlacedPlayer[] {
  return spellsAt(spells, second).map(({ playerId, line }) => ({ playerId, line }))
}

export function secondsOfSpells(spells: readonly Times[]): number {
  return spells.reduce((sum, { start, end }) => sum + end - start, 0)
}

export function secondsOfPlayer(spells: readonly (Times & Pick<Spell, 'playerId'>)[], id: PlayerId): number {
  return secondsOfSpells(spells.filter(({ playerId }) => playerId === id))
}

/** What the checks of a written match find in a book that was tapped: its register has none but who was there. */
export function faultsOfBook(book: MatchBook) {
  return checkMatch({ ...book, register: book.register.filter(({ state }) => state === 'here') })
}
