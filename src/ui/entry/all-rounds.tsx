'use client'

import { gridLimits, type PracticeGrid } from '#practice/grid'
import type { ThemeName } from '#ui/entry/column-settings'
import type { PracticeDraft } from '#ui/entry/practice-draft'
import { withAllRounds } from '#ui/entry/practice-draft'
import { Stepper } from '#ui/entry/stepper'
import { Details } from '#ui/page/details'
import { fieldLook } from '#ui/page/field'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

type AllRoundsProps = {
  readonly grid: PracticeGrid
  readonly themes: readonly ThemeName[]
  readonly onEdit: (change: (draft: PracticeDraft) => PracticeDraft) => void
}

/** What all rounds have in common, set at once. Shows the first round's numbers. */
export function AllRounds({ grid, themes, onEdit }: AllRoundsProps) {
  const first = grid.columns.find((column) => !column.isFreeGame)
  if (!first) return null
  const set = (change: Parameters<typeof withAllRounds>[1]) => onEdit((draft) => withAllRounds(draft, change))
  return (
    <Details
      summary={`All rounds at once: ${first.turnCount} × ${first.turnSeconds} s, ${counted(first.areas, words.area.one, words.area.many)}`}
    >
      <div className="flex flex-wrap items-end gap-x-4 gap-y-2">
        <Stepper
          label="Turns in each"
          value={first.turnCount}
          least={1}
          most={gridLimits.turnCount}
          onChange={(turnCount) => set({ turnCount })}
        />
        <Stepper
          label="Seconds a turn"
          value={first.turnSeconds}
          least={5}
          most={gridLimits.turnSeconds}
          step={5}
          onChange={(turnSeconds) => set({ turnSeconds })}
        />
        <Stepper label="Areas" value={first.areas} least={1} most={6} onChange={(areas) => set({ areas })} />
        <label className="text-sm font-medium text-soft">
          Theme
          <select
            className={`${fieldLook}`}
            value={first.themeId ?? ''}
            onChange={(event) => set({ themeId: event.target.value || null })}
          >
            <option value="">No theme</option>
            {themes.map((theme) => (
              <option key={theme.id} value={theme.id}>
                {theme.name}
              </option>
            ))}
          </select>
        </label>
      </div>
    </Details>
  )
}
