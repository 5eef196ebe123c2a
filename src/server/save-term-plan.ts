import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { checkAhead } from '#ahead/check-ahead'
import { choicesOfPlan } from '#ahead/draft/choices-of-plan'
import { holdPractices } from '#ahead/draft/hold-practices'
import type { AheadProblem } from '#ahead/problem'
import { problemOfAhead } from '#ahead/problem-of-request'
import { firmPractices, type PlannedPractice } from '#ahead/term-plan'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { type ClubTx, inClub } from '#data/in-club'
import { listPlanned } from '#data/session-plans'
import { changeSession, listSessions, lockSessions, type Session } from '#data/sessions'
import { lockSquad } from '#data/squad-lock'
import { saveTermPlan } from '#data/term-plans'
import { type Done, saved } from '#server/action'
import type { LoadedAhead } from '#server/ahead-request'
import { loadTermAhead } from '#server/ahead-views'
import type { TermPlanInput } from '#server/term-plan-input'

/**
 * Keeps the plan of a term. That its practices are still to come, that each can be played and that every rule of the
 * programme is kept is checked here; the page is not trusted. What it is said to be worth is not kept: that is reckoned
 * from the book whenever it is read. @throws AppError `notAllowed` or `notFound`.
 */
export async function saveTermPlanOf(
  viewer: Viewer,
  input: TermPlanInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  const { squadId, termId, knownVersion, isTold } = input
  demand(viewer, 'planPractice', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    // Of two who save at once the second sees what the first one saved.
    await lockSquad(tx, squadId)
    const at = { squadId, query: { term: termId }, now }
    const { term, stored, loaded } = await loadTermAhead(tx, viewer, at)
    if (term?.id !== termId || !loaded)
      return refuse({ path: '', message: 'This term is over, or no longer there. Reload the page.' })
    if ((stored?.version ?? 0) !== knownVersion) return refuse({ path: '', message: someoneElse })
    const problem = problemOfAhead(asHeld(loaded, input.plan.practices))
    const faults = faultsOf(problem, input.plan.practices)
    if (faults.length > 0) return refuse(...faults)
    const by = { personId: viewer.personId, at: now }
    const practices = inOrder(problem, input.plan.practices)
    const asOf = loaded.written.at(-1)?.day ?? null
    const version = await saveTermPlan(tx, { squadId, termId, plan: { practices, asOf }, knownVersion, by })
    const told = isTold ? await tell(tx, { practices, sessions: loaded.sessions }) : 0
    const detail = { termId, version, practices: practices.length, told }
    await recordAudit(tx, { action: 'saveTermPlan', objectKind: 'squad', objectId: squadId, detail, by })
    return saved(savedWords({ practices: practices.length, told: isTold ? told : null }))
  })
}

const someoneElse =
  'Somebody else saved a plan of this term since you opened the page, and nothing of yours was saved. Open the page in a second tab to see theirs; reloading this one takes it over.'

/** What the page says is held is held, and nothing else but practices whose turns are planned. */
function asHeld(
  { request, fixed }: LoadedAhead,
  practices: readonly PlannedPractice[],
): LoadedAhead['request'] {
  const own = new Map(practices.filter(({ isHeld }) => isHeld).map((one) => [one.sessionId, one]))
  return holdPractices(
    {
      ...request,
      practices: request.practices.map((own) => (fixed.has(own.id) ? own : { ...own, held: null })),
    },
    new Map([...own].map(([id, { themeId, designId }]) => [id, { themeId, designId }])),
  )
}

function faultsOf(problem: AheadProblem, practices: readonly PlannedPractice[]): readonly Problem[] {
  const known = new Set(problem.practices.map(({ id }) => id))
  if (practices.some(({ sessionId }) => !known.has(sessionId)))
    return [
      {
        path: '',
        message:
          'A practice of this plan is no longer to come: it was moved, cancelled or written down. Nothing was saved; reload the page.',
      },
    ]
  if (practices.length < known.size)
    return [
      {
        path: '',
        message: 'A practice was entered since this page was opened. Nothing was saved; reload the page.',
      },
    ]
  const choices = choicesOfPlan(problem, practices)
  const notOffered = problem.practices.filter((_, index) => (choices[index] ?? -1) < 0)
  if (notOffered.length > 0)
    return notOffered.map(({ day }) => ({
      path: '',
      message: `What is planned for ${day} cannot be played then any more: its theme or its design was changed, put away, or needs more room or players than there will be. Choose another one.`,
    }))
  // That designs rest is a wish, which gives way where it must.
  const faults = checkAhead({ ...problem, designRest: 0 }, choices)
  return [...new Set(faults.map(({ practice }) => practice))].map((practice) => ({
    path: '',
    message: faults.some((own) => own.practice === practice && own.rule === 'held')
      ? `The turns of the practice on ${problem.practices[practice]?.day ?? 'a day'} are planned already, with another theme or design. Change its own plan first.`
      : `What is planned for ${problem.practices[practice]?.day ?? 'a practice'} breaks a rule of the programme, which may have changed since this page was opened. Reload the page, or choose another theme there.`,
  }))
}

function inOrder(problem: AheadProblem, practices: readonly PlannedPractice[]): readonly PlannedPractice[] {
  const of = new Map(practices.map((own) => [own.sessionId, own]))
  return problem.practices.flatMap(({ id }) => of.get(id) ?? [])
}

/**
 * Puts what is firm onto the practices. One whose turns are planned already has its own design; one that was written,
 * called off or moved while this was saved is left as it is.
 */
async function tell(
  tx: ClubTx,
  of: { readonly practices: readonly PlannedPractice[]; readonly sessions: readonly Session[] },
): Promise<number> {
  const firm = of.practices.slice(0, firmPractices)
  const ids = firm.map(({ sessionId }) => sessionId)
  await lockSessions(tx, ids)
  const planned = await listPlanned(tx, ids)
  const before = of.sessions.filter(({ id }) => ids.includes(id))
  const toCome = new Map((await listStillToCome(tx, before)).map((session) => [session.id, session]))
  let told = 0
  for (const { sessionId, themeId, designId } of firm) {
    const session = toCome.get(sessionId)
    if (!session || planned.has(sessionId)) continue
    told++
    if (session.themeId !== themeId || session.designId !== designId)
      await changeSession(tx, sessionId, { themeId, designId })
  }
  return told
}

/** Sessions of a squad, in order of time, as they stand now: those that are still to come on the day that was known. */
async function listStillToCome(tx: ClubTx, known: readonly Session[]): Promise<readonly Session[]> {
  const [first, last] = [known[0], known.at(-1)]
  if (!first || !last) return []
  const days = { squadId: first.squadId, from: first.day, to: last.day }
  const dayOf = new Map(known.map(({ id, day }) => [id, day]))
  return (await listSessions(tx, { ...days, kind: 'practice', withCancelled: false })).filter(
    ({ id, day, written }) => written === 'notWritten' && day === dayOf.get(id),
  )
}

function savedWords({
  practices,
  told,
}: {
  readonly practices: number
  readonly told: number | null
}): string {
  const said = `Saved: ${practices} ${practices === 1 ? 'practice' : 'practices'} ahead.`
  if (told === null) return said
  return told === 0
    ? `${said} The next ones have a plan of their own, and were left as they are.`
    : `${said} Theme and design stand on the next ${told === 1 ? 'one' : told} now.`
}
