import type { RotationRequestJson } from '#exchange/rotation-request-shape'
import { type SeededRandom, seededRandom } from './seeded-random'

export type RandomRotationWish = {
  readonly players?: number
  readonly turns?: number
  readonly restLimit?: number | null
  readonly timeLimitMs?: number
}

/**
 * A request for a rotation like those that practices ask for: rounds of 3 to 6 turns of different length, one shape or
 * two a round, gaps carried in, late comers, early leavers, some who do not keep, keepers who stay, sides, pairs apart,
 * fixed places. Nearly always possible; the same for the same seed.
 */
export function randomRotation(seed: number, wish: RandomRotationWish = {}): RotationRequestJson {
  const random = seededRandom(seed * 7919 + 17)
  const count = wish.players ?? random.whole(8, 24)
  const turnCount = wish.turns ?? random.whole(10, 40)
  const ids = Array.from({ length: count }, (_, index) => `p${String(index + 1).padStart(2, '0')}`)
  const spare = Math.max(0, Math.min(3, Math.floor(count / 5)))
  const players = ids.map((id, index) => playerOf(random, { id, turnCount, mayMiss: index < spare }))
  const rounds = roundsOf(random, { ids, turnCount, sure: count - spare })
  const limits = [null, 1, 2, 2, 2, 3] as const
  return {
    format: 'turnbook/rotation-request@1',
    players: random.shuffle(players),
    rounds,
    restLimit: wish.restLimit === undefined ? random.pick(limits) : wish.restLimit,
    apart: random.chance(0.4) ? [[ids.at(-1) ?? '', ids.at(-2) ?? '']] : [],
    fixed: random.chance(0.3)
      ? [{ turn: random.whole(1, turnCount), role: 'rest', player: random.pick(ids.slice(spare)) }]
      : [],
    seed,
    timeLimitMs: wish.timeLimitMs ?? 2000,
  }
}

function playerOf(
  random: SeededRandom,
  asked: { readonly id: string; readonly turnCount: number; readonly mayMiss: boolean },
): RotationRequestJson['players'][number] {
  const { id, turnCount, mayMiss } = asked
  const keeps = random.chance(0.8)
  const own = { id, keeps, gap: random.chance(0.7) ? gapOf(random, keeps) : {} }
  if (!mayMiss || random.chance(0.4)) return own
  const middle = random.whole(2, turnCount - 1)
  if (random.chance(0.4)) return { ...own, fromTurn: middle }
  if (random.chance(0.6)) return { ...own, toTurn: middle }
  const back = Math.min(turnCount, middle + 3)
  return {
    ...own,
    present:
      middle + 1 < back
        ? [
            [1, middle],
            [back, turnCount],
          ]
        : [[1, middle]],
  }
}

/** As a book carries it over: what someone got too much of one role lacks in the others. */
function gapOf(random: SeededRandom, keeps: boolean) {
  const gap = () => random.whole(-12, 12) * 10
  const [attack, defend, keep] = [gap(), gap(), keeps ? gap() : 0]
  return {
    attack,
    defend,
    keep,
    rest: -attack - defend - keep,
    outnumbering: gap(),
    level: gap(),
    outnumbered: gap(),
  }
}

type Station = { attack: number; defend: number; keep: number }

function roundsOf(
  random: SeededRandom,
  asked: { readonly ids: readonly string[]; readonly turnCount: number; readonly sure: number },
): RotationRequestJson['rounds'] {
  const rounds: RotationRequestJson['rounds'] = []
  const lengths = random.pick([[40], [45, 60], [30, 60], [40, 60, 90], [30, 45, 60], [40, 45, 60]])
  let left = asked.turnCount
  while (left > 0) {
    const turns = Math.min(left, random.whole(3, 6))
    left -= turns
    const shapes = [shapeOf(random, asked.sure), shapeOf(random, asked.sure)]
    const isMixed = random.chance(0.25)
    const mayHaveSides = asked.sure >= 10 && random.chance(0.15)
    const half = Math.ceil(asked.ids.length / 2)
    rounds.push({
      id: `r${rounds.length + 1}`,
      turnSeconds: random.pick(lengths),
      keepersStay: random.chance(0.6),
      ...(mayHaveSides
        ? {
            sides: {
              attack: asked.ids.filter((_, i) => i % 2 === 0 || i >= 2 * half),
              defend: asked.ids.filter((_, i) => i % 2 === 1),
            },
          }
        : {}),
      turns: Array.from({ length: turns }, (_, turn) => ({
        stations: (isMixed ? shapes[turn % 2] : shapes[0]) ?? [],
      })),
    })
  }
  return rounds
}

/** One to three stations alike, with seats for most of those who are there throughout. */
function shapeOf(random: SeededRandom, sure: number): Station[] {
  const stations = sure < 9 ? 1 : sure < 14 ? random.whole(1, 2) : random.whole(2, 3)
  const keep = random.chance(0.75) ? 1 : 0
  const most = Math.floor(sure / stations) - keep
  const attack = random.whole(1, Math.max(1, Math.min(4, most - 1)))
  const defend = random.whole(attack + 1 > most ? 0 : 1, Math.max(0, Math.min(3, most - attack)))
  return Array.from({ length: stations }, () => ({ attack, defend, keep }))
}
