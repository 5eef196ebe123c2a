import { getDesign } from '#data/designs'
import type { ClubTx } from '#data/in-club'
import { savePlan } from '#data/session-plans'
import { getSession } from '#data/sessions'
import { withAgreements } from '#planning/agreed-today'
import { withFreeGameForAll } from '#planning/free-game-for-all'
import { designForDay, expectedPlayer } from '#planning/new-request'
import { proofOfPlan } from '#planning/plan-proof'
import { plannedTurns } from '#planning/planned-turns'
import type { PlanRequest } from '#planning/practice-plan'
import { quickPlan } from '#planning/quick-plan'
import { turnFrames } from '#planning/turn-frames'
import { waysOut } from '#planning/ways-out'
import { loadPlanCast } from '#server/plan-cast'
import { solveRotation } from '#solver/solve-rotation'
import type { DemoClub } from './demo-club'
import { demoId } from './ids'

/** Coming practices that are planned already: one today, one in two days. */
const planned = ['underTen/practice/2026-06-08', 'underTwelve/practice/2026-06-10']

/** A ceiling on slow machines; what is found hangs on the work alone. */
const timeLimitMs = 20_000

/**
 * Plans the next practice of each squad as its coach would: everybody of the squad, the squad's usual rules. `workLimit`:
 * how long the exact solver works on each (its own unit); null: only the plan that is there at once.
 */
export async function planDemoSessions(
  tx: ClubTx,
  demo: DemoClub,
  { now, workLimit }: { readonly now: Date; readonly workLimit: number | null },
): Promise<void> {
  for (const key of planned) {
    const session = await getSession(tx, demoId(key))
    const sheet = await getDesign(tx, session.designId ?? '')
    const at = { session, today: demo.club.calendarDay, alsoIds: [] }
    const members = (await loadPlanCast(tx, at)).players.filter(({ isMember }) => isMember)
    const design = designForDay(sheet)
    const turnCount = turnFrames(design.rounds).length
    const request: PlanRequest = {
      design,
      players: members.map(({ id, keeps, season }) =>
        expectedPlayer({ playerId: id, keeps, gap: season.practice.gap }, turnCount),
      ),
      rules: { restLimit: 2, isGentle: true, keepsSides: false },
      apart: [],
      together: [],
      locks: [],
    }
    const by = { personId: session.ledById, at: now }
    // Where a design asks for more goalkeepers than the squad has, its coach takes the nearest that works.
    const agreementsOf = (playerId: string) => members.find(({ id }) => id === playerId)?.agreements ?? []
    const everybody = withFreeGameForAll(withAgreements(request, agreementsOf))
    const [nearest] = waysOut(everybody, () => '')
    const plan = await worked(nearest?.request ?? everybody, workLimit)
    await savePlan(tx, { sessionId: session.id, plan, knownVersion: 0, by })
  }
}

async function worked(request: PlanRequest, workLimit: number | null) {
  const quick = quickPlan(request)
  if (!quick.ok) throw new Error(`No plan for the demo: ${JSON.stringify(quick.reasons)}`)
  const { problem } = quick.value
  if (workLimit === null) {
    const proof = proofOfPlan(problem, { ...quick.value, bound: 0 })
    return { ...request, turns: plannedTurns(request, quick.value.plan), proof }
  }
  const settings = { seed: 1, timeLimitMs, workLimit, began: performance.now() }
  const { plan, unfairness, restLimit } = await solveRotation(problem, settings)
  const proof = proofOfPlan(problem, { plan, bound: unfairness.bound, restLimitUsed: restLimit.used })
  return { ...request, turns: plannedTurns(request, plan), proof }
}
