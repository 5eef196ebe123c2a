import { describe, expect, it } from 'vitest'
import type { SessionAccount } from '#fairness/account'
import { accountPractice } from '#fairness/account-practice'
import type { AgreedFewerTurns } from '#fairness/agreed-due'
import { type BookInput, bookRows } from '#fairness/book/book-rows'
import { standingSums } from '#fairness/book/standing-sums'
import { standingsNow } from '#fairness/standing'
import type { Practice } from '#practice/practice'
import type { Turn } from '#practice/turn'
import { defaultPolicy } from '#squad/policy'
import type { Written } from '#squad/written'
import { anAccount } from '../../support/account-builder'

const ann = { id: 'a', name: 'Ann', keeps: true, wantsToKeep: false }
const bo = { id: 'b', name: 'Bo', keeps: true, wantsToKeep: false }
const cy = { id: 'c', name: 'Cy', keeps: true, wantsToKeep: false }
const dot = { id: 'd', name: 'Dot', keeps: true, wantsToKeep: false }

const minute = 60

// Ten minutes of one attacking one, the third waiting; with everyone there each is due a third of attack, defence and waiting.
function turn(of: { at: number; attack: string[]; defend: string[]; themeId?: string }): Turn {
  const stations = [{ attack: of.attack, defend: of.defend, keep: [] }]
  return { start: of.at * minute, end: (of.at + 10) * minute, themeId: of.themeId ?? null, stations }
}

function practice(
  day: string,
  turns: readonly Turn[],
  present: readonly string[] = ['a', 'b', 'c'],
): Practice {
  const register = present.map((playerId) => ({ playerId, from: 0, to: 60 * minute }))
  return { id: day, day, lengthSeconds: null, register, turns }
}

function account(of: Practice, written: Written = 'tapped') {
  return accountPractice(of, {
    able: new Set(['a', 'b', 'c', 'd']),
    members: new Set(['a', 'b', 'c']),
    written,
    middleAttackShare: 0.5,
  })
}

// The sums that the database makes of accounts, made here from the standings of the core.
function rows(of: {
  accounts: readonly SessionAccount[]
  agreements?: readonly AgreedFewerTurns[]
  passed?: BookInput['passed']
  kind?: BookInput['kind']
  situation?: BookInput['situation']
}) {
  const kind = of.kind ?? 'practice'
  const sums = (accounts: readonly SessionAccount[]) =>
    (['member', 'guest'] as const).flatMap((as) =>
      [...standingsNow({ accounts, agreements: of.agreements, as })].map(([playerId, standing]) =>
        standingSums(standing[kind], { playerId, isMember: as === 'member' }),
      ),
    )
  const planned = of.accounts.filter(({ written }) => written === 'asPlanned')
  return bookRows({
    kind,
    isNarrowed: false,
    situation: of.situation ?? null,
    columns: sums(of.accounts).flatMap(({ columns }) => columns),
    presences: sums(of.accounts).map(({ presence }) => presence),
    plannedPresences: sums(planned).map(({ presence }) => presence),
    passed: of.passed ?? [],
    players: [cy, dot, bo, ann],
    policy: defaultPolicy,
  })
}

const attackOf = (row: ReturnType<typeof rows>['members'][number] | undefined) => {
  const figure = row?.figures.find(({ role }) => role === 'attack')?.figure
  if (!figure) throw new Error('no attack in this row')
  return figure
}

