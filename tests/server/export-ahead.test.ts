import { beforeAll, describe, expect, it } from 'vitest'
import { planValue } from '#ahead/plan-value'
import { problemOfAhead } from '#ahead/problem-of-request'
import { quickAhead } from '#ahead/quick-plan'
import { proofOf } from '#common/proof'
import { allDays } from '#common/time'
import { inClub } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import { planAnswer } from '#exchange/plan-request/plan-answer'
import { readPlanRequest } from '#exchange/plan-request/plan-request'
import { loadTermAhead } from '#server/ahead-views'
import { exportFile } from '#server/export-file'
import { clubId, demoSquads } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'
import { secondPlanCheck } from '../support/second-plan-check'

describe('the weeks ahead of a squad as a file', () => {
  const inDemo = [demoSquads.underTen, demoSquads.underTwelve]
  beforeAll(async () => {
    await loadDemoBook()
  }, 60_000)

  it.each(inDemo)('is what the page plans by: $name', async ({ id: squadId }) => {
    const coach = await demoViewer('maren')
    await inClub(clubId, async (tx) => {
      const { text } = await exportFile(tx, 'ahead', { squadId, ...allDays })
      const read = readPlanRequest(JSON.parse(text))
      if (!read.ok) throw new Error(JSON.stringify(read.reasons, null, 1))
      const { loaded } = await loadTermAhead(tx, coach, { squadId, query: {} })
      const page = loaded && problemOfAhead(loaded.request)
      expect(page?.practices.length).toBeGreaterThan(0)
      expect(problemOfAhead(read.value.request)).toEqual(page)
      const plan = page && quickAhead(page, { seed: 1, steps: 200 })
      if (!plan) throw new Error('The demo has a plan.')
      const proof = proofOf(planValue(page, plan).all, 0)
      const answer = JSON.parse(
        JSON.stringify(planAnswer(page, { plan, proof }, { json: read.value.json, reachable: null })),
      )
      expect(secondPlanCheck(read.value.json, answer)).toEqual([])
      // No child is named in it.
      for (const { name } of await listSquadPlayers(tx, squadId)) expect(text).not.toContain(name)
    })
  })
})
