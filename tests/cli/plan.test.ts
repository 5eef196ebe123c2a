import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { planHelp } from '#cli/plan-help'
import { readPlanRequest } from '#exchange/plan-request/plan-request'
import { type PlanRequestJson, planRequestShape } from '#exchange/plan-request/plan-request-shape'
import { aPlanRequest, withChanged } from '../support/plan-request-builder'
import { randomPlanRequest } from '../support/random-plan-request'
import { runTurnbook } from '../support/run-turnbook'
import { secondPlanCheck } from '../support/second-plan-check'
import { secondPlanRules } from '../support/second-plan-rules'

const run = async (request: object) => {
  const result = await runTurnbook(['plan'], JSON.stringify(request))
  return { ...result, json: result.output === '' ? null : JSON.parse(result.output) }
}
const quickly = { timeLimitMs: 200, alternatives: false } as const

/** An example of the help, read as JSON. */
const shown = (format: string) => {
  const from = planHelp.indexOf(`{ "format": "${format}"`)
  const [example = ''] = planHelp.slice(from).split(/\n(?:Needed:|isFirm:)/)
  return JSON.parse(example)
}

describe('turnbook plan', () => {
  it('writes a plan that a second reckoning accepts, and says "in expectation"', async () => {
    const request = aPlanRequest({ ...quickly, draws: 20 })
    const { exitCode, json } = await run(request)
    expect({ exitCode, format: json.format }).toEqual({ exitCode: 0, format: 'turnbook/plan@1' })
    expect(secondPlanCheck(request, json)).toEqual([])
    expect(json.sentence).toMatch(/^In expectation, .*\.$/)
    for (const { sentence } of json.practices) expect(sentence).toMatch(/^(?:“|\p{Lu}).*\.$/u)
  })

  it('gives the small term worked by hand its five minutes', async () => {
    const file = new URL('../exchange/example/plan-request.json', import.meta.url)
    const { json } = await run({ ...JSON.parse(readFileSync(file, 'utf8')), ...quickly })
    expect(json.value.balance).toBeCloseTo(0, 6)
    expect(json.value.value).toBeCloseTo(5, 6)
    expect(json.practices.map(({ theme }: { theme: string }) => theme)).toEqual(['level', 'more'])
  })

  it('answers requests of every kind: a plan that holds, or why there is none and one that works', async () => {
    const ends = new Set<number>()
    for (const seed of [1, 2, 5]) {
      const request: PlanRequestJson = { ...randomPlanRequest(seed), ...quickly }
      const { exitCode, json } = await run(request)
      ends.add(exitCode)
      if (exitCode === 0) expect(secondPlanCheck(request, json), `seed ${seed}`).toEqual([])
      else expect((await run(json.nearest)).exitCode, `seed ${seed}`).toBe(0)
    }
    expect([...ends].sort()).toEqual([0, 3])
  })

  it('has other themes beside it, each with a plan that keeps the rules and what it costs', async () => {
    const request = aPlanRequest({ timeLimitMs: 3000, workLimit: 5 })
    const { json } = await run(request)
    const chosen = json.practices[0].theme
    expect(json.alternatives.length).toBeGreaterThan(0)
    for (const { practice, theme, costs, value, practices, sentence } of json.alternatives) {
      expect(practice).toBe('s1')
      expect(theme).not.toBe(chosen)
      expect(costs).toBeGreaterThanOrEqual(0)
      expect(value.value).toBeCloseTo(json.value.value + costs, 6)
      expect(value.bound).toBeGreaterThanOrEqual(json.value.bound)
      const dated = practices.map((own: { id: string }, at: number) => ({ ...json.practices[at], ...own }))
      expect(secondPlanRules(request, { ...json, practices: dated })).toEqual([])
      expect(sentence).toMatch(/^With “.*” instead the plan is .* in expectation\.$/)
    }
  })

  it('writes the same bytes for the same input but for elapsedMs', async () => {
    const once = async () => {
      const { output } = await run({
        ...aPlanRequest({ draws: 20, alternatives: true }),
        timeLimitMs: 20_000,
        workLimit: 10,
      })
      return output.replace(/"elapsedMs": \d+/, '')
    }
    expect(await once()).toBe(await once())
  })

  it('ends with 2, writes nothing and says each fault in a line', async () => {
    const { exitCode, output, errors } = await run({
      ...withChanged('players', 0, { came: 99 }),
      seed: 0.5,
      more: 1,
    })
    expect({ exitCode, output }).toEqual({ exitCode: 2, output: '' })
    expect(errors.trimEnd()).toMatch(/^more: is not a key/)
    const again = await run({ ...withChanged('players', 0, { came: 99 }), seed: 0.5 })
    expect(again.errors.trimEnd().split('\n')).toEqual([
      expect.stringMatching(/^players\[0\]\.came: is 99; /),
      expect.stringMatching(/^seed: is 0\.5; /),
    ])
  })

  it('ends with 3, says which rules and where, and the nearest request is answered', async () => {
    const request = { ...withChanged('practices', 0, { held: { theme: 'together' } }), met: [], ...quickly }
    const { exitCode, json } = await run(request)
    expect({ exitCode, format: json.format }).toEqual({ exitCode: 3, format: 'turnbook/impossible@1' })
    expect(json.requirements).toMatchObject([
      {
        rule: 'held',
        path: 'practices[0].held',
        with: [{ rule: 'after', path: 'themes[1].after' }],
        practice: 's1',
      },
    ])
    const again = await run(json.nearest)
    expect(again.exitCode).toBe(0)
    expect(secondPlanCheck(json.nearest, again.json)).toEqual([])
  })
})

