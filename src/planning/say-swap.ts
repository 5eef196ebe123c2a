import type { Swapped } from '#planning/swap'
import type { RuleBreak } from '#rotation/rule'

/** What a swap comes to: whether it may be made, and what it costs in evenness. */
export type SaidSwap = { readonly isAllowed: boolean; readonly sentences: readonly string[] }

const noise = 1e-6

/** `nameOf` by the player's place in the list; turns are said from 1. */
export function saySwap(swapped: Swapped, nameOf: (player: number) => string): SaidSwap {
  if (swapped.broken.length > 0) {
    const said = swapped.broken.map((one) => sayBreak(one, nameOf))
    return { isAllowed: false, sentences: [...new Set(said)] }
  }
  const sentences = [sayEvenness(swapped), ...sayTurns(swapped), ...sayWait(swapped), ...sayLater(swapped)]
  return { isAllowed: true, sentences }
}

function sayEvenness({ before, after }: Swapped): string {
  const change = after.unfairness - before.unfairness
  if (Math.abs(change) <= noise * Math.max(1, before.unfairness)) return 'Costs nothing in evenness.'
  if (before.unfairness <= noise) return 'The plan was perfectly even; with this it is not.'
  const percent = Math.round((Math.abs(change) / before.unfairness) * 1000) / 10
  const said = percent < 0.1 ? 'less than 0.1 %' : `${percent} %`
  return change > 0 ? `Costs ${said} in evenness.` : `Makes the plan more even by ${said}.`
}

function sayTurns({ turns }: Swapped): readonly string[] {
  if (turns.length < 2) return []
  const numbers = turns.map((turn) => turn + 1)
  return [`Changes turns ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)} together.`]
}

function sayWait({ waitBeyond }: Swapped): readonly string[] {
  return waitBeyond === null ? [] : [`One of them then waits ${waitBeyond} turns in a row.`]
}

function sayLater({ before, after }: Swapped): readonly string[] {
  const more = after.roleChanges - before.roleChanges
  if (more === 0) return []
  const count = Math.abs(more) === 1 ? 'One change' : `${Math.abs(more)} changes`
  return [`${count} of role inside a round ${more > 0 ? 'more' : 'fewer'}.`]
}

/** A broken rule in a coach's words. */
function sayBreak({ rule, turn, players }: RuleBreak, nameOf: (player: number) => string): string {
  const [one = 'Somebody', other = 'somebody else'] = players.map(nameOf)
  const at = `in turn ${turn + 1}`
  switch (rule) {
    case 'apart':
      return `${one} and ${other} are kept apart, and would meet ${at}.`
    case 'keepers':
      return `${one} would be in goal ${at}, and is not to be.`
    case 'sides':
      return `${one} would play for the other side ${at}.`
    case 'keepersStay':
      return `Whoever keeps goal keeps it for the whole round; ${at} that would change.`
    case 'fixed':
      return `A place that you hold fast would change ${at}.`
    case 'presence':
      return `${one} is not there ${at}.`
    default:
      return `A limit set for ${one} would be broken ${at}.`
  }
}