describe('lines of the season book', () => {
  it('stand by name whatever the order of the players and the figures', () => {
    const accounts = [account(practice('2026-03-03', [turn({ at: 0, attack: ['c'], defend: ['b'] })]))]
    expect(rows({ accounts }).members.map(({ player }) => player.name)).toEqual(['Ann', 'Bo', 'Cy'])
  })

  it('hold the share against the even share: three turns of ten minutes, all hers, are 30 of 10 min', () => {
    const turns = [0, 10, 20].map((at) => turn({ at, attack: ['a'], defend: ['b'] }))
    const [first] = rows({ accounts: [account(practice('2026-03-03', turns))] }).members
    const attack = attackOf(first)
    expect([attack.seconds, attack.dueSeconds, attack.turns, attack.status]).toEqual([1800, 600, 3, 'over'])
    expect(attack.cause?.missed).toBeCloseTo(0, 9)
    expect(attack.cause?.whileHere).toBeCloseTo(1200, 9)
  })

  it('tell missed from while here: away for half of it, and even in what she was there for', () => {
    // Bo and Cy alone on the second day: each due half of 30 min of attack; with Ann there a third.
    const first = practice('2026-03-03', [
      turn({ at: 0, attack: ['a'], defend: ['b'] }),
      turn({ at: 10, attack: ['b'], defend: ['c'] }),
      turn({ at: 20, attack: ['c'], defend: ['a'] }),
    ])
    const second = practice(
      '2026-03-10',
      [0, 10, 20].map((at) => turn({ at, attack: ['b'], defend: ['c'] })),
      ['b', 'c'],
    )
    const [of] = rows({ accounts: [account(first), account(second)] }).members
    const { cause, gapSeconds } = attackOf(of)
    expect(gapSeconds).toBeCloseTo(0, 9)
    expect(cause?.missed).toBeCloseTo(-600, 9)
    expect(of?.sessionsThere).toBe(1)
    expect(of?.sessionsWritten).toBe(2)
    // The parts add up to what separates her from the members' mean.
    expect((cause?.missed ?? 0) + (cause?.goalDuty ?? 0) + (cause?.whileHere ?? 0)).toBeCloseTo(
      cause?.differenceSeconds ?? Number.NaN,
      9,
    )
  })

  it('keep guests apart and out of every mean', () => {
    const withGuest = practice(
      '2026-03-03',
      [turn({ at: 0, attack: ['d'], defend: ['b'] })],
      ['a', 'b', 'c', 'd'],
    )
    const { members, guests } = rows({ accounts: [account(withGuest)] })
    expect(members.map(({ player }) => player.id)).toEqual(['a', 'b', 'c'])
    expect(guests.map(({ player }) => player.id)).toEqual(['d'])
    expect(attackOf(guests[0]).cause).toBeNull()
  })

  it('know no goal and no waiting in a situation', () => {
    const accounts = [account(practice('2026-03-03', [turn({ at: 0, attack: ['a'], defend: ['b'] })]))]
    const [first] = rows({ accounts, situation: 'level' }).members
    expect(first?.figures.map(({ role }) => role)).toEqual(['attack', 'defend'])
  })

  it('print what an open goal would make due beside one who keeps more than a third of its time', () => {
    // Ann keeps all 20 min, Bo and Cy attack and defend; three who all take turns are due a third of goal each.
    const keeping: Turn = {
      start: 0,
      end: 20 * minute,
      themeId: null,
      stations: [{ attack: ['b'], defend: ['c'], keep: ['a'] }],
    }
    const members = rows({ accounts: [account(practice('2026-03-03', [keeping]))] }).members
    expect(members[0]?.openGoal?.keep).toBeCloseTo(400, 9)
    expect(members[0]?.openGoal?.attack).toBeCloseTo(400, 9)
    expect(members[1]?.openGoal).toBeNull()
  })

  it('leave attack and defence of matches unjudged until there are enough of them', () => {
    const match = (number: number) =>
      anAccount({
        id: `m${number}`,
        day: `2026-03-0${number}`,
        kind: 'match',
        players: { a: { rows: [{ role: 'attack', seconds: 1200, fair: 600 }] } },
      })
    const of = (count: number) =>
      rows({ accounts: Array.from({ length: count }, (_, index) => match(index + 1)), kind: 'match' })
        .members[0]
    expect(of(3)?.hasMatchesForRoles).toBe(false)
    expect(of(4)?.hasMatchesForRoles).toBe(true)
  })

  it('count turns that were offered and passed beside the role they were of', () => {
    const accounts = [account(practice('2026-03-03', [turn({ at: 0, attack: ['a'], defend: ['b'] })]))]
    const pass = { sessionId: '2026-03-03', playerId: 'c', role: 'attack' as const, lengthSeconds: 90 }
    const { members } = rows({ accounts, passed: [pass, pass] })
    expect(members.find(({ player }) => player.id === 'c')?.passed.attack).toEqual({ turns: 2, seconds: 180 })
  })

  it('are hatched when more than half of the time was written as planned', () => {
    const half = (day: string, written: Written) =>
      account(practice(day, [turn({ at: 0, attack: ['a'], defend: ['b'] })]), written)
    const even = rows({ accounts: [half('2026-03-03', 'asPlanned'), half('2026-03-10', 'tapped')] })
    expect(even.members[0]?.isMostlyAsPlanned).toBe(false)
    const mostly = rows({
      accounts: [
        half('2026-03-03', 'asPlanned'),
        half('2026-03-10', 'tapped'),
        half('2026-03-17', 'asPlanned'),
      ],
    })
    expect(mostly.members[0]?.isMostlyAsPlanned).toBe(true)
  })

  it('say so when the turns are as many and only shorter', () => {
    // Bo attacks in three turns of 20 min, Ann in three of 2 min, all three taking turns evenly by number.
    const turns: Turn[] = []
    for (let round = 0; round < 3; round += 1) {
      const base = round * 50
      const part = (from: number, to: number, attack: string, defend: string): Turn => ({
        start: (base + from) * minute,
        end: (base + to) * minute,
        themeId: null,
        stations: [{ attack: [attack], defend: [defend], keep: [] }],
      })
      turns.push(part(0, 2, 'a', 'b'), part(2, 22, 'b', 'c'), part(22, 42, 'c', 'a'))
    }
    const long = {
      ...practice('2026-03-03', turns),
      register: ['a', 'b', 'c'].map((playerId) => ({ playerId, from: 0, to: 150 * minute })),
    }
    const [first] = rows({ accounts: [account(long)] }).members
    const attack = attackOf(first)
    expect([attack.status, attack.turns, attack.isShorterTurns]).toEqual(['short', 3, true])
    expect(attack.dueTurns).toBeCloseTo(3, 9)
  })

  it('lower what is due by an agreement and call that part agreed', () => {
    const turns = [0, 10, 20].map((at) => turn({ at, attack: ['b'], defend: ['c'] }))
    const agreements = [{ playerId: 'a', dueShare: 0.5, firstDay: '2026-01-01', lastDay: null }]
    const [first] = rows({ accounts: [account(practice('2026-03-03', turns))], agreements }).members
    const attack = attackOf(first)
    expect([attack.dueSeconds, attack.agreedSeconds, attack.status]).toEqual([300, -300, 'within'])
    const { missed = 0, goalDuty = 0, whileHere = 0, differenceSeconds } = attack.cause ?? {}
    expect(missed + goalDuty + attack.agreedSeconds + whileHere).toBeCloseTo(
      differenceSeconds ?? Number.NaN,
      9,
    )
  })
})
