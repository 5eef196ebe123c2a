import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runTurnbook } from '../support/run-turnbook'

// Source: example/README.md beside it: computed by an independent program.
const read = (name: string) => readFileSync(new URL(`./example/${name}`, import.meta.url), 'utf8')

type Tree = { [key: string]: unknown }

/** Every leaf of a value by its path; a warning's sentence is each program's own. */
function leavesOf(value: unknown, path = ''): [string, unknown][] {
  if (typeof value !== 'object' || value === null) return path.endsWith('.message') ? [] : [[path, value]]
  return Object.entries(value as Tree).flatMap(([key, inner]) => leavesOf(inner, `${path}.${key}`))
}

describe('the worked example', () => {
  it('comes out the same: seconds to a thousandth, shares to a millionth, everything else exactly', async () => {
    const result = await runTurnbook(['ledger'], read('season-log.json'))
    expect(result).toMatchObject({ exitCode: 0, errors: '' })
    const got = new Map(leavesOf(JSON.parse(result.output)))
    const wanted = new Map(leavesOf(JSON.parse(read('ledger.json'))))
    expect(new Set(got.keys())).toEqual(new Set(wanted.keys()))
    expect(wanted.size).toBeGreaterThan(500)
    for (const [path, value] of wanted) {
      const own = got.get(path)
      if (typeof value !== 'number') expect([path, own]).toEqual([path, value])
      // The example is printed to three decimals, so it is itself up to half a thousandth off.
      else
        expect([
          path,
          Math.abs(Number(own) - value) <= (path.endsWith('Share') ? 1e-6 : 0.0005 + 1e-6),
        ]).toEqual([path, true])
    }
  })
})
