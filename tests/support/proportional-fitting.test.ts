import { describe, expect, it } from 'vitest'
import { fitTable } from './proportional-fitting'

/** Rounded to so many significant digits, as printed. */
const printed = (table: number[][], digits: number) =>
  table.map((row) => row.map((cell) => Number(cell.toPrecision(digits))))

describe('the fitting that fair shares are checked against', () => {
  it('gives a published fitted table', () => {
    // Source: README of ProportionalFitting.jl (E.-J. van Kesteren), "Showcase": the 4 × 4 table, its totals and the
    // printed result of 8 iterations, to 6 significant digits. The same table stands in Wikipedia, "Iterative
    // proportional fitting" (from memory).
    const fitted = fitTable(
      [
        [40, 30, 20, 10],
        [35, 50, 100, 75],
        [30, 80, 70, 120],
        [20, 30, 40, 50],
      ],
      { rows: [150, 300, 400, 150], columns: [200, 300, 400, 100] },
    )
    expect(printed(fitted, 6)).toEqual([
      [64.5585, 46.2325, 35.3843, 3.82473],
      [49.9679, 68.1594, 156.499, 25.3742],
      [56.7219, 144.428, 145.082, 53.7673],
      [28.7516, 41.18, 63.0347, 17.0337],
    ])
  })

  it('gives a published table with a cell that stays zero', () => {
    // Source: SAS/IML User's Guide, example "Iterative Proportional Fitting", after Bishop, Fienberg & Holland,
    // Discrete Multivariate Analysis (1975): marital status by age. The table and the totals were read there; the
    // adjusted estimates are from memory, to the two decimals printed, where the fitting stops at a change of 0.01.
    const fitted = fitTable(
      [
        [1306, 83, 0],
        [619, 765, 3],
        [263, 1194, 9],
        [173, 1372, 28],
        [171, 1393, 51],
        [159, 1372, 81],
        [208, 1350, 108],
        [1116, 4100, 2329],
      ],
      { rows: [1412, 1402, 1450, 1541, 1681, 1532, 1662, 7644], columns: [3988, 11702, 2634] },
    )
    const wanted = [
      [1325.27, 86.73, 0],
      [615.56, 783.39, 3.05],
      [253.94, 1187.18, 8.88],
      [165.13, 1348.55, 27.32],
      [173.41, 1454.71, 52.87],
      [147.21, 1308.12, 76.67],
      [202.33, 1352.28, 107.4],
      [1105.16, 4181.04, 2357.81],
    ]
    for (const [r, row] of wanted.entries()) {
      for (const [c, cell] of row.entries())
        expect(Math.abs((fitted[r]?.[c] ?? Number.NaN) - cell)).toBeLessThan(0.01)
    }
  })

  it('does not settle where the totals cannot be met', () => {
    expect(() =>
      fitTable(
        [
          [1, 0],
          [1, 0],
        ],
        { rows: [1, 1], columns: [1, 1] },
      ),
    ).toThrow('does not settle')
  })
})
