'use client'

import type { SendForm } from '#ui/entry/send-form'
import type { CheckFile, FileWhat } from '#ui/files/file-check'
import { FoundPart } from '#ui/files/found-part'
import { useImport } from '#ui/files/use-import'
import { Working } from '#ui/files/working'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'
import { SectionTitle } from '#ui/page/section-title'

type ImportPartProps = { readonly squadId: string; readonly check: CheckFile; readonly save: SendForm }

const kinds: readonly { readonly value: FileWhat; readonly label: string; readonly means: string }[] = [
  { value: 'roster', label: 'Roster', means: 'who is in the squad: a table saved as CSV' },
  { value: 'attendance', label: 'Attendance', means: 'who was there on which day: a table saved as CSV' },
  {
    value: 'calendar',
    label: 'Calendar',
    means: 'practices and matches, and how they ended: a table saved as CSV',
  },
  {
    value: 'log',
    label: 'Season log',
    means: 'a whole season written elsewhere: turnbook/season-log@1 as JSON',
  },
]

/** A file in: chosen, looked at row by row, corrected, then imported all of it or nothing. */
export function ImportPart(props: ImportPartProps) {
  const page = useImport(props)
  const { what, file, found, problems, busy, done, imports, begin } = page
  return (
    <section aria-labelledby="import-title" className="space-y-5">
      <SectionTitle id="import-title" note="You see what was understood before anything is written.">
        Take in a file
      </SectionTitle>
      <fieldset>
        <legend className="font-medium">What is in the file?</legend>
        {kinds.map(({ value, label, means }) => (
          <label key={value} className="tap flex items-center gap-3 py-1">
            <input
              type="radio"
              name="what"
              value={value}
              checked={what === value}
              onChange={() => begin({ what: value, file })}
              className="size-5 shrink-0 accent-accent"
            />
            <span>
              <strong className="font-semibold">{label}</strong> <span className="text-soft">{means}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <div>
        <label htmlFor="import-file" className="block font-medium">
          The file
        </label>
        <p id="import-file-hint" className="text-sm text-soft">
          At most 10 MB. It stays on this page until you import it.
        </p>
        {/* Only another input can forget its file. */}
        <input
          id="import-file"
          key={imports}
          type="file"
          aria-describedby="import-file-hint"
          accept={what === 'log' ? '.json,application/json' : '.csv,.tsv,.txt,text/csv'}
          onChange={(event) => begin({ what, file: event.target.files?.[0] ?? null })}
          className="tap mt-1 block w-full border border-rule-strong bg-leaf p-2"
        />
      </div>
      {done ? <Notice tone="done">{done}</Notice> : null}
      <Problems title="Nothing was written." problems={problems} places={places} />
      <Working isWorking={busy !== null} text={busy === 'importing' ? 'Importing' : 'Looking at the file'} />
      {found && file ? <FoundPart page={page} found={found} /> : null}
    </section>
  )
}

const places = {
  file: 'The file',
  defaultFirstDay: 'First day',
  lengthMinutes: 'Length',
  lateMinutes: 'Late',
}
