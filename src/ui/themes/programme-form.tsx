'use client'

import { type FormEvent, useState } from 'react'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { fieldLook } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type ProgrammeFormProps = {
  readonly squadId: string
  readonly term: { readonly id: string; readonly name: string }
  readonly lines: readonly {
    readonly id: string
    readonly name: string
    readonly depth: number
    /** Whole per cent; 0 is no part of the programme. */
    readonly percent: number
  }[]
  readonly send: SendForm
}

/** What part of a term's practices each theme is wished for, with the sum as it is typed. */
export function ProgrammeForm({ squadId, term, lines, send }: ProgrammeFormProps) {
  const kept = lines.reduce((total, { percent }) => total + percent, 0)
  const [sum, setSum] = useState(kept)
  // Another programme may have been taken over meanwhile.
  const [known, setKnown] = useState(kept)
  if (known !== kept) {
    setKnown(kept)
    setSum(kept)
  }
  const addUp = (event: FormEvent<HTMLElement>) => {
    const fields = event.currentTarget.querySelectorAll<HTMLInputElement>('input[name^="share-"]')
    setSum([...fields].reduce((total, { value }) => total + (Number(value) || 0), 0))
  }
  return (
    <ReplyForm
      send={send}
      refusedTitle="The programme was not changed"
      waiting="Saving…"
      places={Object.fromEntries(lines.map(({ id, name }) => [`share-${id}`, name]))}
    >
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="termId" value={term.id} />
      <p className="mb-2 max-w-prose text-sm text-soft">
        Of the practices of {term.name}, in per cent; an empty field is no part of the programme. A theme’s
        practices count for those it stands under too.
      </p>
      <ul className="max-w-md border-t border-rule" onChange={addUp}>
        {lines.map(({ id, name, depth, percent }) => (
          <li key={id} className="flex items-center justify-between gap-4 border-b border-rule py-1.5">
            <label htmlFor={`share-${id}`} style={{ paddingLeft: `${depth * 1.25}rem` }}>
              {name}
            </label>
            <span className="flex items-center gap-2">
              <input
                id={`share-${id}`}
                name={`share-${id}`}
                inputMode="numeric"
                maxLength={3}
                defaultValue={percent > 0 ? percent : ''}
                className={`${fieldLook} w-20! text-right tabular-nums`}
              />
              %
            </span>
          </li>
        ))}
      </ul>
      <p
        className={`mt-2 max-w-md text-right ${sum > 100 ? 'font-semibold text-warn' : ''}`}
        aria-live="polite"
      >
        Together {sum} %{sum > 100 ? ', and 100 % at most can be planned' : ' of 100 %'}
      </p>
      <div className="mt-3">
        <Button>Save the programme</Button>
      </div>
    </ReplyForm>
  )
}
