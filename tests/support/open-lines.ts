import type { LineUpProblem } from '#lineup/problem'

/** The same problem with everybody at home in every line: lines ask for nothing but to stay in goal, or out of it. */
export function openLines(problem: LineUpProblem): LineUpProblem {
  const wishes = { back: 'likes', middle: 'likes', forward: 'likes' } as const
  return { ...problem, players: problem.players.map((own) => ({ ...own, wishes })) }
}
