import { parseMark } from '#practice/grid-mark'
import type { MatchInput, PracticeInput } from '#server/session-input'
import { hereThroughout } from '#squad/register-segments'
import { aColumn } from './grid-builder'
import type { TestClub } from './test-club'

type OfClub = Pick<TestClub, 'squadId' | 'playerIds'>

/** What the page of writing sends: everyone of the club here, one line of marks a player, one column a mark. */
export function typedPractice(
  club: OfClub,
  lines: readonly string[],
  change: Partial<PracticeInput> & Pick<PracticeInput, 'sessionId' | 'version'>,
): PracticeInput {
  const marks = lines.map((line) => line.split(' ').map((text) => parseMark(text === '.' ? '' : text) ?? ''))
  return {
    squadId: club.squadId,
    register: lines.map((_, index) => ({ playerId: playerAt(club, index), segments: [...hereThroughout] })),
    guests: [],
    takenBack: [],
    way: 'typedLater',
    lengthSeconds: 3600,
    grid: {
      columns: (marks[0] ?? []).map((_, index) => ({
        ...aColumn({ id: `c${index + 1}`, title: `Round ${index + 1}`, turnCount: 2 }),
        atATime: null,
      })),
      rows: marks.map((own, index) => ({ playerId: playerAt(club, index), marks: own })),
    },
    voidPasses: [],
    ...change,
  }
}

export function typedMatch(
  club: OfClub,
  lines: readonly string[],
  change: Partial<MatchInput> & Pick<MatchInput, 'sessionId' | 'version'>,
): MatchInput {
  return {
    squadId: club.squadId,
    register: lines.map((_, index) => ({ playerId: playerAt(club, index), segments: [...hereThroughout] })),
    guests: [],
    takenBack: [],
    grid: {
      periods: [
        { start: 0, end: 1200 },
        { start: 1500, end: 2700 },
      ],
      changes: [600],
      rows: lines.map((line, index) => ({
        playerId: playerAt(club, index),
        marks: line
          .split(' ')
          .map((mark) => (mark === '.' ? '' : mark)) as MatchInput['grid']['rows'][number]['marks'],
      })),
    },
    ...change,
  }
}

/** A form as the page sends it: everything typed in one field. */
export function formOf(input: object): FormData {
  const form = new FormData()
  form.set('json', JSON.stringify(input))
  return form
}

function playerAt(club: OfClub, index: number): string {
  const id = club.playerIds[index]
  if (!id) throw new Error(`the club has ${club.playerIds.length} players`)
  return id
}
