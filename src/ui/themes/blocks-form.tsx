import type { Day } from '#common/time'
import type { ProgrammeBlock } from '#themes/programme-rule'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import { themeOptions } from '#ui/themes/theme-options'
import { weeksSentence } from '#ui/themes/weeks-sentence'

/** As many as are taken. */
const mostBlocks = 8

type BlocksFormProps = {
  readonly squadId: string
  readonly termId: string
  readonly weekDays: readonly Day[]
  readonly blocks: readonly ProgrammeBlock[]
  readonly themes: readonly { readonly id: string; readonly name: string; readonly depth: number }[]
  readonly send: SendForm
}

/** Weeks that are kept for one theme and those under it. */
export function BlocksForm({ squadId, termId, weekDays, blocks, themes, send }: BlocksFormProps) {
  const rows = Array.from({ length: Math.min(mostBlocks, blocks.length + 2) }, (_, row) => row)
  const places = Object.fromEntries(
    rows.flatMap((row) => [
      [`blockTheme-${row}`, `Row ${row + 1}, theme`],
      [`blockFirst-${row}`, `Row ${row + 1}, from week`],
      [`blockLast-${row}`, `Row ${row + 1}, to week`],
    ]),
  )
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…" places={places}>
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="termId" value={termId} />
      <p className="mb-3 max-w-prose text-sm text-soft">
        Every practice of these weeks is about the one theme, or one that stands under it.{' '}
        {weeksSentence(weekDays)}
      </p>
      {/* Begins anew with what was saved. */}
      <ul key={JSON.stringify(blocks)} className="max-w-2xl space-y-3">
        {rows.map((row) => {
          const block = blocks[row]
          return (
            <li key={row} className="grid grid-cols-2 items-end gap-3 sm:grid-cols-[2fr_1fr_1fr]">
              <div className="col-span-2 sm:col-span-1">
                <Select
                  name={`blockTheme-${row}`}
                  label={`Row ${row + 1}, theme`}
                  defaultValue={block?.themeId ?? ''}
                  options={[{ value: '', label: 'none' }, ...themeOptions(themes)]}
                />
              </div>
              <Field
                name={`blockFirst-${row}`}
                label="From week"
                inputMode="numeric"
                maxLength={2}
                defaultValue={block?.firstWeek ?? ''}
              />
              <Field
                name={`blockLast-${row}`}
                label="To week"
                inputMode="numeric"
                maxLength={2}
                defaultValue={block?.lastWeek ?? ''}
              />
            </li>
          )
        })}
      </ul>
      <div className="mt-4">
        <Button>Save the weeks kept</Button>
      </div>
    </ReplyForm>
  )
}
