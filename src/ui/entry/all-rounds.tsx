'use client'

import { gridLimits, type PracticeGrid } from '#practice/grid'
import type { PracticeDraft } from '#ui/entry/practice-draft'
import { withAllRounds } from '#ui/entry/practice-draft'
import { Stepper } from '#ui/entry/stepper'
import { type ThemeName, ThemeSelect } from '#ui/entry/theme-select'
import { Details } from '#ui/page/details'
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
        <ThemeSelect themes={themes} themeId={first.themeId} onChange={(themeId) => set({ themeId })} />
      </div>
    </Details>
  )
}
