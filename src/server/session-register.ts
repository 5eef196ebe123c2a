import 'server-only'
import type { Problem } from '#common/problem'
import type { Author } from '#data/author'
import type { ClubTx } from '#data/in-club'
import { recordRegister } from '#data/register-lines'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import { takenBackFromOut } from '#squad/out-for-today'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

type RegisterChange = { readonly before: readonly RegisterLine[]; readonly after: readonly RegisterLine[] }

/** Why a register cannot be written: two states at once, or being out for today taken back without a second answer. */
export function problemsOfRegister(
  { before, after }: RegisterChange,
  {
    takenBack,
    nameOf,
  }: { readonly takenBack: readonly PlayerId[]; readonly nameOf: (id: PlayerId) => string },
): readonly Problem[] {
  const unanswered = takenBackFromOut(before, after).filter((id) => !takenBack.includes(id))
  const doubled = checkLineOverlap(after).flatMap((fault) =>
    fault.rule === 'linesOverlap' ? [after[fault.line]?.playerId ?? ''] : [],
  )
  return [
    ...unanswered.map((id) => ({
      path: '',
      message: `${nameOf(id)} is out for today, and only a second answer takes that back. Press and hold “out for today” in the register and answer the question.`,
    })),
    ...[...new Set(doubled)].map((id) => ({
      path: '',
      message: `${nameOf(id)} is written in two ways at the same time. Write the register of ${nameOf(id)} again.`,
    })),
  ]
}

/** Writes the register where it changed; players whose lines are the same keep them. How many players were written anew. */
export async function writeRegister(
  tx: ClubTx,
  { before, after }: RegisterChange,
  at: { readonly sessionId: string; readonly by: Author },
): Promise<number> {
  const changed = playersWithOtherLines(before, after)
  const lines = after.filter((line) => changed.includes(line.playerId))
  if (changed.length > 0) await recordRegister(tx, { ...at, lines, alsoClear: changed })
  return changed.length
}

/** Whose lines are others in the second register than in the first. */
export function playersWithOtherLines(
  before: readonly RegisterLine[],
  after: readonly RegisterLine[],
): readonly PlayerId[] {
  const textOf = (lines: readonly RegisterLine[], id: PlayerId) =>
    lines
      .filter((line) => line.playerId === id)
      .map(({ from, to, state }) => `${from}-${to} ${state}`)
      .sort()
      .join(',')
  const ids = new Set([...before, ...after].map((line) => line.playerId))
  return [...ids].filter((id) => textOf(before, id) !== textOf(after, id))
}
