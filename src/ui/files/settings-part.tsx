'use client'

import type { FileCheck, FileSaid, FileWhat } from '#ui/files/file-check'
import { Field } from '#ui/page/field'
import { Select } from '#ui/page/select'

type SettingsPartProps = {
  readonly what: FileWhat
  readonly said: FileSaid
  readonly defaults: FileCheck['defaults']
  readonly onChange: (change: Partial<FileSaid>) => void
}

/** What the file does not say and the book needs. Numbers are taken when the field is left. */
export function SettingsPart({ what, said, defaults, onChange }: SettingsPartProps) {
  if (what === 'log' || what === 'calendar') return null
  if (what === 'roster') {
    return (
      <div className="max-w-sm">
        <Field
          name="defaultFirstDay"
          type="date"
          label="First day for players whose row has none"
          defaultValue={said.defaultFirstDay ?? defaults.firstDay}
          onBlur={(event) => {
            const day = event.target.value
            if (day && day !== (said.defaultFirstDay ?? defaults.firstDay)) onChange({ defaultFirstDay: day })
          }}
        />
      </div>
    )
  }
  return (
    <div className="grid gap-4 sm:grid-cols-3">
      <Minutes
        name="lengthMinutes"
        label="Minutes a session lasts, unless the file or book says"
        value={said.lengthMinutes}
        onChange={(lengthMinutes) => onChange({ lengthMinutes })}
      />
      <Minutes
        name="lateMinutes"
        label="Minutes late, unless the file says"
        value={said.lateMinutes}
        onChange={(lateMinutes) => onChange({ lateMinutes })}
      />
      <Select
        name="newPlayers"
        label="Names that the book does not know"
        options={[
          { value: 'ask', label: 'Ask about each' },
          { value: 'add', label: 'Are new players of the squad' },
        ]}
        value={said.newPlayers ?? defaults.newPlayers}
        onChange={(event) => onChange({ newPlayers: event.target.value })}
      />
    </div>
  )
}

type MinutesProps = {
  readonly name: string
  readonly label: string
  readonly value: number
  readonly onChange: (minutes: number) => void
}

function Minutes({ name, label, value, onChange }: MinutesProps) {
  return (
    <Field
      name={name}
      type="number"
      min={1}
      max={600}
      label={label}
      defaultValue={value}
      onBlur={(event) => {
        const minutes = event.target.valueAsNumber
        if (Number.isInteger(minutes) && minutes !== value) onChange(minutes)
      }}
    />
  )
}
