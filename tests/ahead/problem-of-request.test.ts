import { describe, expect, it } from 'vitest'
import { problemOfAhead } from '#ahead/problem-of-request'
import { noSeats } from '#ahead/seat-column'
import { awayFor, dropPractice, movePractice } from '#ahead/what-if'
import { noSeconds } from '#rotation/fair-seconds'
import {
  aheadRequest,
  programmeRule,
  requestedDesign,
  requestedPlayer,
  theme,
} from '../support/ahead-request-builder'

const tuesday = '2026-01-06'
const next = '2026-01-13'

describe('what a request for the weeks ahead comes to', () => {
  it('counts weeks from Monday to Sunday, the one that the term begins in first', () => {
    // ISO 8601: 1 January 2026 is a Thursday, in 2026-W01, which ends on Sunday the 4th.
    const { practices } = problemOfAhead(
      aheadRequest(['2026-01-05', '2026-01-04', '2026-01-01', '2026-03-08']),
    )
    expect(practices.map(({ day, week }) => [day, week])).toEqual([
      ['2026-01-01', 1],
      ['2026-01-04', 1],
      ['2026-01-05', 2],
      ['2026-03-08', 10],
    ])
  })

  it('counts on over a year that has 53 weeks', () => {
    // ISO 8601: a year that begins on a Thursday, as 2026 does, has 53 weeks; 2026-W53 ends on Sunday 3 January 2027.
    const term = { firstDay: '2026-12-21', lastDay: '2027-02-28' }
    const { practices } = problemOfAhead(aheadRequest(['2026-12-27', '2027-01-03', '2027-01-04'], { term }))
    expect(practices.map(({ week }) => week)).toEqual([1, 2, 3])
  })

  it('leaves out days without practice, and days outside the term', () => {
    const request = aheadRequest([tuesday, next, '2026-03-09', '2025-12-31'], {
      closed: [{ firstDay: '2026-01-07', lastDay: next }],
    })
    expect(problemOfAhead(request).practices.map(({ day }) => day)).toEqual([tuesday])
  })

  it('offers a design where it fits the ground either way round', () => {
    const on = (lengthM: number, widthM: number) => {
      const request = aheadRequest([tuesday])
      const practices = request.practices.map((own) => ({ ...own, ground: { lengthM, widthM } }))
      return problemOfAhead({ ...request, practices }).practices[0]?.offers.length
    }
    expect([on(20, 15), on(15, 20), on(40, 20), on(19, 40), on(40, 14)]).toEqual([1, 1, 1, 1, 0])
  })

  it('adds up the seats of a practice, turn by turn, as far as its time goes', () => {
    const offerOf = (lengthSeconds: number | null) => {
      const request = aheadRequest([tuesday], { players: requestedSix(5) })
      const practices = request.practices.map((own) => ({ ...own, lengthSeconds }))
      return problemOfAhead({ ...request, practices }).practices[0]?.offers[0]
    }
    expect(offerOf(null)).toEqual({
      theme: 0,
      design: 0,
      seats: { ...noSeats, attackLevel: 1200, defendLevel: 1200, keep: 600 },
      liveSeconds: 600,
    })
    // Ten turns of 60 seconds with nine gaps of 20 are 780.
    expect(offerOf(780)?.liveSeconds).toBe(600)
    expect(offerOf(779)?.liveSeconds).toBe(540)
    expect(offerOf(140)?.liveSeconds).toBe(120)
    expect(offerOf(59)).toBeUndefined()
  })

  it('plays rounds as large as those expected can fill, and leaves out what would not be the design any more', () => {
    const seatsFor = (count: number) =>
      problemOfAhead(
        aheadRequest([tuesday], {
          players: requestedSix(count),
          designs: [requestedDesign('x', { rounds: [round([{ attack: 3, defend: 2, keep: 1 }])] })],
        }),
      ).practices[0]?.offers[0]?.seats
    expect(seatsFor(6)).toEqual({ ...noSeats, attackOutnumbering: 180, defendOutnumbered: 120, keep: 60 })
    expect(seatsFor(4)).toEqual({ ...noSeats, attackOutnumbering: 120, defendOutnumbered: 60, keep: 60 })
    expect(seatsFor(2)).toBeUndefined()
  })

  it('swaps the sides of a free game at half-time', () => {
    const rounds = [{ ...round([{ attack: 3, defend: 2, keep: 0 }]), turnCount: 2, isFreeGame: true }]
    const { practices } = problemOfAhead(
      aheadRequest([tuesday], { players: requestedSix(5), designs: [requestedDesign('x', { rounds })] }),
    )
    expect(practices[0]?.offers[0]?.seats).toEqual({
      ...noSeats,
      attackOutnumbering: 180,
      defendOutnumbered: 120,
      attackOutnumbered: 120,
      defendOutnumbering: 180,
    })
  })

  it('counts on one who keeps goal where one may come at all, and on none where none does', () => {
    const others = requestedSix(6).map((own) => ({ ...own, keeps: false }))
    const offersWith = (keeper: ReturnType<typeof requestedPlayer>) =>
      problemOfAhead(aheadRequest([tuesday], { players: [keeper, ...others] })).practices[0]
    const seldom = offersWith(requestedPlayer('p0', { came: 1, held: 5 }))
    expect(seldom?.comes[0]).toBeLessThan(0.5)
    expect(seldom?.offers[0]?.seats.keep).toBe(600)
    const away = [{ firstDay: tuesday, lastDay: tuesday }]
    expect(offersWith(requestedPlayer('p0', { away }))?.offers[0]?.seats.keep).toBe(0)
  })

  it('offers themes of the programme and those under them, and all where there is no programme', () => {
    const themes = [theme('a'), theme('a1', 'a'), theme('b'), theme('c')]
    const designs = [requestedDesign('x', { themeIds: ['a1', 'b', 'c'] })]
    const offered = (programme: readonly ReturnType<typeof programmeRule>[]) =>
      problemOfAhead(aheadRequest([tuesday], { themes, designs, programme })).practices[0]?.offers.map(
        (offer) => themes[offer.theme]?.id,
      )
    expect(offered([])).toEqual(['a1', 'b', 'c'])
    expect(offered([programmeRule('a')])).toEqual(['a1'])
    expect(offered([programmeRule('a', { afterThemeId: 'c' })])).toEqual(['a1', 'c'])
  })

  it('keeps what the coach holds, asked for by the programme or served by the design or not', () => {
    const request = aheadRequest([tuesday, next], { programme: [programmeRule('a')] })
    const held = (themeId: string, designId: string | null) =>
      problemOfAhead({
        ...request,
        practices: request.practices.map((own) => ({ ...own, held: { themeId, designId } })),
      }).practices[0]
    expect(held('b', 'x')?.held).toEqual({ theme: 1, design: 0 })
    expect(held('b', 'x')?.offers.map((offer) => offer.theme)).toEqual([0, 1])
    expect(held('b', null)?.offers.map((offer) => offer.theme)).toEqual([0])
    expect(held('gone', 'x')?.held).toBeNull()
    expect(held('b', 'gone')?.held).toEqual({ theme: 1, design: null })
  })

  it('takes nobody to come on days that it is known to be away', () => {
    const away = [{ firstDay: next, lastDay: next }]
    const { practices } = problemOfAhead(
      aheadRequest([tuesday, next], { players: [requestedPlayer('p1', { away }), ...requestedSix(5)] }),
    )
    expect(practices.map(({ comes }) => comes[0])).toEqual([1, 0])
  })

  it('allows what the policy allows: so much, or a part of the fair share where that is more', () => {
    const [player] = problemOfAhead(
      aheadRequest([tuesday], {
        players: [requestedPlayer('p1', { fair: { ...noSeconds, attack: 6000, defend: 1000 } })],
      }),
    ).players
    expect(player?.tolerance).toEqual({
      attack: 600,
      defend: 300,
      keep: 300,
      rest: 300,
      outnumbering: 300,
      level: 300,
      outnumbered: 300,
    })
  })

  it('knows how long was played while the differences arose: the season’s due and difference, or the term where that is unknown', () => {
    const played = (fair: typeof noSeconds, gap: typeof noSeconds) =>
      problemOfAhead(
        aheadRequest([tuesday], { players: [requestedPlayer('p1', { fair, gap, playedSeconds: 900 })] }),
      ).players[0]?.gapPlayedSeconds
    const fair = { ...noSeconds, attack: 2000, defend: 1500, keep: 500, rest: 700, level: 3000 }
    expect(played(fair, { ...noSeconds, attack: -300, rest: 300, level: -200 })).toBe(3700)
    expect(played(noSeconds, { ...noSeconds, attack: -300, rest: 300 })).toBe(900)
  })
})

describe('what if', () => {
  it('a practice is moved, is not held, or a player is away: nothing else changes', () => {
    const request = aheadRequest([tuesday, next])
    const moved = problemOfAhead(movePractice(request, { practiceId: tuesday, day: '2026-01-20' }))
    expect(moved.practices.map(({ id, week }) => [id, week])).toEqual([
      [next, 3],
      [tuesday, 4],
    ])
    expect(problemOfAhead(dropPractice(request, tuesday)).practices.map(({ id }) => id)).toEqual([next])
    const span = { firstDay: tuesday, lastDay: '2026-01-12' }
    const without = problemOfAhead(awayFor(request, { playerId: 'p2', span }))
    expect(without.practices.map(({ comes }) => comes)).toEqual([
      [1, 0, 1, 1, 1, 1],
      [1, 1, 1, 1, 1, 1],
    ])
    expect(without.players).toEqual(problemOfAhead(request).players)
  })
})

function requestedSix(count: number) {
  return Array.from({ length: count }, (_, at) => requestedPlayer(`q${at + 1}`))
}

function round(
  stations: readonly { readonly attack: number; readonly defend: number; readonly keep: number }[],
) {
  return { turnCount: 1, turnSeconds: 60, gapSeconds: 0, stations }
}
