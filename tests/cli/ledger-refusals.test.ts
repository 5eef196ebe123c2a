import { describe, expect, it } from 'vitest'
import { plantedFaults, plantedText } from '../support/planted-faults'
import { runTurnbook } from '../support/run-turnbook'
import { smallSeason } from '../support/small-season'

const linesOf = (errors: string) => errors.split('\n').filter((line) => line !== '')

describe('turnbook ledger refuses, with exit code 2, one line and nothing on the output', () => {
  it('nothing where nothing is wrong', async () => {
    const result = await runTurnbook(['ledger'], JSON.stringify(smallSeason()))
    expect(result).toMatchObject({ exitCode: 0, errors: '' })
    expect(JSON.parse(result.output).format).toBe('turnbook/ledger@1')
  })

  it.each(plantedFaults.map((fault) => [fault.refusal, fault] as const))('%s', async (_refusal, fault) => {
    const result = await runTurnbook(['ledger'], plantedText(fault))
    const lines = linesOf(result.errors)
    const line = lines.find((candidate) => candidate.startsWith(`${fault.path}: `)) ?? ''
    expect({ exitCode: result.exitCode, output: result.output, lines }).toEqual({
      exitCode: 2,
      output: '',
      lines: expect.arrayContaining([line]),
    })
    expect(line).toMatch(fault.says)
    expect(line).toMatch(/would be right$|leave it out$/)
  })

  it('every fault at once, a line each', async () => {
    const season = smallSeason()
    const faults = plantedFaults.filter((fault) =>
      /two seats|unknown player in a spell|doubled theme|share above one/.test(fault.refusal),
    )
    for (const fault of faults) fault.plant(season)
    const result = await runTurnbook(['ledger'], JSON.stringify(season))
    const paths = linesOf(result.errors).map((line) => line.slice(0, line.indexOf(': ')))
    expect(result).toMatchObject({ exitCode: 2, output: '' })
    expect(paths).toEqual(
      expect.arrayContaining(faults.filter((f) => f.path !== 'policy.toleranceShare').map((f) => f.path)),
    )
  })

  it('other entries too when one has the wrong shape', async () => {
    const season = smallSeason()
    Object.assign(season.players[0] as object, { keeps: 1 })
    Object.assign(season.practices[1] as object, { date: 20260903 })
    Object.assign(season.practices[0]?.turns[1] as object, { start: 344 })
    const result = await runTurnbook(['ledger'], JSON.stringify(season))
    expect(linesOf(result.errors)).toEqual([
      'players[0].keeps: is 1; true or false would be right',
      'practices[1].date: is 20260903; text would be right',
      expect.stringContaining('practices[0].turns[1]: starts at 344'),
    ])
  })

  it('a hundred thousand faults and more without falling over', { timeout: 30_000 }, async () => {
    const season = smallSeason()
    Object.assign(season.practices[0] as object, {
      register: Array.from({ length: 130_000 }, () => ({ player: 'p1', from: 5, to: 5 })),
    })
    const result = await runTurnbook(['ledger'], JSON.stringify(season))
    expect(result.exitCode).toBe(2)
    expect(linesOf(result.errors).length).toBeGreaterThan(130_000)
  })
})
