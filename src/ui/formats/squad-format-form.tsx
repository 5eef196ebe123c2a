'use client'

import type { ClubFormat } from '#match/format/club-format'
import type { Squad } from '#squad/squad'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'

type SquadFormatFormProps = {
  readonly squad: Squad & { readonly formatId: string | null }
  /** Those that can be chosen. */
  readonly formats: readonly ClubFormat[]
  readonly send: SendForm
}

/** How a squad plays its matches. */
export function SquadFormatForm({ squad, formats, send }: SquadFormatFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was changed"
      places={{ formatId: squad.name }}
      waiting="Saving…"
      className="max-w-md"
    >
      <input type="hidden" name="squadId" value={squad.id} />
      <div className="flex flex-wrap items-end gap-3">
        <div className="min-w-56 flex-1">
          <Select
            name="formatId"
            id={`format-${squad.id}`}
            label={squad.name}
            defaultValue={squad.formatId ?? ''}
            options={[
              { value: '', label: 'None: the coach says for each match' },
              ...formats.map(({ id, format }) => ({ value: id, label: format.name })),
            ]}
          />
        </div>
        <Button weight="plain" aria-label={`Save how ${squad.name} plays`}>
          Save
        </Button>
      </div>
    </ReplyForm>
  )
}
