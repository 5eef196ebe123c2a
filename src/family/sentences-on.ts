import type { Day } from '#common/time'
import type { FamilySentence } from '#family/family-sentences'

/** The sentences of a confirmed page that may be read on a day: the others still wait for the coach's next step. */
export function sentencesOn(sentences: readonly FamilySentence[], day: Day): readonly FamilySentence[] {
  return sentences.filter(
    (sentence) => sentence.says !== 'fewer' || sentence.waitsUntil === null || sentence.waitsUntil <= day,
  )
}
