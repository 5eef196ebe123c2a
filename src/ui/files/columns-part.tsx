'use client'

import type { CheckedRow, Layout } from '#ui/files/file-check'
import { Details } from '#ui/page/details'
import { Select } from '#ui/page/select'

type ColumnsPartProps = {
  readonly layout: Layout
  readonly rows: readonly CheckedRow[]
  readonly onChange: (columns: readonly string[]) => void
}

/** What each column holds; closed while a list of days has a column for each. */
export function ColumnsPart({ layout, rows, onChange }: ColumnsPartProps) {
  const { headings, columns, fields } = layout
  const example = (at: number) => rows.find(({ cells }) => cells[at])?.cells[at] ?? ''
  return (
    <Details summary={`The columns (${headings.length})`} isOpen={headings.length <= 8}>
      <div className="grid gap-4 sm:grid-cols-2 lg:grid-cols-3">
        {headings.map((heading, at) => (
          <Select
            // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place in the file
            key={at}
            name={`column-${at}`}
            label={example(at) ? `${heading}, like “${example(at)}”` : heading}
            options={fields}
            value={columns[at] ?? ''}
            onChange={(event) =>
              onChange(columns.map((field, place) => (place === at ? event.target.value : field)))
            }
          />
        ))}
      </div>
    </Details>
  )
}
