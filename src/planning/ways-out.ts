import { andList } from '#common/and-list'
import { withApart } from '#planning/player-pair'
import type { AgreedToday, PlanRequest } from '#planning/practice-plan'
import { otherHalf, problemOfRequest } from '#planning/problem-of-request'
import { quickPlan } from '#planning/quick-plan'
import { isInSides, keepsOneSide } from '#planning/side-lists'
import { mostWays, smallerRounds, withRounds } from '#planning/smaller-rounds'
import { turnFrames } from '#planning/turn-frames'
import type { WayOut } from '#planning/way-out'
import { type ClashPart, findClash } from '#rotation/clash'
import type { RotationProblem } from '#rotation/problem'
import type { PlayerId } from '#squad/player'

/**
 * Ways to change a request that has no plan so that it has one, each the least change of its kind: smaller rounds where
 * too few are expected, else one requirement of those that clash given up. The nearest first; empty only where nobody
 * is expected at all, or when there is no clash. `clash`: what was found to stand in the way.
 */
export function waysOut(
  request: PlanRequest,
  nameOf: (id: PlayerId) => string,
  clash: readonly ClashPart[] = findClash(problemOfRequest(request)),
): readonly WayOut[] {
  const problem = problemOfRequest(request)
  const rest = clash.filter(({ rule }) => !isOfSize(rule))
  const isTooLarge = rest.length < clash.length
  const sides = clash.find(({ rule }) => rule === 'sides')
  const ways = isTooLarge
    ? [
        ...keepersBack(request, { clash, nameOf }),
        ...smallerRounds(request).slice(0, sides ? mostWays - 1 : mostWays),
        ...(sides ? [givenUp(request, { problem, part: sides, nameOf })] : []),
      ].flatMap((way) => way ?? [])
    : rest.flatMap((part) => givenUp(request, { problem, part, nameOf }) ?? [])
  return ways.flatMap((way) => untilPossible(way, nameOf) ?? []).slice(0, mostWays)
}

/** A way that still meets another clash goes on through the nearest way out of that. */
function untilPossible(way: WayOut, nameOf: (id: PlayerId) => string): WayOut | null {
  let at = way
  for (let steps = 0; steps < 50; steps += 1) {
    const quick = quickPlan(at.request)
    if (quick.ok) return at
    const problem = problemOfRequest(at.request)
    const [part] = quick.reasons
    if (!part) return null
    const smaller = isOfSize(part.rule) ? smallerRounds(at.request)[0] : undefined
    const isMissingPlayers = part.rule === 'seats' || part.rule === 'keepers'
    const next = smaller ?? (isMissingPlayers ? null : givenUp(at.request, { problem, part, nameOf }))
    if (!next) return null
    at = { request: next.request, sentences: [...at.sentences, ...next.sentences] }
  }
  return null
}

/** What a smaller round can put right: too few for its places, for its goals, or for the places of one side. */
function isOfSize(rule: ClashPart['rule']): boolean {
  return rule === 'seats' || rule === 'keepers' || rule === 'sides'
}

type Clashing = {
  readonly problem: RotationProblem
  readonly part: ClashPart
  readonly nameOf: (id: PlayerId) => string
}

