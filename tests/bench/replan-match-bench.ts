import { placesOfFormat } from '#lineup/draft/places-of-format'
import type { MatchFormat } from '#match/format/match-format'
import { foldMatch } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import { replanMatch } from '#touchline/replan-match'
import { planAtOnce } from '../support/plan-at-once'
import { seededRandom } from '../support/seeded-random'
import { halfPromised, kickOff, packOf, requestOf, sevens, stateAt, taps } from '../support/tapped-match'
import { quantile } from './quantile'

const sides: readonly Pick<MatchFormat, 'aSide' | 'periodSeconds'>[] = [
  { aSide: 5, periodSeconds: [600, 600, 600, 600] },
  { aSide: 7, periodSeconds: [1500, 1500] },
  { aSide: 9, periodSeconds: [1800, 1800] },
  { aSide: 11, periodSeconds: [2400, 2400] },
]

/**
 * A new plan beside a match: what a coach waits for after somebody went off hurt. Seeded matches of 5 to 11 a side with
 * 2 to 7 more than places, at a moment of the first period; the target is 150 ms at the 95th percentile.
 */
export function benchReplanMatch({ isFull }: { readonly isFull: boolean }): string {
  const replans: number[] = []
  const cpu: number[] = []
  const folds: number[] = []
  let made = 0
  const count = isFull ? 200 : 40
  for (let seed = 1; seed <= count; seed += 1) {
    const { state, pack, events, second } = hurtAt(seed)
    const began = performance.now()
    const cpuBegan = process.cpuUsage()
    if (replanMatch(state, halfPromised, { seed }).ok) made += 1
    const planned = performance.now()
    const { user, system } = process.cpuUsage(cpuBegan)
    cpu.push((user + system) / 1000)
    stateAt(pack, events, second)
    replans.push(planned - began)
    folds.push(performance.now() - planned)
  }
  const within = replans.filter((own) => own <= 150).length
  const cells = [
    'off hurt beside a match',
    count,
    `${quantile(replans, 0.5).toFixed(0)} ms`,
    `${quantile(replans, 0.95).toFixed(0)} ms`,
    `${quantile(cpu, 0.95).toFixed(0)} ms`,
    `${Math.max(...replans).toFixed(0)} ms`,
    `${((100 * within) / count).toFixed(1)} %`,
    `${made} of ${count}`,
    `${quantile(folds, 0.95).toFixed(1)} ms`,
  ]
  return [
    '| a new plan in a match | matches | median | 95th percentile | its processor time | longest | within 150 ms | a plan was found | all taps added up, 95th percentile |',
    '|---|---|---|---|---|---|---|---|---|',
    `| ${cells.join(' | ')} |`,
  ].join('\n')
}

function hurtAt(seed: number) {
  const random = seededRandom(seed)
  const bare: MatchFormat = { ...sevens, ...random.pick(sides), shapes: [] }
  const format: MatchFormat = { ...bare, shapes: [{ name: '', places: placesOfFormat(bare) }] }
  const request = requestOf(format.aSide + random.whole(2, 7), { format })
  const pack = packOf(planAtOnce(request))
  const first = kickOff(foldMatch(pack, []))
  const second = random.whole(60, (format.periodSeconds[0] ?? 0) - 60)
  const before = stateAt(pack, taps([0, first]), second)
  const playerId = random.pick(before.on).playerId
  const hurt: MatchDeed = { kind: 'register', playerId, state: 'notPlaying' }
  const events = taps([0, first], [second, hurt])
  return { pack, events, second, state: stateAt(pack, events, second) }
}
