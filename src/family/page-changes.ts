import type { FamilyPage } from '#family/family-page'

/** What a family would read that it does not read in the page confirmed before. */
export const familyChanges = ['sessions', 'sentences', 'minutes', 'themes', 'attendance', 'note'] as const
export type FamilyChange = (typeof familyChanges)[number] | 'first'

/** In the order of the page. `first`: nothing was confirmed before. Empty: the family would read the same. */
export function pageChanges(before: FamilyPage | null, after: FamilyPage): readonly FamilyChange[] {
  if (!before) return ['first']
  const parts = { before: partsOf(before), after: partsOf(after) }
  return familyChanges.filter(
    (part) => JSON.stringify(parts.before[part]) !== JSON.stringify(parts.after[part]),
  )
}

function partsOf({
  kinds,
  themes,
  note,
}: FamilyPage): Readonly<Record<(typeof familyChanges)[number], unknown>> {
  return {
    sessions: kinds.map(({ kind, held, written }) => [kind, held, written]),
    sentences: kinds.map(({ said }) =>
      said?.sentences.map((sentence) => Object.entries(sentence).sort(([a], [b]) => (a < b ? -1 : 1))),
    ),
    minutes: kinds.map(({ said }) => [
      said?.minutesThere,
      said?.did.map(({ doing, minutes, turns }) => [doing, minutes, turns]),
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