/** The request without one requirement that clashes. */
function givenUp(request: PlanRequest, { problem, part, nameOf }: Clashing): WayOut | null {
  const id = (player: number | undefined) => problem.players[player ?? -1]?.id ?? ''
  switch (part.rule) {
    case 'fixed': {
      const fixed = problem.fixed[part.index]
      const playerId = id(fixed?.player)
      const frames = turnFrames(request.design.rounds)
      const turn = fixed?.turn ?? -1
      const turns = [turn, otherHalf(frames, turn) ?? turn].map((own) => own + 1)
      return {
        sentences: [`Let go of the place of ${nameOf(playerId)} in turn ${turn + 1}.`],
        request: {
          ...request,
          locks: request.locks.filter((lock) => lock.playerId !== playerId || !turns.includes(lock.turn)),
        },
      }
    }
    case 'apart': {
      const [one, other] = (problem.apart[part.index] ?? []).map(id)
      return {
        sentences: [`Do not keep ${nameOf(one ?? '')} and ${nameOf(other ?? '')} apart in this practice.`],
        request: withApart(request, [one ?? '', other ?? ''], false),
      }
    }
    case 'keepersStay':
      return changedRound(request, turnOf(request, part.turn), {
        sentence: 'Goalkeepers may change inside the round',
        change: { keepersStay: false },
      })
    case 'neverRestsAlone':
      return letGo(request, {
        playerIds: [id(part.player)],
        part: { neverWaitsAlone: false },
        sentence: `Let ${nameOf(id(part.player))} wait alone in this practice.`,
      })
    case 'sides':
      if (!isInSides(request)) {
        const bound = request.players.filter(keepsOneSide).map(({ playerId }) => playerId)
        return letGo(request, {
          playerIds: bound,
          part: { sameSide: false },
          sentence: `Let ${andList(bound.map(nameOf))} play for both sides in this practice.`,
        })
      }
      return {
        sentences: ['Players may change sides in this practice.'],
        request: { ...request, rules: { ...request.rules, keepsSides: false } },
      }
    case 'mostTurns':
    case 'restsAfterTurn':
      return freed(request, { playerId: id(part.player), rule: part.rule, nameOf })
    default:
      return null
  }
}

/** The request with something agreed with some players let go for this practice. */
function letGo(
  request: PlanRequest,
  of: { readonly playerIds: readonly PlayerId[]; readonly part: AgreedToday; readonly sentence: string },
): WayOut {
  const players = request.players.map((player) =>
    of.playerIds.includes(player.playerId) ? { ...player, agreed: { ...player.agreed, ...of.part } } : player,
  )
  return { sentences: [of.sentence], request: { ...request, players } }
}

/** The request without one limit of one player. */
function freed(
  request: PlanRequest,
  of: {
    readonly playerId: PlayerId
    readonly rule: 'mostTurns' | 'restsAfterTurn'
    readonly nameOf: (id: PlayerId) => string
  },
): WayOut {
  const lifted = of.rule === 'mostTurns' ? { mostTurns: null } : { waitsAfterEachTurn: false }
  const words = of.rule === 'mostTurns' ? 'have more turns' : 'play two turns running'
  return {
    sentences: [`Let ${of.nameOf(of.playerId)} ${words} in this practice.`],
    request: {
      ...request,
      players: request.players.map((player) =>
        player.playerId === of.playerId ? { ...player, ...lifted } : player,
      ),
    },
  }
}

/** The design's round that a turn belongs to. */
function turnOf(request: PlanRequest, turn: number): number {
  return turnFrames(request.design.rounds)[turn]?.round ?? 0
}

function changedRound(
  request: PlanRequest,
  index: number,
  by: { readonly sentence: string; readonly change: Partial<PlanRequest['design']['rounds'][number]> },
): WayOut {
  const rounds = request.design.rounds.map((round, at) => (at === index ? { ...round, ...by.change } : round))
  return {
    sentences: [`${by.sentence} ${index + 1}, ${rounds[index]?.title}.`],
    request: withRounds(request, rounds),
  }
}

/** Where too few may be in goal: those asked not to be for this practice only, all at once. */
function keepersBack(
  request: PlanRequest,
  { clash, nameOf }: { readonly clash: readonly ClashPart[]; readonly nameOf: (id: PlayerId) => string },
): readonly WayOut[] {
  const spared = request.players.filter(({ keeps, notInGoal }) => keeps && notInGoal)
  if (!clash.some(({ rule }) => rule === 'keepers') || spared.length === 0) return []
  return spared.map(({ playerId }) => ({
    sentences: [`Let ${nameOf(playerId)} be in goal after all.`],
    request: {
      ...request,
      players: request.players.map((player) =>
        player.playerId === playerId ? { ...player, notInGoal: false } : player,
      ),
    },
  }))
}
