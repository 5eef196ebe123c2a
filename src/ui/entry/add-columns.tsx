'use client'

import type { PracticeGrid } from '#practice/grid'
import { freeGameColumn, plainColumn } from '#practice/grid-columns'
import { insertColumn } from '#practice/grid-edit'
import { nextColumnNumber } from '#ui/entry/practice-draft'
import { Button } from '#ui/page/button'

type AddColumnsProps = { readonly edit: (change: (grid: PracticeGrid) => PracticeGrid) => void }

/** One more round like the last, or the free game at the end. */
export function AddColumns({ edit }: AddColumnsProps) {
  return (
    <p className="flex flex-wrap gap-2">
      <Button type="button" weight="plain" onClick={() => edit(withRoundMore)}>
        + round
      </Button>
      <Button
        type="button"
        weight="plain"
        onClick={() =>
          edit((grid) => insertColumn(grid, grid.columns.length, freeGameColumn(nextColumnNumber(grid), 10)))
        }
      >
        + free game
      </Button>
    </p>
  )
}

/** A round with the settings of the last one, at the end, nobody marked. */
export function withRoundMore(grid: PracticeGrid): PracticeGrid {
  const number = nextColumnNumber(grid)
  const last = grid.columns.findLast((column) => !column.isFreeGame) ?? plainColumn(number, null)
  const title = `Round ${grid.columns.length + 1}`
  const own = {
    id: `c${number}`,
    title,
    startsAt: null,
    continuesWait: false,
    continuesTurn: false,
    chosenBy: null,
  }
  return insertColumn(grid, grid.columns.length, { ...last, ...own })
}
