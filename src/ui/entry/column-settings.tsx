'use client'

import type { GridColumn } from '#practice/grid'
import { gridLimits } from '#practice/grid'
import { shapesText, shapeText } from '#practice/shape-text'
import { seatRoles } from '#practice/turn'
import { MinuteField } from '#ui/entry/minute-field'
import { Stepper } from '#ui/entry/stepper'
import { type ThemeName, ThemeSelect } from '#ui/entry/theme-select'
import { Toggle } from '#ui/entry/toggle'
import { Button } from '#ui/page/button'
import { fieldLook } from '#ui/page/field'

type ColumnSettingsProps = {
  readonly column: GridColumn
  readonly title: string
  readonly themes: readonly ThemeName[]
  readonly isFirst: boolean
  readonly onChange: (change: Partial<Omit<GridColumn, 'id'>>) => void
  readonly onCopy: () => void
  readonly onSplit: () => void
  readonly onRemove: () => void
}

/** Everything about one round that most rounds do not need. */
export function ColumnSettings({
  column,
  title,
  themes,
  isFirst,
  onChange,
  onCopy,
  onSplit,
  onRemove,
}: ColumnSettingsProps) {
  return (
    <section aria-label={`Settings of ${title}`} className="space-y-4 border-l-4 border-accent bg-paper p-4">
      <div className="flex flex-wrap items-end gap-4">
        <label className="text-sm font-medium text-soft">
          Title
          <input
            className={`${fieldLook} mt-1 max-w-56`}
            value={column.title}
            maxLength={120}
            onChange={(event) => onChange({ title: event.target.value })}
          />
        </label>
        {column.isFreeGame ? (
          <Stepper
            label="Minutes"
            value={column.turnSeconds / 60}
            least={1}
            most={90}
            onChange={(minutes) => onChange({ turnSeconds: minutes * 60 })}
          />
        ) : (
          <RoundNumbers column={column} onChange={onChange} />
        )}
        <Stepper
          label="Areas"
          value={column.areas}
          least={1}
          most={6}
          onChange={(areas) => onChange({ areas })}
        />
        <ThemeSelect themes={themes} themeId={column.themeId} onChange={(themeId) => onChange({ themeId })} />
        <MinuteField
          key={column.id}
          label="Starts at minute"
          seconds={column.startsAt}
          placeholder="next"
          onChange={(startsAt) => onChange({ startsAt })}
        />
      </div>
      {column.isFreeGame ? (
        <p className="max-w-prose text-sm text-soft">
          A free game: one side is marked A, the other D, keepers K. It counts as two equal halves with the
          sides swapped.
        </p>
      ) : (
        <>
          <AtATime column={column} onChange={onChange} />
          <Toggle
            label="Who got to choose"
            options={[
              { value: 'nobody', label: 'nobody' },
              { value: 'attack', label: 'the attacking side' },
              { value: 'defend', label: 'the defending side' },
            ]}
            value={column.chosenBy ?? 'nobody'}
            onChange={(side) => onChange({ chosenBy: side === 'nobody' ? null : side })}
          />
        </>
      )}
      <p className="flex flex-wrap gap-2">
        {isFirst ? null : (
          <Button type="button" weight="plain" onClick={onCopy}>
            As the one before
          </Button>
        )}
        {column.turnCount > 1 && !column.atATime ? (
          <Button type="button" weight="plain" onClick={onSplit}>
            Open into its {column.turnCount} turns
          </Button>
        ) : null}
        <Button type="button" weight="plain" onClick={onRemove}>
          Take out
        </Button>
      </p>
    </section>
  )
}

type PartProps = Pick<ColumnSettingsProps, 'column' | 'onChange'>

function RoundNumbers({ column, onChange }: PartProps) {
  return (
    <>
      <Stepper
        label="Turns"
        value={column.turnCount}
        least={1}
        most={gridLimits.turnCount}
        onChange={(turnCount) => onChange({ turnCount })}
      />
      <Stepper
        label="Seconds a turn"
        value={column.turnSeconds}
        least={5}
        most={gridLimits.turnSeconds}
        step={5}
        onChange={(turnSeconds) => onChange({ turnSeconds })}
      />
      <Stepper
        label="Seconds between"
        value={column.gapSeconds}
        least={0}
        most={600}
        step={5}
        onChange={(gapSeconds) => onChange({ gapSeconds })}
      />
    </>
  )
}

/** Whether everyone marked plays in every turn, or they take turns, so many at a time. */
function AtATime({ column, onChange }: PartProps) {
  const [shape, ...others] = column.atATime ?? []
  const isAlike = others.every((other) => shapeText(other) === (shape ? shapeText(shape) : ''))
  return (
    <div className="space-y-2">
      <Toggle
        label="Who is marked"
        options={[
          { value: 'all', label: 'plays in every turn' },
          { value: 'some', label: 'takes turns, so many at a time' },
        ]}
        value={shape ? 'some' : 'all'}
        onChange={(way) => onChange({ atATime: way === 'some' ? [shape ?? firstShape] : null })}
      />
      {shape ? (
        <div className="flex flex-wrap gap-4">
          {seatRoles.map((role) => (
            <Stepper
              key={role}
              label={atATimeLabels[role]}
              value={shape[role]}
              least={0}
              most={11}
              onChange={(count) => onChange({ atATime: [{ ...shape, [role]: count }] })}
            />
          ))}
          <p className="max-w-prose self-end text-sm text-soft">
            {isAlike
              ? 'In each area. '
              : `Now ${shapesText(column.atATime ?? [])}; a change here makes all areas alike. `}
            They go in order; who has waited longest goes first.
          </p>
        </div>
      ) : null}
    </div>
  )
}

const firstShape = { attack: 3, defend: 2, keep: 1 }
const atATimeLabels = {
  attack: 'Attacking at a time',
  defend: 'Defending at a time',
  keep: 'In goal at a time',
}
