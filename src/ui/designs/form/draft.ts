import type { Problem } from '#common/problem'
import { type Cast, castFaults } from '#practice/cast-faults'
import { type DraftDesign, designFaults } from '#practice/design-faults'
import type { DesignSheet } from '#practice/design-sheet'
import { firstDraft } from '#practice/new-design'

/** A design as it is being typed. */
export type FormDraft = {
  readonly design: DraftDesign & { readonly themeId: string | null }
  /** For a squad with other children than this one. */
  readonly isForOthers: boolean
}

export function draftOf(sheet: DesignSheet | null): FormDraft {
  if (!sheet) return { design: { ...firstDraft, themeId: null }, isForOthers: false }
  const { id: _id, copiedFromId: _from, isPutAway: _away, ...design } = sheet
  return { design: { ...design, sides: design.sides ?? null }, isForOthers: false }
}

/** All that is wrong with it, as the server will judge it; `cast`: the squad it is written for. */
export function problemsOf({ design, isForOthers }: FormDraft, cast: Cast): readonly Problem[] {
  return [...designFaults(design), ...(isForOthers ? [] : castFaults(design.rounds, cast))]
}

/** Not yet filled in is no mistake before somebody has tried to save. */
export function isStillEmpty({ message }: Problem): boolean {
  return message.startsWith('is empty') || message.startsWith('says nothing')
}

/** Where a problem stands, in words. */
export function placeOf(path: string): string {
  const [part = '', index, field, at] = path.split('.')
  const number = Number(index) + 1
  if (part === 'rounds' && index !== undefined) return roundPlace(number, { field, at })
  if (part === 'adaptations' && index !== undefined)
    return `Adaptation ${number}${field ? `, ${adaptationFields[field] ?? field}` : ''}`
  if (part === 'sides') return 'Sides'
  return plainFields[part] ?? part
}

function roundPlace(number: number, { field, at }: { field?: string; at?: string }): string {
  const round = `Round ${number}`
  if (field === 'stations') return at === undefined ? `${round}, areas` : `${round}, area ${Number(at) + 1}`
  return field ? `${round}, ${roundFields[field] ?? field}` : round
}

const plainFields: Readonly<Record<string, string>> = {
  name: 'Name',
  themeId: 'Theme',
  areaLengthM: 'Length',
  areaWidthM: 'Width',
  rounds: 'Rounds',
  players: 'Expected',
  note: 'Note',
}

const roundFields: Readonly<Record<string, string>> = {
  title: 'title',
  turnCount: 'turns',
  turnSeconds: 'length of a turn',
  gapSeconds: 'time between',
  choice: 'choice',
  endings: 'endings',
  conditions: 'rules',
}

const adaptationFields: Readonly<Record<string, string>> = {
  title: 'title',
  why: 'why',
  changes: 'what is done',
}
