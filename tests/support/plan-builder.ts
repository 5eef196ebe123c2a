import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import { turnFrames } from '#planning/turn-frames'
import type { DesignRound } from '#practice/design'
import { noSeconds } from '#rotation/fair-seconds'
import { seededRandom } from './seeded-random'

/** Four turns of 40 s, two areas of two against one, a goalkeeper in the first. */
export function aPlanRound(change: Partial<DesignRound> = {}): DesignRound {
  return {
    title: 'Two against one',
    turnCount: 4,
    turnSeconds: 40,
    gapSeconds: 20,
    stations: [
      { attack: 2, defend: 1, keep: 1 },
      { attack: 2, defend: 1, keep: 0 },
    ],
    ...change,
  }
}

export const aFreeGame: DesignRound = {
  title: 'Free game',
  turnCount: 2,
  turnSeconds: 300,
  gapSeconds: 0,
  stations: [{ attack: 3, defend: 3, keep: 1 }],
  isFreeGame: true,
  keepersStay: true,
}

/** `p1`, `p2`, …: so many players, there from the first turn to the last. */
export function aPlanRequest(
  of: {
    readonly players?: number
    readonly rounds?: readonly DesignRound[]
    readonly own?: Readonly<Record<number, Partial<PlannedPlayer>>>
  } & Partial<Omit<PlanRequest, 'players' | 'design'>> = {},
): PlanRequest {
  const { players = 9, rounds = [aPlanRound(), aFreeGame], own = {}, ...rest } = of
  const turns = turnFrames(rounds).length
  return {
    design: { id: null, name: 'A practice', themeId: null, sides: null, rounds },
    players: Array.from({ length: players }, (_, index) => ({
      playerId: `p${index + 1}`,
      keeps: true,
      side: null,
      present: [[1, turns]],
      notInGoal: false,
      waitsAfterEachTurn: false,
      mostTurns: null,
      gap: noSeconds,
      ...own[index + 1],
    })),
    rules: { restLimit: 2, isGentle: false, keepsSides: false },
    apart: [],
    together: [],
    locks: [],
    ...rest,
  }
}

/** Requests like those of coaches: gaps, late comers, early leavers, limits, keepers who stay; nearly always possible. */
export function randomPlanRequest(seed: number): PlanRequest {
  const random = seededRandom(seed * 7919 + 3)
  const players = random.whole(8, 16)
  const rounds: DesignRound[] = Array.from({ length: random.whole(1, 3) }, () =>
    aPlanRound({
      turnCount: random.whole(2, 6),
      turnSeconds: random.pick([30, 45, 60]),
      keepersStay: random.chance(0.5),
    }),
  )
  if (random.chance(0.6)) rounds.push(aFreeGame)
  const turns = turnFrames(rounds).length
  const own: Record<number, Partial<PlannedPlayer>> = {}
  for (let player = 1; player <= players; player += 1) {
    const [attack, defend] = [random.whole(-10, 10) * 20, random.whole(-10, 10) * 20]
    own[player] = { gap: { ...noSeconds, attack, defend, rest: -attack - defend } }
  }
  if (players > 10 && random.chance(0.4)) own[1] = { ...own[1], present: [[2, turns]] }
  if (players > 10 && random.chance(0.3)) own[2] = { ...own[2], mostTurns: random.whole(1, turns) }
  if (random.chance(0.3)) own[3] = { ...own[3], notInGoal: true }
  return aPlanRequest({
    players,
    rounds,
    own,
    rules: { restLimit: random.pick([null, 2, 3]), isGentle: random.chance(0.5), keepsSides: false },
    apart: random.chance(0.4) ? [['p4', 'p5']] : [],
    locks: random.chance(0.4) ? [{ turn: 1, playerId: 'p6', place: 'rest' }] : [],
  })
}