describe('the help of plan', () => {
  it('shows a request with every key, and it is read', () => {
    const example = shown('turnbook/plan-request@1')
    const { shape } = planRequestShape
    const keysOf = (value: object) => Object.keys(value).sort()
    expect(keysOf(example)).toEqual(keysOf(shape))
    expect(keysOf(example.practices[0])).toEqual(keysOf(shape.practices.element.shape))
    expect(keysOf(example.themes[0])).toEqual(keysOf(shape.themes.element.shape))
    expect(keysOf(example.designs[0])).toEqual(keysOf(shape.designs.element.shape))
    expect(keysOf(example.designs[0].rounds[0])).toEqual(
      keysOf(shape.designs.element.shape.rounds.element.shape),
    )
    expect(keysOf(example.players[0])).toEqual(keysOf(shape.players.element.shape))
    const read = readPlanRequest(example)
    expect(read.ok ? [] : read.reasons).toEqual([])
  })

  it('shows an answer with every key that there is', async () => {
    const example = shown('turnbook/plan@1')
    const { json } = await run(aPlanRequest({ draws: 20 }))
    const keysOf = (value: object) => Object.keys(value)
    expect(keysOf(json)).toEqual(keysOf(example))
    for (const list of ['practices', 'leftOut', 'players', 'themes'])
      expect(keysOf(json[list][0])).toEqual(keysOf(example[list][0]))
    expect(keysOf(json.practices[0].players[0])).toEqual(keysOf(example.practices[0].players[0]))
    expect(keysOf(json.players[0].columns)).toEqual(keysOf(example.players[0].columns))
    expect(keysOf(json.players[0].columns.attack)).toEqual(keysOf(example.players[0].columns.attack))
    expect(keysOf(json.players[0].themes.press)).toEqual(keysOf(example.players[0].themes.press))
    expect(keysOf(json.value)).toEqual(keysOf(example.value))
    expect(keysOf(json.chances).sort()).toEqual(keysOf(example.chances).sort())
    const [own, other] = [json.chances.plan, example.chances.plan]
    expect(keysOf(own)).toEqual(keysOf(other))
    expect(keysOf(own.players[0])).toEqual(keysOf(other.players[0]))
    expect(keysOf(own.players[0].all)).toEqual(keysOf(other.players[0].all))
  })
})
