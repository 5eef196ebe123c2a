import 'server-only'
import { z } from 'zod'
import { longestName } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'

const mostLetters = 300

const name = z
  .string()
  .transform(tidyName)
  .superRefine((text, context) => {
    const length = [...text].length
    if (length === 0)
      context.addIssue({ code: 'custom', message: 'is empty; write what the theme is called' })
    if (length > longestName)
      context.addIssue({
        code: 'custom',
        message: `has ${length} letters; ${longestName} at most would be right`,
      })
  })

/** Empty: at the top. */
const parentId = z.preprocess((id) => (id === '' || id === undefined ? null : id), z.uuid().nullable())

const asks = z
  .string()
  .trim()
  .default('')
  .superRefine((text, context) => {
    const length = [...text].length
    if (length > mostLetters)
      context.addIssue({
        code: 'custom',
        message: `has ${length} letters; ${mostLetters} at most would be right`,
      })
  })

const ofSquad = { squadId: z.uuid() }

export const newThemeInput = z.object({ ...ofSquad, name, parentId, asks })
export type NewThemeInput = z.infer<typeof newThemeInput>

export const themeInput = z.object({ ...ofSquad, themeId: z.uuid(), name, parentId, asks })
export type ThemeInput = z.infer<typeof themeInput>

export const moveThemeInput = z.object({ ...ofSquad, themeId: z.uuid(), step: z.enum(['up', 'down']) })
export type MoveThemeInput = z.infer<typeof moveThemeInput>

const sharePrefix = 'share-'
const right = 'write a whole number of per cent, 0 to 100, or leave it empty'

/** Fields `share-` and a theme's id hold the per cent wished for it; empty ones are no part of the programme. */
export const programmeInput = z
  .object({ ...ofSquad, termId: z.uuid() })
  .catchall(z.unknown())
  .transform(({ squadId, termId, ...rest }, context) => {
    const percents = new Map<string, number>()
    for (const [field, typed] of Object.entries(rest)) {
      if (!field.startsWith(sharePrefix)) continue
      const text = typeof typed === 'string' ? typed.trim() : '?'
      if (text === '') continue
      const percent = /^\d{1,3}$/.test(text) ? Number(text) : Number.NaN
      if (percent >= 0 && percent <= 100) percents.set(field.slice(sharePrefix.length), percent)
      else context.addIssue({ code: 'custom', path: [field], message: right })
    }
    return { squadId, termId, percents }
  })
export type ProgrammeInput = z.infer<typeof programmeInput>
