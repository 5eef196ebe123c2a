import type { Day } from '#common/time'
import type { FamilyPage } from '#family/family-page'
import type { FamilySentence } from '#family/family-sentences'

/** What a family would read that it does not read in the page confirmed before. */
export const familyChanges = ['sessions', 'sentences', 'minutes', 'themes', 'attendance', 'note'] as const
export type FamilyChange = (typeof familyChanges)[number] | 'first'

/** In the order of the page. `first`: nothing was confirmed before. Empty: the family would read the same. */
export function pageChanges(before: FamilyPage | null, after: FamilyPage): readonly FamilyChange[] {
  if (!before) return ['first']
  const day = after.upTo
  const parts = { before: partsOf(before, day), after: partsOf(after, day) }
  return familyChanges.filter(
    (part) => JSON.stringify(parts.before[part]) !== JSON.stringify(parts.after[part]),
  )
}

function partsOf(
  { kinds, themes, note }: FamilyPage,
  day: Day,
): Readonly<Record<(typeof familyChanges)[number], unknown>> {
  return {
    sessions: kinds.map(({ kind, held, written }) => [kind, held, written]),
    sentences: kinds.map(({ said }) => said?.sentences.map((sentence) => partsOfSentence(sentence, day))),
    minutes: kinds.map(({ said }) => [
      said?.minutesThere,
      said?.did.map(({ doing, minutes, turns }) => [doing, minutes, turns]),
      said?.matches ? [said.matches.matches, said.matches.starts, said.matches.lines] : null,
    ]),
    themes: themes.map(({ name, missed, practices, practicesPlayed }) => [
      name,
      missed,
      practices,
      practicesPlayed,
    ]),
    attendance: kinds.map(({ attendance }) => attendance.map((one) => [one.day, one.attendance])),
    note,
  }
}

/** A wait that is over reads as no wait. In one order, whatever order the database hands it back in. */
function partsOfSentence(sentence: FamilySentence, day: Day): unknown {
  const waits = sentence.says === 'fewer' && sentence.waitsUntil !== null && sentence.waitsUntil > day
  const read = { ...sentence, waitsUntil: waits ? sentence.waitsUntil : null }
  return Object.entries(read).sort(([a], [b]) => (a < b ? -1 : 1))
}
