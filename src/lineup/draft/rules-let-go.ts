import { andList } from '#common/and-list'
import { withDayFormat } from '#lineup/draft/change-match-request'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import type { LetGo } from '#lineup/draft/line-up-solver'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { noRules } from '#lineup/problem'
import { sayTime } from '#lineup/say-clock'
import type { PlayerId } from '#squad/player'

/** Every rule of a match that a coach may let go for it, one at a time, with what is asked then. */
export function rulesLetGo(
  request: MatchPlanRequest,
  nameOf: (player: PlayerId) => string,
): readonly LineUpChoice[] {
  const { rules, format } = request
  const without = (change: Partial<typeof rules>) => ({ ...request, rules: { ...rules, ...change } })
  const choices: readonly (LineUpChoice | null)[] = [
    rules.leastSpellSeconds > 0
      ? {
          key: 'leastSpellSeconds',
          words: `without staying on for ${sayTime(rules.leastSpellSeconds)} at least`,
          request: without({ leastSpellSeconds: noRules.leastSpellSeconds }),
        }
      : null,
    rules.longestSpellSeconds === null
      ? null
      : {
          key: 'longestSpellSeconds',
          words: `with longer on at a stretch than ${sayTime(rules.longestSpellSeconds)}`,
          request: without({ longestSpellSeconds: null }),
        },
    rules.longestOffSeconds === null
      ? null
      : {
          key: 'longestOffSeconds',
          words: `with longer off at a stretch than ${sayTime(rules.longestOffSeconds)}`,
          request: without({ longestOffSeconds: null }),
        },
    rules.mostChanges === null || format.changesAtBreaksOnly
      ? null
      : {
          key: 'mostChanges',
          words: 'with as many changes as it takes',
          request: without({ mostChanges: null }),
        },
    format.changesAtBreaksOnly
      ? {
          key: 'changesAtBreaksOnly',
          words: 'with changes inside periods too',
          request: withDayFormat(request, { changesAtBreaksOnly: false }),
        }
      : null,
    rules.keeperForPeriod
      ? {
          key: 'keeperForPeriod',
          words: 'with a change of goalkeeper inside a period',
          request: without({ keeperForPeriod: false }),
        }
      : null,
    rules.mostKeeperPeriods === null
      ? null
      : {
          key: 'mostKeeperPeriods',
          words: 'with more periods in goal for one player',
          request: without({ mostKeeperPeriods: null }),
        },
    ...request.apart.map((pair, index) => ({
      key: `apart ${index}`,
      words: `with ${andList(pair.map(nameOf))} on together`,
      request: {
        ...request,
        apart: request.apart.filter((own) => own !== pair),
        mayMeet: [...(request.mayMeet ?? []), pair],
      },
    })),
    ...request.players
      .map(({ playerId }, player) => ({ playerId, player }))
      .filter(({ playerId }) => request.locks.some((lock) => lock.playerId === playerId))
      .map(({ playerId, player }) => ({
        key: `fixed ${player}`,
        words: `with no place held for ${nameOf(playerId)}`,
        request: { ...request, locks: request.locks.filter((lock) => lock.playerId !== playerId) },
      })),
  ]
  return choices.filter((choice) => choice !== null)
}

/** The choice that lets one thing go; undefined for what is the format's own and no coach's to let go. */
export function choiceOfLetGo(choices: readonly LineUpChoice[], letGo: LetGo): LineUpChoice | undefined {
  const key =
    letGo.what === 'apart'
      ? `apart ${letGo.pair}`
      : letGo.what === 'fixed'
        ? `fixed ${letGo.player}`
        : letGo.what
  return choices.find((choice) => choice.key === key)
}
