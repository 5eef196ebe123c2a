import type { FamilyPage } from '#family/family-page'

/** Why a page should be looked at by itself before it is confirmed. */
export type Waiting =
  | { readonly what: 'nextStep' }
  /** The note names these others of the squad. */
  | { readonly what: 'noteNames'; readonly names: readonly string[] }

/** Empty: the page is ready. */
export function whatWaits(
  page: FamilyPage,
  { namesInNote }: { readonly namesInNote: readonly string[] },
): readonly Waiting[] {
  const waitsForStep = page.kinds.some(({ said }) =>
    said?.sentences.some((sentence) => sentence.says === 'fewer' && sentence.waitsUntil !== null),
  )
  return [
    ...(waitsForStep ? [{ what: 'nextStep' } as const] : []),
    ...(namesInNote.length > 0 ? [{ what: 'noteNames', names: namesInNote } as const] : []),
  ]
}
