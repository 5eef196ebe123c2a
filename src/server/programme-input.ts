import 'server-only'
import { z } from 'zod'
import { focusRolesShape, focusSituationsShape } from '#exchange/theme-focus-json'
import type { ThemeFocus } from '#themes/theme-focus'

const ofTerm = { squadId: z.uuid(), termId: z.uuid() }
const weekRight = 'write the number of a week, 1 to 60, or leave it empty'
const idRight = 'choose one of the themes of the list'

/** What stands in the field of a week; null: empty. Undefined: no week at all. */
function weekOf(typed: unknown): number | null | undefined {
  const text = typeof typed === 'string' ? typed.trim() : '?'
  if (text === '') return null
  const week = /^\d{1,2}$/.test(text) ? Number(text) : 0
  return week >= 1 && week <= 60 ? week : undefined
}

const isId = (value: unknown) => z.uuid().safeParse(value).success

const kinds = ['first', 'last', 'least', 'most', 'after'] as const
type SentRule = {
  first: number | null
  last: number | null
  least: number | null
  most: number | null
  after: string | null
}

/** Fields `first-`, `last-`, `least-`, `most-` and `after-` with a theme's id say when it may come; empty: no such rule. */
export const programmeRulesInput = z
  .object(ofTerm)
  .catchall(z.unknown())
  .transform(({ squadId, termId, ...rest }, context) => {
    const rules = new Map<string, SentRule>()
    for (const [field, typed] of Object.entries(rest)) {
      const kind = kinds.find((one) => field.startsWith(`${one}-`))
      if (!kind) continue
      const id = field.slice(kind.length + 1)
      const rule = rules.get(id) ?? { first: null, last: null, least: null, most: null, after: null }
      rules.set(id, rule)
      if (kind === 'after') {
        if (typed !== '' && !isId(typed))
          context.addIssue({ code: 'custom', path: [field], message: idRight })
        else rule.after = typed === '' ? null : (typed as string)
        continue
      }
      const week = weekOf(typed)
      if (week === undefined) context.addIssue({ code: 'custom', path: [field], message: weekRight })
      else rule[kind] = week
    }
    return { squadId, termId, rules }
  })
export type ProgrammeRulesInput = z.infer<typeof programmeRulesInput>

/** Rows of the form; one whose theme is left open is no block. */
export const mostBlocks = 8

export const programmeBlocksInput = z
  .object(ofTerm)
  .catchall(z.unknown())
  .transform(({ squadId, termId, ...rest }, context) => {
    const blocks: { row: number; themeId: string; firstWeek: number; lastWeek: number }[] = []
    for (let row = 0; row < mostBlocks; row += 1) {
      const themeId = rest[`blockTheme-${row}`] ?? ''
      if (themeId === '') continue
      if (!isId(themeId)) {
        context.addIssue({ code: 'custom', path: [`blockTheme-${row}`], message: idRight })
        continue
      }
      const [firstWeek, lastWeek] = (['First', 'Last'] as const).map((end) => {
        const week = weekOf(rest[`block${end}-${row}`])
        if (week) return week
        context.addIssue({
          code: 'custom',
          path: [`block${end}-${row}`],
          message: 'write the number of a week, 1 to 60',
        })
        return 0
      })
      blocks.push({ row, themeId: themeId as string, firstWeek: firstWeek ?? 0, lastWeek: lastWeek ?? 0 })
    }
    return { squadId, termId, blocks }
  })
export type ProgrammeBlocksInput = z.infer<typeof programmeBlocksInput>

/** `from`: `ours` and the key of a programme of ours, or a squad and a term, parted by a space. */
export const takeProgrammeInput = z.object({
  ...ofTerm,
  from: z
    .string('choose where it is to come from')
    .max(100)
    .transform((text, context) => {
      const [one = '', other = ''] = text.split(' ')
      if (one === 'ours' && other !== '') return { kind: 'ours' as const, key: other }
      if (isId(one) && isId(other)) return { kind: 'squad' as const, squadId: one, termId: other }
      context.addIssue({ code: 'custom', message: 'choose one of the list' })
      return z.NEVER
    }),
})
export type TakeProgrammeInput = z.infer<typeof takeProgrammeInput>

const list = (value: unknown) => (value === undefined ? [] : Array.isArray(value) ? value : [value])

/** What a theme is about, and which designs serve it. */
export const themeFocusInput = z.object({
  squadId: z.uuid(),
  themeId: z.uuid(),
  roles: z.preprocess(list, focusRolesShape),
  situations: z.preprocess(list, focusSituationsShape),
  designIds: z.preprocess(list, z.array(z.uuid()).max(500)),
})
export type ThemeFocusInput = z.infer<typeof themeFocusInput> & ThemeFocus
