'use client'

import { type ReactNode, useState } from 'react'
import type { MatchFormat } from '#match/format/match-format'
import type { SendForm, SendReply } from '#ui/entry/send-form'
import {
  fieldGroups,
  formatPlaces,
  lateField,
  nameField,
  noteLabel,
  sourceFields,
  type TextField,
  type TickField,
} from '#ui/formats/format-fields'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { TextArea } from '#ui/page/text-area'
import { Tick } from '#ui/page/tick'

type FormatFormProps = {
  /** Empty: a new one. */
  readonly formatId: string
  readonly version: string
  /** What the fields begin with. */
  readonly format: MatchFormat
  /** It came with a source, which stays. */
  readonly keepsSource: boolean
  readonly send: SendForm
}

/** Every part of a format, in plain words. */
export function FormatForm({ formatId, version, format, keepsSource, send }: FormatFormProps) {
  const [periods, setPeriods] = useState(format.periodSeconds.length)
  return (
    <ReplyForm
      send={send}
      refusedTitle="Nothing was saved"
      places={formatPlaces}
      waiting="Saving…"
      className="max-w-md space-y-6"
    >
      {(reply) => {
        const of = { format, reply }
        return (
          <>
            <input type="hidden" name="formatId" value={formatId} />
            <input type="hidden" name="version" value={version} />
            <OneField of={of} field={nameField} />
            {fieldGroups.map(({ title, note, fields }) => (
              <Group key={title} title={title} note={note}>
                {fields.map((field) => (
                  <OneField
                    key={field.name}
                    of={of}
                    field={field}
                    onChange={
                      field.name === 'periods'
                        ? (text) => setPeriods((now) => periodsOf(text) ?? now)
                        : undefined
                    }
                  />
                ))}
                {title === 'Least time' && periods > 1 ? <LateFields of={of} periods={periods} /> : null}
              </Group>
            ))}
            <Group
              title="Where it is from"
              note={keepsSource ? 'The source it was taken over from stays.' : ''}
            >
              {keepsSource
                ? null
                : sourceFields.map((field) => <OneField key={field.name} of={of} field={field} />)}
              <TextArea
                name="note"
                label={noteLabel}
                rows={3}
                maxLength={600}
                typed={typedIn(reply, 'note') ?? format.note}
              />
            </Group>
            <p className="text-sm text-soft">
              A line-up that is saved keeps the format it was made with; new ones begin with this.
            </p>
            <Button>{formatId === '' ? 'Add the format' : 'Save the format'}</Button>
          </>
        )
      }}
    </ReplyForm>
  )
}

function Group({
  title,
  note,
  children,
}: {
  readonly title: string
  readonly note?: string
  readonly children: ReactNode
}) {
  return (
    <fieldset className="space-y-4 border-t border-rule pt-3">
      <legend className="pr-3 text-lg font-semibold">{title}</legend>
      {note ? <p className="text-sm text-soft">{note}</p> : null}
      {children}
    </fieldset>
  )
}

type Of = { readonly format: MatchFormat; readonly reply: SendReply }

type OneFieldProps = {
  readonly of: Of
  readonly field: TextField | TickField
  readonly onChange?: (text: string) => void
}

function OneField({ of, field, onChange }: OneFieldProps) {
  const { format, reply } = of
  const { name, label, hint } = field
  const refused = reply.status === 'refused' ? reply : null
  if ('isTicked' in field) {
    const isTicked = refused ? refused.typed[name] === 'on' : field.isTicked(format)
    return <Tick name={name} label={label} hint={hint} isTicked={isTicked} />
  }
  return (
    <Field
      name={name}
      label={label}
      hint={hint}
      required={field.isNeeded}
      inputMode={field.isNumber ? 'numeric' : undefined}
      autoComplete="off"
      maxLength={name === 'name' ? 80 : 600}
      defaultValue={refused?.typed[name] ?? field.value(format)}
      onChange={onChange && ((event) => onChange(event.target.value))}
      problem={refused?.problems.find(({ path }) => path === name)?.message}
    />
  )
}

function LateFields({ of, periods }: { readonly of: Of; readonly periods: number }) {
  const isRefused =
    of.reply.status === 'refused' && of.reply.problems.some(({ path }) => path.startsWith('late-'))
  return (
    <Details summary="Who comes late" isOpen={isRefused || of.format.leastTime.late.length > 0}>
      <p className="mb-3 text-sm text-soft">
        Some rules promise late arrivals whole periods instead of the above. Empty: the part of the time for
        which the player is there.
      </p>
      <div className="space-y-4">
        {Array.from({ length: periods - 1 }, (_, index) => lateField(index + 1)).map((field) => (
          <OneField key={field.name} of={of} field={field} />
        ))}
      </div>
    </Details>
  )
}

/** Null while what is typed is no number of periods. */
function periodsOf(text: string): number | null {
  const count = Number(text)
  return Number.isInteger(count) && count >= 1 && count <= 12 ? count : null
}

function typedIn(reply: SendReply, name: string): string | undefined {
  return reply.status === 'refused' ? reply.typed[name] : undefined
}
