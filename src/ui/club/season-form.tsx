'use client'

import type { Season } from '#squad/squad'
import type { SendForm, SendReply } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type SeasonFormProps = {
  /** Null: a new one. */
  readonly season: Season | null
  /** Changes when another was added: the fields are empty again, and what was said stays. */
  readonly turn?: number
  readonly send: SendForm
}

const mostTerms = 12
const rowsOfNew = 3

const own = { name: 'Name of the season', firstDay: 'First day', lastDay: 'Last day' }
const ofTerm = { name: 'Name', firstDay: 'First day', lastDay: 'Last day' }
const fieldOfTerm = { name: 'termName', firstDay: 'termFirstDay', lastDay: 'termLastDay' } as const
const parts = ['name', 'firstDay', 'lastDay'] as const

const places: Readonly<Record<string, string>> = {
  ...own,
  ...Object.fromEntries(
    Array.from({ length: mostTerms }, (_, row) =>
      parts.map((part) => [`terms.${row}.${part}`, `Term ${row + 1}, ${ofTerm[part].toLowerCase()}`]),
    ).flat(),
  ),
}

/** A season and its terms. A row without a name and days is no term. */
export function SeasonForm({ season, turn = 0, send }: SeasonFormProps) {
  const standing = season?.terms ?? []
  const rows = season ? Math.min(standing.length + 1, mostTerms) : rowsOfNew
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was saved"
      places={places}
      waiting="Saving. Where days changed, flags are being judged anew; this can take a minute."
    >
      {(reply) => {
        const field = fieldsOf(reply, season?.id ?? 'new')
        return (
          <div key={turn}>
            <input type="hidden" name="seasonId" value={season?.id ?? ''} />
            <div className="grid items-start gap-x-6 gap-y-4 sm:grid-cols-3">
              {parts.map((part) => (
                <Field
                  key={part}
                  {...field({ name: part, path: part, held: season?.[part] })}
                  label={own[part]}
                  type={part === 'name' ? 'text' : 'date'}
                  maxLength={80}
                  required
                />
              ))}
            </div>
            {Array.from({ length: rows }, (_, row) => {
              const term = standing[row]
              return (
                // biome-ignore lint/suspicious/noArrayIndexKey: rows have no other identity and never move
                <fieldset key={row} className="mt-5 border-t border-rule pt-3">
                  <legend className="pr-3 font-semibold">Term {row + 1}</legend>
                  <input type="hidden" name={`termId-${row}`} value={term?.id ?? ''} />
                  <div className="grid items-start gap-x-6 gap-y-4 sm:grid-cols-3">
                    {parts.map((part) => (
                      <Field
                        key={part}
                        {...field({
                          name: `${fieldOfTerm[part]}-${row}`,
                          path: `terms.${row}.${part}`,
                          held: term?.[part],
                        })}
                        label={ofTerm[part]}
                        type={part === 'name' ? 'text' : 'date'}
                        maxLength={80}
                        required={term !== undefined}
                      />
                    ))}
                  </div>
                </fieldset>
              )
            })}
            <p className="mt-2 text-sm text-soft">A row that stays empty is no term.</p>
            <div className="mt-4">
              <Button weight={season ? 'plain' : 'main'}>
                {season ? 'Save the season' : 'Add the season'}
              </Button>
            </div>
          </div>
        )
      }}
    </ReplyForm>
  )
}

type At = { readonly name: string; readonly path: string; readonly held: string | undefined }

/** What a field shows: what was typed and refused, else what stands; and what is wrong with it. */
function fieldsOf(reply: SendReply, key: string) {
  const refused = reply.status === 'refused' ? reply : null
  return ({ name, path, held }: At) => ({
    name,
    id: `${key}-${name}`,
    defaultValue: refused?.typed[name] ?? held ?? '',
    problem: refused?.problems.find((one) => one.path === path)?.message,
  })
}
