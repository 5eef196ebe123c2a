import { isSamePair } from '#common/is-same-pair'
import { withAgreedSides } from '#planning/agreed-sides'
import { type PlayerAgreement, withAgreements } from '#planning/agreed-today'
import { presentByRegister } from '#planning/expected'
import { withFreeGameForAll } from '#planning/free-game-for-all'
import { designForDay, expectedPlayer } from '#planning/new-request'
import { asAgreed, draftOf, draftOfSaved, type PlanDraft } from '#planning/plan-draft'
import { planFaults } from '#planning/plan-faults'
import type { PlannablePlayer } from '#planning/plannable-player'
import { pairsForgotten } from '#planning/player-pair'
import type { PlannedPlayer, PlanRequest, PracticePlan } from '#planning/practice-plan'
import type { ThemeShort } from '#planning/season-gaps'
import { withSidesOfDesign } from '#planning/split-sides'
import { suggestDesigns } from '#planning/suggest-designs'
import { turnFrames } from '#planning/turn-frames'
import type { DesignSheet } from '#practice/design-sheet'
import type { RegisterLine } from '#squad/register'
import type { PlanningPair, PlanningPolicy } from '#ui/planning/planning-types'
import { seasonFor } from '#ui/planning/season-for'

export type PlanningStart = {
  readonly session: { readonly day: string; readonly designId: string | null }
  readonly plan: PracticePlan | null
  readonly players: readonly PlannablePlayer[]
  readonly themeShort: ThemeShort
  readonly register: readonly RegisterLine[]
  readonly designs: readonly DesignSheet[]
  readonly pairs: readonly PlanningPair[]
  readonly policy: Pick<PlanningPolicy, 'restLimitTurns'>
}

/** What the page begins with: the plan that was saved, by the book as it stands now; else everyone expected and a design. */
export function firstDraft(start: PlanningStart): PlanDraft {
  if (!start.plan) return draftOf(newRequest(start))
  const { turns, proof, ...saved } = start.plan
  const players = saved.players.map((player) => asOfNow(player, { start, request: saved }))
  const withPairs = withPairsOfNow({ ...saved, players }, start)
  const request = asAgreed(withAgreements(withPairs, agreementsIn(start.players)), start.plan)
  const now = { ...request, turns, proof }
  // Who may keep goal, is kept apart, or what was agreed may have changed since: then it takes another plan.
  const kept = planFaults(now).length === 0 ? draftOfSaved(now) : null
  return kept ?? draftOf(request)
}

/** Pairs noted since are kept apart, those that have ended are free. */
function withPairsOfNow(
  plan: PlanRequest,
  { pairs, session }: Pick<PlanningStart, 'pairs' | 'session'>,
): PlanRequest {
  const stands = (kind: PlanningPair['kind']) => (pair: readonly [string, string]) =>
    pairs.some((own) => own.kind === kind && isSamePair(own.playerIds, pair))
  const forgotten = pairsForgotten(plan, { pairs, day: session.day })
  return {
    ...plan,
    apart: [...plan.apart.filter(stands('apart')), ...forgotten],
    together: plan.together.filter(stands('together')),
  }
}

function asOfNow(
  player: PlannedPlayer,
  { start, request }: { readonly start: PlanningStart; readonly request: PlanRequest },
): PlannedPlayer {
  const known = start.players.find(({ id }) => id === player.playerId)
  return known ? { ...player, keeps: known.keeps, gap: seasonFor(known, request.rules).gap } : player
}

/** The session's own design, else the one that suggests itself; whoever is in the register, else the members. */
function newRequest(start: PlanningStart): PlanRequest {
  const members = start.players.filter(({ isMember }) => isMember).map(({ id }) => id)
  const [suggested] = suggestDesigns(start.designs, { short: start.themeShort, expected: members })
  const sheet = start.designs.find(({ id }) => id === start.session.designId) ?? suggested?.design
  const design = sheet ? designForDay(sheet) : noDesign
  const inBibs = withSidesOfDesign({
    design,
    players: expectedPlayers(start, design),
    rules: { restLimit: start.policy.restLimitTurns, isGentle: true, keepsSides: false },
    apart: pairsOf(start.pairs, 'apart'),
    together: pairsOf(start.pairs, 'together'),
    locks: [],
  })
  const agreed = withAgreedSides(withAgreements(inBibs, agreementsIn(start.players)))
  return asAgreed(withFreeGameForAll(agreed), null)
}

/** What holds on the day for each of these players. */
export function agreementsIn(
  players: readonly Pick<PlannablePlayer, 'id' | 'agreements'>[],
): (playerId: string) => readonly PlayerAgreement[] {
  const of = new Map(players.map(({ id, agreements }) => [id, agreements]))
  return (playerId) => of.get(playerId) ?? []
}

const noDesign: PlanRequest['design'] = { id: null, name: '', themeId: null, sides: null, rounds: [] }

function pairsOf(pairs: readonly PlanningPair[], kind: PlanningPair['kind']): PlanRequest['apart'] {
  return pairs.filter((pair) => pair.kind === kind).map(({ playerIds }) => playerIds)
}

function expectedPlayers(start: PlanningStart, design: PlanRequest['design']): readonly PlannedPlayer[] {
  const turnCount = turnFrames(design.rounds).length
  return start.players.flatMap((player) => {
    const own = expectedPlayer(
      { playerId: player.id, keeps: player.keeps, gap: player.season.practice.gap },
      turnCount,
    )
    if (start.register.length === 0) return player.isMember ? [own] : []
    const present = presentByRegister(start.register, { playerId: player.id, rounds: design.rounds })
    return present.length > 0 ? [{ ...own, present }] : []
  })
}
