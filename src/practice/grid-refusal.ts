import { sessionMinute } from '#common/session-minute'
import type { AreasRefusal } from '#practice/grid-areas'
import type { SeatRole } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Why what stands in the grid cannot be written. `column` is from 0. */
export type GridRefusal = { readonly column: number } & (
  | AreasRefusal
  | { readonly reason: 'someAreasMissing'; readonly role: SeatRole }
  | { readonly reason: 'notThere'; readonly playerId: PlayerId; readonly turnStart: number }
  | { readonly reason: 'startsTooEarly'; readonly startsAt: number; readonly before: number }
  | { readonly reason: 'freeGameNeedsTwoSides' }
  | { readonly reason: 'freeGameNeedsWholeMinutes'; readonly lengthSeconds: number }
)

const doing: Readonly<Record<SeatRole, string>> = {
  attack: 'attacking',
  defend: 'defending',
  keep: 'in goal',
}

export type SentenceParts = {
  readonly columnTitle: (column: number) => string
  readonly nameOf: (playerId: PlayerId) => string
}

/** What is wrong in a column, and what would be right. */
export function gridSentence(refusal: GridRefusal, { columnTitle, nameOf }: SentenceParts): string {
  const title = columnTitle(refusal.column)
  switch (refusal.reason) {
    case 'areasDoNotFit':
      return `${title}: ${refusal.count} ${doing[refusal.role]} do not go evenly into ${refusal.areas} areas. Write the area behind every A and D (A1, A2), or make it ${fittingCounts(refusal)}.`
    case 'someAreasMissing':
      return `${title}: some players ${doing[refusal.role]} have an area and some do not. Write it behind all of them (A1, A2), or behind none.`
    case 'notThere':
      return `${title}: ${nameOf(refusal.playerId)} has a place but was not there then (it begins at minute ${sessionMinute(refusal.turnStart)}). Empty that cell, or correct when ${nameOf(refusal.playerId)} was there.`
    case 'startsTooEarly':
      return `${title}: it starts at minute ${sessionMinute(refusal.startsAt)}, and what is before it ends at minute ${sessionMinute(refusal.before)}. Make it start then or later.`
    case 'freeGameNeedsTwoSides':
      return `${title}: a free game needs players on both sides. Mark one side A and the other D.`
    case 'freeGameNeedsWholeMinutes':
      return `${title}: a free game lasts whole minutes, at least one; ${refusal.lengthSeconds} seconds is not.`
  }
}

function fittingCounts({ count, areas }: { readonly count: number; readonly areas: number }): string {
  const below = Math.floor(count / areas) * areas
  const above = Math.ceil(count / areas) * areas
  return below === above ? 'the same number in each' : below === 0 ? `${above}` : `${below} or ${above}`
}
