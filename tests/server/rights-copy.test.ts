import { beforeAll, describe, expect, it } from 'vitest'
import { recordAdjustment } from '#data/adjustments'
import { recordRequest } from '#data/child-requests'
import { recordConsent } from '#data/consents'
import { recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { recordPeople } from '#data/people'
import { recordPair } from '#data/player-pairs'
import type { ChildCopy } from '#rights/child-copy'
import { loadChildCopy } from '#server/child-copy'
import { clubId, demoSeason, demoSquads, membersOf, personId } from '../../seeds/club'
import { buildDemoClub } from '../../seeds/demo-club'
import { playerId } from '../../seeds/names'
import { askAs } from '../support/ask-as'
import { loadDemoBook } from '../support/demo-book'
import { testDatabase } from '../support/test-database'

const demo = buildDemoClub()
const child = playerId('adaeze')
const other = playerId('bao')
const [first, second] = [personId('chinwe'), newId()]
const now = new Date('2026-06-08T09:00:00Z')

const copyOf = (id: string, forId: string | null = null) =>
  inClub(clubId, (tx) => loadChildCopy(tx, { playerId: id, forId, now }))

const ask = <Row extends object>(text: string, values: readonly unknown[] = []) =>
  askAs(testDatabase().ownerUrl, async (client) => {
    await client.query('select set_config($1, $2, false)', ['app.club_id', clubId])
    return (await client.query<Row>(text, [...values])).rows
  })

beforeAll(async () => {
  await loadDemoBook()
  const by = { personId: personId('maren'), at: now }
  await inClub(clubId, async (tx) => {
    await recordPeople(tx, [{ id: second, name: 'Ugo Fernhollow', role: 'guardian' }])
    await recordGuardianships(tx, [{ personId: second, playerId: child, claimedAt: now }])
    const days = { firstDay: demoSeason.firstDay, lastDay: null }
    await recordAdjustment(tx, {
      id: newId(),
      playerId: child,
      kind: 'sameFirstPartner',
      partnerId: other,
      ...days,
    })
    const pair = {
      id: newId(),
      squadId: demoSquads.underTen.id,
      kind: 'apart',
      madeById: by.personId,
    } as const
    await recordPair(tx, { ...pair, ...days, playerIds: [other, child] })
    for (const askedById of [first, second]) {
      const words = `May ${askedById === first ? 'I' : 'we'} see it? Bao Quillstone’s mother asks too.`
      const request = { id: newId(), playerId: child, kind: 'copy', text: words, askedById } as const
      await recordRequest(tx, { ...request, receivedOn: '2026-06-02', dueOn: '2026-07-02' })
      const consent = {
        id: newId(),
        playerId: child,
        kind: 'messages',
        wording: 'Yes.',
        givenById: askedById,
      }
      await recordConsent(tx, { ...consent, givenOn: '2026-06-02', by })
    }
    const ofChild = { clubId, playerId: child, squadId: demoSquads.underTen.id }
    const at = new Date(now)
    await tx.db.familyNote.deleteMany({ where: ofChild })
    await tx.db.familyNote.create({ data: { ...ofChild, text: 'Well done with Bao!', writtenAt: at } })
    await tx.db.familyPage.create({
      data: {
        ...ofChild,
        id: newId(),
        seasonId: demoSeason.id,
        page: { note: 'Hello' },
        confirmedAt: at,
        showsFrom: at,
      },
    })
    const link = { id: newId(), kind: 'family', personId: second, secretHash: 'c'.repeat(64) } as const
    await tx.db.oneTimeLink.create({
      data: { clubId, ...link, playerId: child, madeAt: at, expiresAt: new Date('2026-06-20') },
    })
    const session = await tx.db.session.findFirstOrThrow({ where: { clubId, squadId: ofChild.squadId } })
    const deed = { kind: 'register', playerId: child, state: 'here' }
    await tx.db.pitchEvent.create({
      data: { clubId, id: newId(), sessionId: session.id, deviceId: newId(), at, seq: 1, deed },
    })
  })
}, 60_000)

/**
 * Every column of the database that can hold a child, and where a copy has it: a part, or the reason why it has none.
 * Columns are found in the catalogue: those that point at a player, and all that hold JSON.
 */
const held: Readonly<Record<string, keyof ChildCopy | readonly [reason: string]>> = {
  'Adjustment.playerId': 'agreements',
  'Adjustment.partnerId': [
    'that another child was to have its first turn with this one is agreed with the other',
  ],
  'AuditEntry.detail': 'record',
  'ChildRequest.playerId': 'requests',
  'Consent.playerId': 'consents',
  'Erasure.playerId': ['there is nobody left to give a copy to'],
  'Exposure.playerId': 'sums',
  'FamilyNote.playerId': 'familyNotes',
  'FamilyPage.page': 'familyPages',
  'FamilyPage.playerId': 'familyPages',
  'FlagState.detail': 'flags',
  'FlagState.playerId': 'flags',
  'Guardianship.playerId': 'guardians',
  'KeepsChange.playerId': 'keepsGoal',
  'LineWish.playerId': 'lines',
  'MatchFormat.definition': ['a format knows no children'],
  'MatchSpell.playerId': 'spells',
  'OneTimeLink.playerId': 'links',
  'PitchEvent.deed': 'pitch',
  'Player.joinedToId': 'asGuest',
  'PlayerAway.playerId': 'away',
  'PlayerPair.oneId': 'pairs',
  'PlayerPair.otherId': 'pairs',
  'PracticeDesign.adaptations': ['a design knows no children'],
  'PracticeDesign.rounds': ['a design knows no children'],
  'PracticeDesign.sides': ['a design knows no children'],
  'RegisterLine.playerId': 'register',
  'Session.periods': ['times of a match'],
  'SessionPlan.plan': 'plans',
  'SessionPresence.playerId': 'attendance',
  'SquadMembership.playerId': 'squads',
  'TermPlan.plan': ['a plan of a term knows no children'],
  'Theme.focus': ['a theme knows no children'],
  'TurnEvent.playerId': 'passed',
  'TurnSeat.playerId': 'turns',
}

describe('a child’s copy', () => {
  it('knows every column that can hold a child', async () => {
    const columns = await ask<{ name: string }>(`
      select distinct c.relname || '.' || a.attname as name
      from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
        left join pg_constraint f on f.conrelid = c.oid and f.contype = 'f' and f.confrelid = '"Player"'::regclass
          and a.attnum = any (f.conkey)
      where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and a.attname <> 'clubId'
        and (f.oid is not null or a.atttypid in ('json'::regtype, 'jsonb'::regtype))
      order by 1`)
    expect(columns.map(({ name }) => name)).toEqual(Object.keys(held).toSorted())
  })

  it('has a line for every row of each', async () => {
    for (const [column, part] of Object.entries(held)) {
      if (typeof part !== 'string') continue
      const [table = '', name = ''] = column.split('.')
      const isJson = ['detail', 'page', 'deed', 'plan'].includes(name)
      const is = isJson ? `position($1 in "${name}"::text) > 0` : `"${name}" = $1::uuid`
      if (isJson && table !== 'PitchEvent' && table !== 'SessionPlan') continue
      const most = await ask<{ id: string; rows: string }>(
        isJson
          ? `select $1::text as id, count(*) as rows from "${table}" where ${is}`
          : `select "${name}" as id, count(*) as rows from "${table}" where "${name}" is not null group by 1 order by 2 desc, 1 limit 1`,
        isJson ? [child] : [],
      )
      const [row] = most
      if (!row || table === 'PlayerPair' || table === 'Player') continue
      const copy = await copyOf(row.id)
      // Plans of practices and of matches stand in one table, and apart in the copy.
      const told = part === 'plans' ? [...copy.plans, ...copy.matchPlans] : (copy[part] as readonly unknown[])
      expect([column, told.length]).toEqual([column, Number(row.rows)])
      expect([column, Number(row.rows) > 0]).toEqual([column, true])
    }
    expect((await copyOf(child)).pairs).toHaveLength(1)
    expect((await copyOf(other)).pairs).toHaveLength(1)
  })

  it('holds no other child’s id or name, whoever of the club it is of', async () => {
    for (const player of demo.players) {
      const text = JSON.stringify(await copyOf(player.id))
      expect(text).toContain(player.name)
      for (const one of demo.players.filter(({ id }) => id !== player.id)) {
        expect(text.includes(one.id), `${one.name} in the copy of ${player.name}`).toBe(false)
        expect(text.includes(one.name), `${one.name} in the copy of ${player.name}`).toBe(false)
      }
    }
  }, 30_000)

  it('says nothing of what others wrote about another child', async () => {
    const { requests, familyNotes } = await copyOf(child)
    expect(requests.map(({ text }) => text)).toContain('May I see it? [another child]’s mother asks too.')
    expect(familyNotes[0]?.text).toBe('Well done with [another child]!')
  })

  it('for one guardian leaves out who the other is, what it asks and agrees to', async () => {
    const text = JSON.stringify(await copyOf(child, first))
    expect(text).toContain('Chinwe Fernhollow')
    expect(text).not.toContain('Ugo')
    expect(text).not.toContain(second)
    expect(text).not.toContain('May we see it')
    const copy = await copyOf(child, first)
    const givers = copy.consents.map(({ givenBy }) => givenBy)
    expect([...new Set(givers)].toSorted()).toEqual(['Chinwe Fernhollow', 'another guardian'])
    const whole = await copyOf(child)
    expect(copy.guardians.map((one) => one.name)).toEqual(['Chinwe Fernhollow'])
    expect(whole.guardians.length).toBeGreaterThan(1)
    expect(whole.requests.length - copy.requests.length).toBe(1)
    expect(whole.links.length - copy.links.length).toBe(1)
  })

  it('adds up: the turns of a practice are the seconds of its sums', async () => {
    const { turns, sums } = await copyOf(playerId(membersOf.underTwelve[0] as 'amara'))
    const days = [...new Set(sums.filter(({ kind }) => kind === 'practice').map(({ day }) => day))]
    expect(days.length).toBeGreaterThan(10)
    for (const day of days)
      for (const role of ['attack', 'defend', 'keep']) {
        const played = turns.filter((one) => one.day === day && one.role === role && one.correctedAt === null)
        const summed = sums.filter((one) => one.day === day && one.role === role && one.kind === 'practice')
        expect(summed.reduce((sum, one) => sum + one.seconds, 0)).toBeCloseTo(
          played.reduce((sum, one) => sum + one.to - one.from, 0),
          6,
        )
      }
  })

  it('is told part by part', async () => {
    const copy = await copyOf(child)
    const parts = Object.keys(copy).filter((key) => !['format', 'madeAt', 'about'].includes(key))
    expect(parts.toSorted()).toEqual(Object.keys(copy.about).toSorted())
    expect(JSON.stringify(copy)).not.toContain('c'.repeat(64))
  })
})
