import type { Ending } from '#practice/design'
import { NumberField } from '#ui/designs/form/number-field'
import { TextField } from '#ui/designs/form/text-field'
import { Toggle } from '#ui/entry/toggle'

type EndingFieldsProps = {
  readonly label: string
  readonly ending: Ending
  readonly problem?: string | null
  readonly onChange: (change: Partial<Ending>) => void
}

/** An ending in words, whose it is and what it is worth; stands in a row that wraps. */
export function EndingFields({ label, ending, problem, onChange }: EndingFieldsProps) {
  return (
    <>
      <div className="w-full sm:w-64">
        <TextField
          label={label}
          value={ending.words}
          most={120}
          problem={problem}
          onChange={(words) => onChange({ words })}
        />
      </div>
      <Toggle
        label="Scored by"
        options={[
          { value: 'attack', label: 'attack' },
          { value: 'defend', label: 'defence' },
        ]}
        value={ending.side}
        onChange={(side) => onChange({ side })}
      />
      <NumberField label="Points" value={ending.points} onChange={(points) => onChange({ points })} />
    </>
  )
}
