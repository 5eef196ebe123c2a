import { inClub } from '#data/in-club'
import type { FormReply } from '#server/form'
import { redirectOf } from './next-request'
import { ownerDatabase } from './test-club'

export type Door = (previous: FormReply, form: FormData) => Promise<unknown>

/** The form as the page sends it, with a file where there is one. */
export function sent(input: object, way: 'json' | 'fields'): FormData {
  const form = new FormData()
  if ('what' in input) form.set('file', new File(['Name\nAda Fenn\nZoë O’Brien\n'], '../roster.csv'))
  if (way === 'json') form.set('json', JSON.stringify(input))
  else
    for (const [name, value] of Object.entries(input))
      form.append(name, typeof value === 'string' ? value : (JSON.stringify(value) ?? ''))
  return form
}

let sumsOfTables: Promise<string> | null = null

/** A statement that sums up every table: as the tables are the same throughout, it is made once. */
function sumsStatement(): Promise<string> {
  sumsOfTables ??= ownerDatabase()
    .$queryRawUnsafe<{ relname: string }[]>(
      `select relname from pg_class where relkind = 'r' and relnamespace = 'public'::regnamespace order by 1`,
    )
    .then((rows) => {
      const sums = rows.map(
        ({ relname }) =>
          `select '${relname}' as name, md5(string_agg(t::text, '|' order by t::text)) as sum from "${relname}" t`,
      )
      // Several workers of the database may share the tables, and answer in any order.
      return `${sums.join(' union all ')} order by name`
    })
  return sumsOfTables
}

/** All that stands in the club, table by table. */
export async function whatStands(clubId: string): Promise<string> {
  const statement = await sumsStatement()
  return inClub(clubId, async (tx) => JSON.stringify(await tx.db.$queryRawUnsafe(statement)), {
    database: ownerDatabase(),
  })
}

/** Where an accepted form led; anything else that was thrown is a fault. */
export function accepted(error: unknown): string {
  const href = redirectOf(error)
  if (href === null) throw error
  return href
}

export function isRefused(answer: unknown): boolean {
  if (typeof answer !== 'object' || answer === null) return false
  const { status, ok } = answer as { readonly status?: string; readonly ok?: boolean }
  return status === 'refused' || ok === false
}
