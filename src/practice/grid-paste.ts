import { accept, type Result, refuse } from '#common/result'
import type { CellPlace, PracticeGrid } from '#practice/grid'
import { setMark } from '#practice/grid-edit'
import { type Mark, parseMark } from '#practice/grid-mark'
import type { PlayerId } from '#squad/player'

/** Why a pasted block is refused; line and cell are from 1, as they stand in the block. */
export type PasteRefusal =
  | { readonly reason: 'noMark'; readonly line: number; readonly cell: number; readonly text: string }
  | { readonly reason: 'unknownName'; readonly line: number; readonly text: string }
  | { readonly reason: 'nameTwice'; readonly line: number; readonly text: string }
  | { readonly reason: 'tooManyRows'; readonly rows: number; readonly room: number }
  | { readonly reason: 'tooManyColumns'; readonly columns: number; readonly room: number }

/** A block of a spreadsheet as rows of texts: tabs between cells, or semicolons or commas where no tab is. */
export function cellsOfBlock(text: string): readonly (readonly string[])[] {
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n+$/, '').split('\n')
  const separator = ['\t', ';', ','].find((mark) => lines.some((line) => line.includes(mark))) ?? '\t'
  return lines.map((line) => line.split(separator).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1')))
}

/**
 * Lays a block over the grid from a cell on. A first column that holds names instead of marks says whose row each line
 * is; without names, lines go downwards in order. All or nothing: one cell that is no mark refuses the block.
 */
export function pasteBlock(
  grid: PracticeGrid,
  block: { readonly text: string; readonly at: CellPlace; readonly names: ReadonlyMap<PlayerId, string> },
): Result<PracticeGrid, PasteRefusal> {
  const lines = cellsOfBlock(block.text)
  const isNamed = lines.every(([first = '', ...others]) => parseMark(first) === null && others.length > 0)
  const rowOf = isNamed ? rowsByName(grid, lines, block.names) : rowsInOrder(grid, lines, block.at.row)
  const marks = lines.map((cells) => (isNamed ? cells.slice(1) : cells).map(parseMark))
  const refusals = [...rowOf.refusals, ...strangeCells(lines, isNamed ? 1 : 0)]
  const widest = Math.max(...marks.map((cells) => cells.length))
  const room = grid.columns.length - block.at.column
  if (widest > room) refusals.push({ reason: 'tooManyColumns', columns: widest, room })
  if (refusals.length > 0) return refuse(...refusals)
  return accept(
    marks.reduce(
      (laid, cells, line) =>
        cells.reduce<PracticeGrid>(
          (row, mark, cell) =>
            setMark(row, { row: rowOf.rows[line] ?? -1, column: block.at.column + cell }, mark as Mark),
          laid,
        ),
      grid,
    ),
  )
}

type RowsOfLines = { readonly rows: readonly number[]; readonly refusals: readonly PasteRefusal[] }

function rowsInOrder(grid: PracticeGrid, lines: readonly unknown[], from: number): RowsOfLines {
  const room = grid.rows.length - from
  const refusals: PasteRefusal[] =
    lines.length > room ? [{ reason: 'tooManyRows', rows: lines.length, room }] : []
  return { rows: lines.map((_, line) => from + line), refusals }
}

function rowsByName(
  grid: PracticeGrid,
  lines: readonly (readonly string[])[],
  names: ReadonlyMap<PlayerId, string>,
): RowsOfLines {
  const refusals: PasteRefusal[] = []
  const rows = lines.map(([text = ''], index) => {
    const found = grid.rows.flatMap((row, at) =>
      isSameName(names.get(row.playerId) ?? '', text) ? [at] : [],
    )
    if (found.length === 1 && found[0] !== undefined) return found[0]
    refusals.push({ reason: found.length === 0 ? 'unknownName' : 'nameTwice', line: index + 1, text })
    return -1
  })
  return { rows, refusals }
}

function isSameName(one: string, other: string): boolean {
  const plain = (name: string) => name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase()
  return plain(one) === plain(other)
}

function strangeCells(lines: readonly (readonly string[])[], firstCell: number): PasteRefusal[] {
  return lines.flatMap((cells, line) =>
    cells.flatMap((text, cell): PasteRefusal[] =>
      cell < firstCell || parseMark(text) !== null
        ? []
        : [{ reason: 'noMark', line: line + 1, cell: cell + 1, text }],
    ),
  )
}

/** The sentence for a block that was refused. */
export function pasteSentence(refusal: PasteRefusal): string {
  switch (refusal.reason) {
    case 'noMark':
      return `Line ${refusal.line}, cell ${refusal.cell} of what you pasted is “${refusal.text}”: write A, D, K or W there, with an area number behind it if need be (A2).`
    case 'unknownName':
      return `Line ${refusal.line} of what you pasted is for “${refusal.text}”, and nobody in this grid has that name: correct the name, or add the player first.`
    case 'nameTwice':
      return `Line ${refusal.line} of what you pasted is for “${refusal.text}”, and more than one player here has that name: paste their marks without the names.`
    case 'tooManyRows':
      return `You pasted ${refusal.rows} lines and from this cell there are ${refusal.room} players: begin higher up, or copy fewer lines.`
    case 'tooManyColumns':
      return `You pasted ${refusal.columns} columns and from this cell there are ${refusal.room}: add rounds first, or begin further left.`
  }
}
