import { resting } from '#rotation/place'
import type { Rule } from '#rotation/rule'

/** Whoever never waits alone rests only in turns in which somebody else rests, too. */
export const neverRestsAloneRule: Rule = (problem, plan) =>
  plan.flatMap((places, turn) => {
    const rest = places.flatMap((place, player) => (place === resting ? [player] : []))
    const [only] = rest
    if (rest.length !== 1 || only === undefined || !problem.players[only]?.neverRestsAlone) return []
    return [{ rule: 'neverRestsAlone', turn, players: [only] }]
  })
