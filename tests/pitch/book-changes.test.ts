import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bookChanges, underJoinedIds } from '#pitch/book-changes'
import type { PracticeEvent } from '#practice/event'
import { replayPractice } from '#practice/replay'
import type { Turn } from '#practice/turn'

const player = fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f')

/** Turns one after another, with a few players each. */
const someTurns = fc
  .array(
    fc.record({
      length: fc.integer({ min: 1, max: 90 }),
      gap: fc.integer({ min: 0, max: 30 }),
      seated: fc.uniqueArray(player, { minLength: 1, maxLength: 4 }),
      round: fc.constantFrom('First', 'Second', null),
      continuesWait: fc.boolean(),
    }),
    { maxLength: 8 },
  )
  .map((drawn) => {
    let next = 0
    return drawn.map(({ length, gap, seated, round, continuesWait }): Turn => {
      const start = next
      next = start + length + gap
      const [keep, ...others] = seated
      const stations = [{ attack: others, defend: [], keep: keep ? [keep] : [] }]
      return { start, end: start + length, themeId: null, stations, round, continuesWait }
    })
  })
const somePasses = fc.array(
  fc.record({
    playerId: player,
    role: fc.constantFrom('attack' as const, 'keep' as const),
    lengthSeconds: fc.constantFrom(40, 60),
  }),
  { maxLength: 5 },
)
const someBook = fc.record({ turns: someTurns, passes: somePasses })

/** Writes what is to be changed behind what stands, as the server does. */
function write(
  standing: readonly PracticeEvent[],
  changes: ReturnType<typeof bookChanges>,
): readonly PracticeEvent[] {
  const id = (kind: string, index: number) => `${standing.length} ${kind} ${index}`
  return [
    ...standing,
    ...changes.voids.map((voids, index) => ({ kind: 'void' as const, id: id('void', index), voids })),
    ...changes.turns.map((turn, index) => ({ kind: 'turn' as const, id: id('turn', index), turn })),
    ...changes.passes.map((pass, index) => ({ kind: 'passed' as const, id: id('pass', index), ...pass })),
  ]
}

const standingOf = (events: readonly PracticeEvent[]) => {
  const voided = new Set(events.flatMap((event) => (event.kind === 'void' ? [event.voids] : [])))
  return events.filter(
    (event): event is Exclude<PracticeEvent, { kind: 'void' }> =>
      event.kind !== 'void' && !voided.has(event.id),
  )
}
const sorted = (passes: readonly object[]) => passes.map((pass) => JSON.stringify(pass)).sort()

describe('what is written for the book to say what was tapped', () => {
  it('makes any book into any other, and nothing is left to write after that', () => {
    fc.assert(
      fc.property(fc.array(someBook, { minLength: 1, maxLength: 4 }), (books) => {
        let events: readonly PracticeEvent[] = []
        for (const book of books) {
          events = write(events, bookChanges(standingOf(events), book))
          const { turns, passes } = replayPractice(events)
          expect(turns).toEqual(book.turns)
          expect(sorted(passes)).toEqual(sorted(book.passes))
          expect(bookChanges(standingOf(events), book)).toEqual({ voids: [], turns: [], passes: [] })
        }
      }),
    )
  })

  it('leaves as written whatever is the same', () => {
    fc.assert(
      fc.property(someBook, fc.nat(), (book, place) => {
        fc.pre(book.turns.length > 0)
        const events = write([], bookChanges([], book))
        const at = place % book.turns.length
        const turns = book.turns.map((turn, index) =>
          index === at ? { ...turn, end: turn.end - 0.5 } : turn,
        )
        const changes = bookChanges(standingOf(events), { ...book, turns })
        expect([changes.voids.length, changes.turns.length, changes.passes.length]).toEqual([1, 1, 0])
      }),
    )
  })

  it('takes what is left out and what is said to be nothing as the same', () => {
    const turn: Turn = { start: 0, end: 40, themeId: null, stations: [] }
    const whole = { ...turn, round: null, continuesWait: false, continuesTurn: false, chosenBy: null }
    const standing = [{ kind: 'turn', id: '1', turn: whole } as const]
    expect(bookChanges(standing, { turns: [turn], passes: [] })).toEqual({ voids: [], turns: [], passes: [] })
  })
})

describe('guests who were joined', () => {
  it('stand under the player they turned out to be, everywhere', () => {
    const book = {
      register: [{ playerId: 'guest', from: 0, to: 60, state: 'here' as const }],
      guests: [{ playerId: 'guest', name: 'Zoe' }],
      turns: [
        { start: 0, end: 60, themeId: null, stations: [{ attack: ['guest'], defend: ['b'], keep: [] }] },
      ],
      passes: [{ playerId: 'guest', role: 'keep' as const, lengthSeconds: 60 }],
      written: 'tapped' as const,
      lengthSeconds: 60,
      lengthAsked: null,
      lastSecond: 60,
    }
    const joined = underJoinedIds(book, new Map([['guest', 'a']]))
    expect(JSON.stringify(joined)).not.toContain('guest"')
    expect(joined).toMatchObject({ guests: [], passes: [{ playerId: 'a' }], register: [{ playerId: 'a' }] })
    expect(joined.turns[0]?.stations).toEqual([{ attack: ['a'], defend: ['b'], keep: [] }])
  })
})
