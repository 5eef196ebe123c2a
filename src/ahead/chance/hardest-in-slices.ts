import { attendancesOf } from '#ahead/chance/attendances'
import type { ChanceOptions } from '#ahead/chance/chances'
import { dealerAsPlanned } from '#ahead/chance/deal-as-planned'
import { endJudge, secondsOutside } from '#ahead/chance/judge-ends'
import { type MeanLoss, meanLoss, pairedLoss } from '#ahead/chance/mean-loss'
import { practicePlayer } from '#ahead/chance/practice-player'
import { practicesToDeal } from '#ahead/chance/practice-to-deal'
import { copyStanding, type Standing, standingLike, standingNow } from '#ahead/chance/standing'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** What it does when a practice falls out and the rest of the plan stays. */
export type LostPractice = {
  /** Place in the problem's practices. */
  readonly practice: number
  /** So many players fewer end inside, on average: in all that is judged, and in roles and situations alone. */
  readonly fewerInside: MeanLoss
  readonly fewerInSeats: MeanLoss
  /** So many seconds more lie outside the tolerance, over everyone. */
  readonly moreOutside: MeanLoss
}

export type HardestToLose = {
  readonly isExact: boolean
  readonly played: number
  /** Each practice to come. */
  readonly lost: readonly LostPractice[]
  /**
   * The one that costs most players inside; where none costs any in all, in roles and situations; and where none costs any
   * there, seconds. Null: none surely costs anything.
   */
  readonly hardest: { readonly lost: LostPractice; readonly by: 'inside' | 'seats' | 'seconds' } | null
}

/** Rests of a term in one slice: each is played once whole and once from every practice on. */
const slice = 2

/**
 * Which practice of a plan would be hardest to lose: everyone comes and stays away as they do when it is held. In slices:
 * each yields the part that is done, 0-1.
 */
export function* hardestInSlices(
  problem: AheadProblem,
  plan: AheadPlan,
  options: ChanceOptions,
): Generator<number, HardestToLose> {
  const { practices, players } = problem
  const attendances = attendancesOf(problem, options)
  const play = practicePlayer(practicesToDeal(problem, plan), {
    playerCount: players.length,
    deal: dealerAsPlanned(players.length),
  })
  const judge = judgeOfAll(problem)
  const now = standingNow(problem)
  const before = practices.map(() => standingLike(now))
  const [whole, lost] = [standingLike(now), standingLike(now)]
  const losses = practices.map(() => ({ inside: pairedLoss(), seats: pairedLoss(), seconds: pairedLoss() }))
  let played = 0
  for (const { came, weight } of attendances.each()) {
    copyStanding({ from: now, to: whole })
    before.forEach((standing, at) => {
      copyStanding({ from: whole, to: standing })
      play(at, came, whole)
    })
    const held = judge(whole)
    losses.forEach(({ inside, seats, seconds }, without) => {
      copyStanding({ from: before[without] ?? now, to: lost })
      for (let at = without + 1; at < practices.length; at++) play(at, came, lost)
      const end = judge(lost)
      inside.add(held.inside - end.inside, weight)
      seats.add(held.seats - end.seats, weight)
      seconds.add(end.seconds - held.seconds, weight)
    })
    played++
    if (played % slice === 0) yield played / attendances.count
  }
  const all = losses.map(
    ({ inside, seats, seconds }, practice): LostPractice => ({
      practice,
      fewerInside: meanLoss(inside, attendances),
      fewerInSeats: meanLoss(seats, attendances),
      moreOutside: meanLoss(seconds, attendances),
    }),
  )
  return { isExact: attendances.isExact, played, lost: all, hardest: hardestOf(all) }
}

/** Less than this is nothing: sums of weights are off by a hair. */
const leastInside = 1e-9
const leastSeconds = 1e-3

function hardestOf(lost: readonly LostPractice[]): HardestToLose['hardest'] {
  const worst = (by: NonNullable<HardestToLose['hardest']>['by']) => {
    const of = lossBy[by]
    const sure = lost.filter((own) => own[of].low > (by === 'seconds' ? leastSeconds : leastInside))
    const most = sure.reduce<LostPractice | null>(
      (worse, own) => (worse === null || own[of].mean > worse[of].mean ? own : worse),
      null,
    )
    return most && { lost: most, by }
  }
  return worst('inside') ?? worst('seats') ?? worst('seconds')
}

const lossBy = { inside: 'fewerInside', seats: 'fewerInSeats', seconds: 'moreOutside' } as const

function judgeOfAll(problem: AheadProblem) {
  const { inside, judgedCount } = endJudge(problem)
  return (end: Standing) => {
    const marks = inside(end)
    let [all, seats] = [0, 0]
    for (let first = 0; first < marks.length; first += judgedCount) {
      all += marks[first] ?? 0
      seats += marks[first + 1] ?? 0
    }
    return { inside: all, seats, seconds: secondsOutside(problem, end) }
  }
}
