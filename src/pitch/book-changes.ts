import type { PitchBook } from '#pitch/book-of-pitch'
import type { PracticeEvent } from '#practice/event'
import type { Passed } from '#practice/replay'
import type { Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

type Standing = Exclude<PracticeEvent, { kind: 'void' }>

/** What is to be written for the book to say what was tapped: only where it says otherwise. */
export type BookChanges = {
  /** Events that stand and are to be voided. */
  readonly voids: readonly string[]
  readonly turns: readonly Turn[]
  readonly passes: readonly Passed[]
}

/** Holds what stands against what was tapped. Whatever is the same stays as it was written. */
export function bookChanges(
  standing: readonly Standing[],
  { turns, passes }: Pick<PitchBook, 'turns' | 'passes'>,
): BookChanges {
  const wanted = countTexts([...turns.map(turnText), ...passes.map(passText)])
  const kept = new Map<string, number>()
  const voids = standing.flatMap((event) => {
    const text = event.kind === 'turn' ? turnText(event.turn) : passText(event)
    const left = (wanted.get(text) ?? 0) - (kept.get(text) ?? 0)
    if (left <= 0) return [event.id]
    kept.set(text, (kept.get(text) ?? 0) + 1)
    return []
  })
  const isNew = (text: string) => {
    const left = kept.get(text) ?? 0
    if (left > 0) kept.set(text, left - 1)
    return left <= 0
  }
  return {
    voids,
    turns: turns.filter((turn) => isNew(turnText(turn))),
    passes: passes.filter((pass) => isNew(passText(pass))),
  }
}

function countTexts(texts: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1)
  return counts
}

/** A turn as one text; what is left out and what is said to be nothing are the same. */
function turnText(turn: Turn): string {
  const { start, end, themeId, stations, round, continuesWait, continuesTurn, chosenBy } = turn
  const seats = stations.map(({ attack, defend, keep }) => [attack, defend, keep])
  return JSON.stringify([
    'turn',
    start,
    end,
    themeId,
    seats,
    round || null,
    continuesWait ?? false,
    continuesTurn ?? false,
    chosenBy ?? null,
  ])
}

function passText({ playerId, role, lengthSeconds }: Passed): string {
  return JSON.stringify(['passed', playerId, role, lengthSeconds])
}

/** The book with everyone under the player they turned out to be. */
export function underJoinedIds(book: PitchBook, joined: ReadonlyMap<PlayerId, PlayerId>): PitchBook {
  if (joined.size === 0) return book
  const idOf = (playerId: PlayerId) => joined.get(playerId) ?? playerId
  return {
    ...book,
    register: book.register.map((line) => ({ ...line, playerId: idOf(line.playerId) })),
    guests: book.guests.filter(({ playerId }) => !joined.has(playerId)),
    turns: book.turns.map((turn) => ({
      ...turn,
      stations: turn.stations.map(({ attack, defend, keep }) => ({
        attack: attack.map(idOf),
        defend: defend.map(idOf),
        keep: keep.map(idOf),
      })),
    })),
    passes: book.passes.map((pass) => ({ ...pass, playerId: idOf(pass.playerId) })),
  }
}
