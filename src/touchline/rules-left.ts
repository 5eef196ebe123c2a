import { type LineUpRules, noRules } from '#lineup/problem'
import type { MatchState } from '#touchline/match-state'

/** What of a new plan had to be let go, for there to be one. */
export type LetGo = 'ownRules' | 'keeperForPeriod' | 'keepers'

/** The rules of the plan for what is left of the match: what of their limits was used is gone. */
export function rulesLeft(state: MatchState, letGo: readonly LetGo[]): LineUpRules {
  const { plan, format, made } = state
  const planned: LineUpRules = plan?.rules ?? {
    ...noRules,
    mayReturn: format.mayReturn,
    mostSubstitutions: format.mostSubstitutions,
    mostKeeperPeriods: format.mostKeeperPeriods,
  }
  const inside = state.spells.filter(({ from }) => from > 0).length
  const used = inside + atBreaks(state)
  const left = (most: number | null, spent: number) => (most === null ? null : Math.max(0, most - spent))
  const rules: LineUpRules = {
    ...planned,
    mostSubstitutions: left(planned.mostSubstitutions, used),
    mostChanges: format.changesAtBreaksOnly
      ? null
      : left(
          planned.mostChanges,
          made.reduce((sum, { on }) => sum + on.length, 0),
        ),
  }
  if (!letGo.includes('ownRules')) return rules
  const own = { leastSpellSeconds: 0, longestSpellSeconds: null, longestOffSeconds: null, mostChanges: null }
  const isFree = letGo.includes('keeperForPeriod')
  return { ...rules, ...own, ...(isFree ? { keeperForPeriod: false, mostKeeperPeriods: null } : {}) }
}

/** Who came on at breaks: on at a kick-off, and not on at the whistle before it. */
function atBreaks({ periods, spells }: MatchState): number {
  return periods.slice(1).reduce((sum, { period }, index) => {
    const before = periods[index]
    const atWhistle = new Set(
      spells
        .filter((one) => one.period === before?.period && one.to === before.length)
        .map(({ playerId }) => playerId),
    )
    const atKickOff = spells.filter((one) => one.period === period && one.from === 0)
    return sum + atKickOff.filter(({ playerId }) => !atWhistle.has(playerId)).length
  }, 0)
}
