'use client'

import type { Dates, FileSaid, Layout } from '#ui/files/file-check'
import { Details } from '#ui/page/details'
import { ErrorNote } from '#ui/page/problems'
import { Select } from '#ui/page/select'

type LayoutPartProps = { readonly layout: Layout; readonly onChange: (change: Partial<FileSaid>) => void }

const encodings = [
  { value: 'utf-8', label: 'UTF-8' },
  { value: 'windows-1252', label: 'Windows-1252 (older spreadsheets)' },
  { value: 'utf-16le', label: 'UTF-16' },
  { value: 'utf-16be', label: 'UTF-16, other way round' },
]
const separators = [
  { value: ',', label: 'Comma' },
  { value: ';', label: 'Semicolon' },
  { value: '\t', label: 'Tab' },
]
const orders = [
  { value: 'ymd', label: 'Year first: 2026-12-31' },
  { value: 'dmy', label: 'Day first: 31/12/2026' },
  { value: 'mdy', label: 'Month first: 12/31/2026' },
]
const nameOrders = [
  { value: 'asWritten', label: 'As written' },
  { value: 'lastFirst', label: 'Last name, comma, first name' },
]

/** How the table was taken apart. A question about the dates stands outside, the rest folds away. */
export function LayoutPart({ layout, onChange }: LayoutPartProps) {
  const { encoding, separator, headerLine, lines, dates, nameOrder } = layout
  return (
    <div className="space-y-4">
      <DatesPart dates={dates} onChange={(dateOrder) => onChange({ dateOrder, columns: layout.columns })} />
      <Details summary="How the file is read">
        <div className="grid gap-4 sm:grid-cols-2">
          <Select
            name="separator"
            label="Between the columns stands a"
            options={separators}
            value={separator}
            // Other columns, other headings: what was said of them no longer fits.
            onChange={(event) => onChange({ separator: event.target.value, columns: null, headerLine: null })}
          />
          <Select
            name="encoding"
            label="Letters are written in"
            options={encodings}
            value={encoding}
            onChange={(event) => onChange({ encoding: event.target.value })}
          />
          <Select
            name="headerLine"
            label="The headings stand in"
            options={[
              { value: '0', label: 'No line: there are none' },
              ...lines.map((line) => ({ value: String(line), label: `Line ${line}` })),
            ]}
            value={String(headerLine)}
            onChange={(event) => onChange({ headerLine: Number(event.target.value), columns: null })}
          />
          {nameOrder === null ? null : (
            <Select
              name="nameOrder"
              label="Names are"
              options={nameOrders}
              value={nameOrder}
              onChange={(event) => onChange({ nameOrder: event.target.value })}
            />
          )}
        </div>
      </Details>
    </div>
  )
}

type DatesPartProps = { readonly dates: Dates | null; readonly onChange: (order: string) => void }

function DatesPart({ dates, onChange }: DatesPartProps) {
  if (!dates) return null
  const isOpen = dates.kind === 'open'
  return (
    <div className="space-y-3">
      {isOpen ? (
        <ErrorNote title="Which comes first in the dates, the day or the month?">
          “{dates.example}” could be two days, and no other date in the file settles it.
        </ErrorNote>
      ) : null}
      {dates.kind === 'none' ? (
        <ErrorNote title="The dates do not all have the same order.">
          “{dates.example}” cannot be read like the others. Correct it in the file, or leave its row out.
        </ErrorNote>
      ) : null}
      <div className="max-w-sm">
        <Select
          name="dateOrder"
          label="Dates are written"
          options={isOpen ? [{ value: '', label: 'Choose an answer' }, ...orders] : orders}
          value={isOpen ? '' : dates.order}
          onChange={(event) => event.target.value && onChange(event.target.value)}
        />
      </div>
    </div>
  )
}
