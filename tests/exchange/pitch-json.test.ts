import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pitchLimits, readBatch, readEvents } from '#exchange/pitch-batch'
import { deedShape, pitchEventShape } from '#exchange/pitch-json'
import type { Deed } from '#pitch/pitch-event'

const phone = '0190aaaa-0000-7000-8000-000000000001'
const id = '01932f3e-0000-7000-8000-000000000001'
const player = 'c56a4180-65aa-42ec-a945-5fd21dec0538'
const stations = [{ attack: [player], defend: [], keep: [] }]
const turn = { round: 0, seconds: 60, gapSeconds: 10, stations }

/** One of each kind; a kind without an example does not compile. */
const examples: { readonly [Kind in Deed['kind']]: Extract<Deed, { kind: Kind }> } = {
  begin: { kind: 'begin' },
  register: { kind: 'register', playerId: player, state: 'gone' },
  guest: { kind: 'guest', playerId: player, name: 'Zoe Pike' },
  replan: { kind: 'replan', fromTurn: 3, turns: [turn], sentence: 'As fair as eleven allow.' },
  roundDone: { kind: 'roundDone', round: 1, turns: [turn] },
  turnStart: { kind: 'turnStart', turn: 2, stations },
  change: { kind: 'change', start: id, stations },
  turnEnd: {
    kind: 'turnEnd',
    start: id,
    endings: [{ station: 0, endingId: 'goal', points: 2, side: 1 }],
  },
  points: { kind: 'points', round: 0, side: 'attack', points: 12 },
  choice: { kind: 'choice', turn: 1, by: 'attack', size: 2, side: 0 },
  passed: { kind: 'passed', turn: 1, playerId: player, role: 'keep' },
  asPlanned: { kind: 'asPlanned', turns: [turn], left: [{ playerId: player, afterTurn: 1 }] },
  stop: { kind: 'stop' },
  undo: { kind: 'undo', undoes: id, secondAnswer: true },
}
const event = (deed: unknown) => ({ id, deviceId: phone, at: 1_790_000_000_000, deed })
const batch = (...events: readonly unknown[]) => {
  const read = readBatch({ deviceId: phone, cursor: 0, events })
  return read.ok ? { ok: true as const, batch: readEvents(pitchEventShape, read.batch.events) } : read
}
const whyOf = (deed: unknown) => {
  const read = batch(event(deed))
  return read.ok ? (read.batch.refused[0]?.why ?? null) : 'not read'
}

describe('what is tapped, as a phone sends it', () => {
  it.each(Object.entries(examples))('%s is read as it was written', (_kind, deed) => {
    const read = batch(event(deed))
    expect(read).toMatchObject({ ok: true, batch: { events: [event(deed)], refused: [] } })
    expect(deedShape.parse(JSON.parse(JSON.stringify(deed)))).toEqual(deed)
  })

  it.each<[what: string, deed: unknown]>([
    ['of no kind', {}],
    ['of a kind there is none of', { kind: 'dance' }],
    ['with a key too many', { ...examples.begin, also: 1 }],
    ['of nobody', { ...examples.register, playerId: 'Ada' }],
    ['in a state there is none of', { ...examples.register, state: 'tired' }],
    ['without a name', { ...examples.guest, name: '  ' }],
    ['with a name of nothing but signs', { ...examples.guest, name: '…' }],
    ['with a name that is too long', { ...examples.guest, name: 'x'.repeat(81) }],
    ['before the first turn', { ...examples.turnStart, turn: -1 }],
    ['in half a turn', { ...examples.turnStart, turn: 1.5 }],
    ['with a turn of no length', { ...examples.roundDone, turns: [{ ...turn, seconds: 0 }] }],
    [
      'with more turns than any practice',
      { ...examples.replan, turns: Array.from({ length: 201 }, () => turn) },
    ],
    ['with points without end', { ...examples.points, points: 1e9 }],
    ['for a third side', { ...examples.points, side: 2 }],
    ['undoing nothing', { kind: 'undo', undoes: 'that' }],
  ])('%s is refused in a sentence that says where', (_what, deed) => {
    expect(whyOf(deed)).toMatch(/^The book cannot read this: events\[0\]/)
  })

  it('is refused when it is far too long', () => {
    const long = {
      ...turn,
      stations: Array.from({ length: 9 }, () => ({
        attack: Array.from({ length: 30 }, () => player),
        defend: [],
        keep: [],
      })),
    }
    expect(whyOf({ ...examples.replan, turns: Array.from({ length: 100 }, () => long) })).toMatch(
      /longer than anything/,
    )
  })

  it.each(['2024-01-01', -1, 4.5, Date.UTC(2100, 0, 1), null])('at %s is at no time', (at) => {
    const read = batch({ ...event(examples.begin), at })
    expect(read).toMatchObject({ ok: true, batch: { events: [], refused: [{ id }] } })
  })

  it('has an id of version 7, as RFC 9562 writes it, in one spelling', () => {
    // The example of RFC 9562, appendix A.6.
    const example = '017F22E2-79B0-7CC3-98C4-DC0C0C07398F'
    const read = batch({ ...event(examples.begin), id: example })
    expect(read).toMatchObject({ ok: true, batch: { events: [{ id: example.toLowerCase() }] } })
    // Appendix A.3: version 4.
    const random = batch({ ...event(examples.begin), id: '919108f7-52d1-4320-9bac-f847db4148a8' })
    expect(random).toMatchObject({ ok: true, batch: { events: [] } })
  })

  it('whatever stands in a batch, each event is either read or refused with a sentence', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.jsonValue(), fc.constantFrom(...Object.values(examples)).map(event)), {
          maxLength: 20,
        }),
        (events) => {
          const read = batch(...events)
          if (!read.ok) throw new Error('a batch is read')
          expect(read.batch.events.length + read.batch.refused.length).toBe(events.length)
          for (const { why } of read.batch.refused) expect(why.length).toBeGreaterThan(10)
        },
      ),
    )
  })

  it('more than a batch can hold is no batch', () => {
    const many = Array.from({ length: pitchLimits.events + 1 }, () => event(examples.begin))
    expect(batch(...many).ok).toBe(false)
    expect(readBatch('batch').ok).toBe(false)
    expect(readBatch({ deviceId: phone, cursor: -1, events: [] }).ok).toBe(false)
  })
})
