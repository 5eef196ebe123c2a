import type { Proof } from '#common/proof'
import type { RotationProblem } from '#rotation/problem'
import type { Rotation } from '#rotation/rotation'

/** What a rotation is worth, in a coach's words. */
export function explainRotation(problem: RotationProblem, rotation: Rotation): string {
  return [
    sayFairness(problem, rotation.unfairness),
    sayWaiting(rotation),
    sayPrice(rotation),
    sayMixing(rotation.mixing),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

function sayFairness(problem: RotationProblem, { value, bound, proven }: Proof): string {
  const players = problem.players.filter(({ present }) => present.some((isThere) => isThere)).length
  const turns = `${counted(players, 'player')} and ${counted(problem.turns.length, 'turn')}`
  if (proven) return `Nothing fairer is possible with ${turns}.`
  const percent = bound > 0 ? ((value - bound) / bound) * 100 : Number.POSITIVE_INFINITY
  if (percent > 100) return `A fair plan for ${turns}; how much fairer one could be is not known.`
  return `Within ${percent < 1 ? '1' : Math.ceil(percent)} % of the best that any plan for ${turns} could do.`
}

function sayWaiting({ restLimit }: Rotation): string {
  const { asked, used, proven } = restLimit
  if (used === null || asked === null) return ''
  const said = `Nobody waits more than ${counted(used, 'turn')} in a row`
  if (used === asked) return `${said}.`
  return proven
    ? `${said}; fewer is not possible with these numbers.`
    : `${said}; ${asked} was asked for and not found.`
}

function sayPrice({ restLimit }: Rotation): string {
  const { price, priceAtMost } = restLimit
  const most = price ?? priceAtMost
  if (most === null || (price !== null && price < 5e-4)) return ''
  const percent = `${Math.max(0.1, Math.round(most * 1000) / 10)} %`
  return price === null
    ? `The limit on waiting costs at most ${percent} in evenness.`
    : `The limit on waiting costs ${percent} in evenness.`
}

function sayMixing({ value, proven }: Proof): string {
  return proven && value > 0 ? 'Team-mates are mixed as evenly as can be.' : ''
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`
}
