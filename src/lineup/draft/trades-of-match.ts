import { countWord } from '#common/count-word'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import { rulesLetGo } from '#lineup/draft/rules-let-go'
import type { MatchPlanRequest } from '#lineup/match-plan'
import type { PlayerId } from '#squad/player'

/** Changes fewer that are worth asking about. */
const fewer = [1, 2, 4]
const mostChoices = 6

/** What could be traded against evenness: fewer changes than the line-up has, more where they are limited, a rule let go. */
export function tradesOfMatch(
  request: MatchPlanRequest,
  of: { readonly changes: number; readonly nameOf: (player: PlayerId) => string },
): readonly LineUpChoice[] {
  const { rules, format } = request
  const withMost = (mostChanges: number) => ({ ...request, rules: { ...rules, mostChanges } })
  const said = (count: number, what: string) =>
    `with ${countWord(count)} ${count === 1 ? 'change' : 'changes'} ${what}`
  const calmer = format.changesAtBreaksOnly
    ? []
    : fewer
        .filter((count) => count < of.changes)
        .map((count) => ({
          key: `fewer ${count}`,
          words: said(count, 'fewer'),
          request: withMost(of.changes - count),
        }))
  const none =
    of.changes > 0 && !format.changesAtBreaksOnly
      ? [{ key: 'none', words: 'with changes at breaks only', request: withMost(0) }]
      : []
  const isBinding = rules.mostChanges !== null && of.changes === rules.mostChanges
  const livelier =
    isBinding && !format.changesAtBreaksOnly
      ? [{ key: 'more', words: said(2, 'more'), request: withMost(of.changes + 2) }]
      : []
  const letGo = rulesLetGo(request, of.nameOf).filter(({ key }) => key !== 'locks' && key !== 'mostChanges')
  return [...calmer, ...none, ...livelier, ...letGo].slice(0, mostChoices)
}
