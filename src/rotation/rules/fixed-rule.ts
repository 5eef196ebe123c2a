import type { Rule } from '#rotation/rule'

/** Places that the coach fixed are as fixed. */
export const fixedRule: Rule = (problem, plan) =>
  problem.fixed.flatMap(({ turn, player, place }) =>
    plan[turn]?.[player] === place ? [] : [{ rule: 'fixed', turn, players: [player] }],
  )
