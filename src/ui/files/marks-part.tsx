'use client'

import type { MarkShown } from '#ui/files/file-check'
import { Select } from '#ui/page/select'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

type MarksPartProps = {
  readonly marks: readonly MarkShown[]
  readonly onChange: (key: string, meaning: string) => void
}

const meanings = [
  ...(['here', 'late', 'left', 'notPlaying', 'out', 'away'] as const).map((value) => ({
    value: value as string,
    label: words.attendance[value] as string,
  })),
  { value: 'nothing', label: 'says nothing' },
]

/** What each mark of an attendance list was taken for. */
export function MarksPart({ marks, onChange }: MarksPartProps) {
  if (marks.length === 0) return null
  return (
    <div>
      <h3 className="font-semibold">The marks</h3>
      <div className="mt-2 grid grid-cols-1 gap-4 sm:grid-cols-2 lg:grid-cols-4">
        {marks.map(({ key, meaning, times }, at) => (
          <Select
            key={key}
            name={`mark-${at}`}
            label={`${key === '' ? 'An empty cell' : `“${key}”`}, ${counted(times, 'time')}, means`}
            options={meaning === null ? [{ value: '', label: 'Choose an answer' }, ...meanings] : meanings}
            value={meaning ?? ''}
            onChange={(event) => event.target.value && onChange(key, event.target.value)}
          />
        ))}
      </div>
    </div>
  )
}
