import { readFileSync } from 'node:fs'
import type pg from 'pg'
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest'
import { type AccessObject, may, mayEver } from '#access/may'
import type { Viewer, ViewerRole } from '#access/viewer'
import { clubId, demoSquads, personId } from '../../seeds/club'
import { demoPlayers, playerId } from '../../seeds/names'
import { type Door, doorsOfForms, doorsOfPages } from '../access/doors'
import { askAs } from '../support/ask-as'
import { formsAbout } from '../support/every-form'
import { HttpUser } from '../support/over-http'
import { Playground } from '../support/turnbook-process'
import { addSecondClub, foreignNames, ownerUrlOf, type Things } from '../support/two-clubs'

const playground = new Playground()
const { underTen, underTwelve } = demoSquads

/** Who tries; the first three are nobody, or somebody of another club. */
const people = {
  stranger: null,
  foreignHead: { name: foreignNames.headCoach, role: 'headCoach', squads: [], children: [], isForeign: true },
  foreignAdministrator: {
    ...{ name: foreignNames.administrator, role: 'administrator', squads: [], children: [], isForeign: true },
  },
  guardian: { name: 'Chinwe Fernhollow', role: 'guardian', squads: [], children: [playerId('adaeze')] },
  unclaimed: { name: 'Tamsin Hollowbeck', role: 'guardian', squads: [], children: [] },
  coach: { name: 'Idris Fallowmere', role: 'coach', squads: [underTen.id], children: [] },
  otherCoach: {
    ...{ name: 'Samir Goldenreed', role: 'coach', squads: [underTwelve.id], children: [playerId('jiho')] },
  },
  helper: { name: 'Tobiah Sandthistle', role: 'helper', squads: [underTen.id], children: [] },
  headCoach: { name: 'Maren Oakenshade', role: 'headCoach', squads: [], children: [] },
  administrator: { name: 'Odile Harthaven', role: 'administrator', squads: [], children: [] },
} as const satisfies Record<
  string,
  null | {
    readonly name: string
    readonly role: ViewerRole
    readonly squads: readonly string[]
    readonly children: readonly string[]
    readonly isForeign?: boolean
  }
>
type Who = keyof typeof people
const everyone = Object.keys(people) as readonly Who[]

let address = ''
let ownerUrl = ''
let things: Readonly<Record<'underTen' | 'underTwelve' | 'foreign', Things>>
const users = new Map<Who, HttpUser>()

beforeAll(async () => {
  const data = playground.copyOf(inject('bookToCopy'))
  const turnbook = await playground.start({ data })
  ;({ address } = await turnbook.untilReady())
  ownerUrl = ownerUrlOf(data)
  things = await addSecondClub(ownerUrl)
  for (const who of everyone) {
    const user = new HttpUser(address)
    const person = people[who]
    if (person) await user.signIn(person.name)
    users.set(who, user)
  }
})
afterAll(() => playground.clear())

const userOf = (who: Who) => users.get(who) ?? new HttpUser(address)

function viewerOf(who: Who): Viewer | null {
  const person = people[who]
  if (!person) return null
  const { name, role, squads, children } = person
  return { clubId, personId: personId('idris'), name, role, squadIds: squads, playerIds: children }
}

/** Whether the table lets the viewer through the door, to these things. */
function isLetIn(who: Who, door: Door, at: Things): boolean {
  if (door === 'everybody') return true
  const viewer = viewerOf(who)
  if (!viewer || door === 'signedIn') return viewer !== null
  const isTheirs = Boolean(people[who] && 'isForeign' in people[who]) === (at === things.foreign)
  if (door.of === 'any') return mayEver(viewer, door.action) && isTheirs
  return may(viewer, door.action, objectOf(door.of, at)) && isTheirs
}

function objectOf(kind: 'club' | 'squad' | 'child', at: Things): AccessObject {
  const { squadId } = at
  if (kind === 'club') return { kind }
  if (kind === 'squad') return { kind, squadId }
  return { kind: 'player', playerId: at.playerId, squadIds: [squadId] }
}

/** A page's address, with what it names. */
function addressOf(page: string, at: Things): string {
  const isAhead = /\/(?:plan|sheet|helpers|whistle)$|^\/api\//.test(page)
  const named: Readonly<Record<string, string>> = {
    squadId: at.squadId,
    playerId: at.playerId,
    sessionId: page.includes('/line-up') ? at.matchId : isAhead ? at.comingId : at.sessionId,
    designId: at.designId,
    formatId: at.formatId,
    personId: at.coachId,
    requestId: at.requestId,
    what: 'roster',
    code: 'nothing',
  }
  return page.replace(/\[(\w+)\]/g, (_, name: string) => named[name] ?? '')
}

type Knock = { readonly who: Who; readonly page: string; readonly path: string; readonly isOpen: boolean }
type Answer = Knock & { readonly status: number; readonly body: string; readonly location: string | null }

async function knock(asked: Knock): Promise<Answer> {
  const response = await userOf(asked.who).ask(asked.path)
  const [status, location] = [response.status, response.headers.get('location')]
  return { ...asked, status, location, body: await response.text() }
}

/** All of the work, a few at a time. */
async function inTurn<Item, Value>(
  items: readonly Item[],
  work: (item: Item) => Promise<Value>,
): Promise<readonly Value[]> {
  const answers: Value[] = []
  for (let from = 0; from < items.length; from += 6)
    answers.push(...(await Promise.all(items.slice(from, from + 6).map(work))))
  return answers
}

const asks = Object.entries(doorsOfPages).filter(([, door]) => door !== 'everybody')

/** The children of whom nothing may be read by who has no business with them. */
function strangersTo(who: Who): readonly string[] {
  const own: readonly string[] = people[who]?.children ?? []
  return demoPlayers.filter(({ id }) => !own.includes(id)).map(({ name }) => name)
}
const named = (body: string, names: readonly string[]) => names.filter((name) => body.includes(name))

/** Of a closed door no more can be told than that it does not open. */
function isClosed({ who, page, status, location }: Answer): boolean {
  if (who !== 'stranger') return status === 404
  if (page.startsWith('/api/')) return status === 401
  return (status === 307 || status === 303) && ['/', '/sign-in'].includes(location ?? '')
}

describe('every page, file and list', () => {
  it('opens to whom the table lets in, and to nobody else', async () => {
    const knocks = everyone.flatMap((who) =>
      asks.flatMap(([page, door]) =>
        // What names nothing is asked for once, and a stranger has nothing of its own.
        (page.includes('[') && who !== 'stranger'
          ? Object.values(things)
          : [isForeign(who) ? things.foreign : things.underTen]
        )
          .map((at) => ({ who, page, path: addressOf(page, at), isOpen: isLetIn(who, door, at) }))
          // The other club has nothing behind its own doors; who has every squad is asked about one.
          .filter(
            ({ isOpen, path }) =>
              !isOpen ||
              !page.includes('[') ||
              (!isForeign(who) && !(isOfClub(who) && path.includes(things.underTwelve.squadId))),
          ),
      ),
    )
    expect(knocks.length).toBeGreaterThan(700)
    const answers = await inTurn(knocks, knock)
    const wrong = answers.filter((answer) => (answer.isOpen ? answer.status !== 200 : !isClosed(answer)))
    expect(wrong.map(({ who, path, status, location }) => [who, path, status, location])).toEqual([])
    const told = answers.filter(
      ({ isOpen, who, body }) =>
        (!isOpen || people[who] === null || people[who].role === 'guardian') &&
        named(body, strangersTo(who)).length > 0,
    )
    expect(told.map(({ who, path }) => [who, path])).toEqual([])
  }, 120_000)

  it('names a thing of its own squad alone: an address that mixes two squads leads nowhere', async () => {
    const mixed = asks
      .filter(([page]) => /^\/squads\/.*\[(?:playerId|sessionId)\]/.test(page))
      .flatMap(([page]) =>
        (['underTwelve', 'foreign'] as const).map((other) => ({
          page,
          path: addressOf(page, { ...things[other], squadId: things.underTen.squadId }),
        })),
      )
    const knocks = (['coach', 'headCoach', 'administrator'] as const).flatMap((who) =>
      mixed.map((one) => ({ ...one, who, isOpen: false })),
    )
    const answers = await inTurn(knocks, knock)
    expect(answers.filter(({ status }) => status !== 404).map(({ who, path }) => [who, path])).toEqual([])
  })

  it('lets in, of the squad and the club, exactly these', async () => {
    // Written out by hand and not derived from the table, so that a slip in the table shows.
    const byHand: Readonly<Partial<Record<Who, readonly string[]>>> = {
      stranger: [],
      guardian: ['/account', '/api/pitch', '/family/[playerId]', '/family/[playerId]/ask', '/no-season'],
      unclaimed: ['/account', '/api/pitch', '/no-season'],
      helper: ['/account', '/api/pitch', '/api/pitch/[sessionId]', '/no-season'],
      otherCoach: [
        ...['/account', '/api/pitch', '/club/formats', '/club/formats/[formatId]'],
        ...['/no-season', '/policy', '/review'],
      ],
    }
    for (const [who, pages] of Object.entries(byHand) as [Who, readonly string[]][]) {
      const knocks = asks.map(([page]) => ({
        who,
        page,
        path: addressOf(page, things.underTen),
        isOpen: true,
      }))
      const open = (await inTurn(knocks, knock)).filter(({ status }) => status === 200)
      expect([who, ...open.map(({ page }) => page)]).toEqual([who, ...pages])
    }
  })

  it('open to everybody tells of nobody', async () => {
    const open = Object.entries(doorsOfPages).filter(([, door]) => door === 'everybody')
    for (const who of ['stranger', 'foreignHead', 'unclaimed'] as const) {
      const knocks = open.map(([page]) => ({
        who,
        page,
        path: addressOf(page, things.underTen),
        isOpen: true,
      }))
      const answers = await inTurn(knocks, knock)
      expect(
        answers.filter(({ status, body }) => status >= 500 || named(body, strangersTo(who)).length > 0),
      ).toEqual([])
    }
  })
})

function isOfClub(who: Who): boolean {
  return who === 'headCoach' || who === 'administrator'
}

function isForeign(who: Who): boolean {
  return who.startsWith('foreign')
}

/** What the build calls each form's door, and a page that it stands on. */
function doorIds(): ReadonlyMap<string, { readonly id: string; readonly page: string }> {
  const manifest = JSON.parse(readFileSync('.next/server/server-reference-manifest.json', 'utf8')) as {
    readonly node: Readonly<
      Record<string, { readonly exportedName: string; readonly workers: Readonly<Record<string, unknown>> }>
    >
  }
  return new Map(
    Object.entries(manifest.node).map(([id, { exportedName, workers }]) => {
      const [page = ''] = Object.keys(workers).sort()
      return [exportedName, { id, page: page.replace(/^app/, '').replace(/\/page$/, '') || '/' }]
    }),
  )
}

/** The demo club but for who looked, and when a sign-in was last used. */
async function whatStands(): Promise<string> {
  return asOwner(async (client) => {
    const { rows: tables } = await client.query<{ name: string; column: string }>(
      `select c.relname as name, a.attname as column from pg_class c join pg_attribute a on a.attrelid = c.oid
       where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and c.relname <> 'LoginSession'
         and a.attname = case when c.relname = 'Club' then 'id' else 'clubId' end order by 1`,
    )
    const sums: unknown[] = []
    for (const { name, column } of tables) {
      const which = name === 'AuditEntry' ? `and action not in ('look', 'exportFile', 'copyChild')` : ''
      const { rows } = await client.query(
        `select '${name}' as name, count(*), md5(string_agg(t::text, '|' order by t::text)) as sum
         from "${name}" t where "${column}" = $1 ${which}`,
        [clubId],
      )
      sums.push(rows[0])
    }
    return JSON.stringify(sums, null, 1)
  })
}

async function asOwner<Value>(work: (client: pg.Client) => Promise<Value>): Promise<Value> {
  return askAs(ownerUrl, async (client) => {
    await client.query(`select set_config('app.club_id', $1, false)`, [clubId])
    return work(client)
  })
}

/** A form as the page's program sends it: its fields by their number in the list of arguments. */
function bodyOf(fields: object, isWithState: boolean): FormData {
  const body = new FormData()
  body.set('_1_json', JSON.stringify(fields))
  if ('what' in fields) body.set('_1_file', new File(['Name\nAda Fenn\n'], 'roster.csv'))
  body.set('0', JSON.stringify(isWithState ? [{ status: 'idle' }, '$K1'] : ['$K1']))
  return body
}

const notYours = /This is not yours to change|This is no longer there/

describe('every form', () => {
  it('of whoever the table does not let in is refused, and nothing is written', async () => {
    const ids = doorIds()
    const forms = formsAbout(things.underTen)
    const asked = Object.entries(doorsOfForms).filter(([, door]) => typeof door === 'object')
    expect(asked.map(([name]) => name)).toEqual(Object.keys(forms))
    const stood = await whatStands()
    const sends = everyone.flatMap((who) =>
      asked
        .filter(([, door]) => !isLetIn(who, door, things.underTen))
        .map(([name]) => ({ who, name, form: forms[name] ?? {}, door: ids.get(name) })),
    )
    expect(sends.length).toBeGreaterThan(350)
    const answers = await inTurn(sends, async ({ who, name, form, door }) => {
      const response = await userOf(who).ask(addressOf(door?.page ?? '', things.underTen), {
        method: 'POST',
        headers: { 'next-action': door?.id ?? '' },
        body: bodyOf(form, name !== 'checkFileAction'),
      })
      const sentTo = response.headers.get('x-action-redirect')
      return { who, name, sentTo, status: response.status, body: await response.text() }
    })
    expect(await whatStands()).toBe(stood)
    // Of another club's administrator a form without ids is about that club, and is taken there.
    const wrong = answers.filter(({ who, sentTo, status, body }) => {
      if (who === 'stranger') return !sentTo?.startsWith('/;')
      return status >= 500 || !(isForeign(who) || notYours.test(body))
    })
    const told = answers.filter(({ who, body }) => isForeign(who) && named(body, strangersTo(who)).length > 0)
    expect(told.map(({ who, name }) => [who, name])).toEqual([])
    expect(wrong.map(({ who, name, status, body }) => [who, name, status, body.slice(0, 300)])).toEqual([])
  }, 120_000)

  it('is heard at all: a coach’s own is taken', async () => {
    const stood = await whatStands()
    const door = doorIds().get('addTheme')
    const response = await userOf('coach').ask(addressOf(door?.page ?? '', things.underTen), {
      method: 'POST',
      headers: { 'next-action': door?.id ?? '' },
      body: bodyOf(formsAbout(things.underTen).addTheme ?? {}, true),
    })
    expect([response.status, await response.text()]).toEqual([200, expect.stringContaining('"done"')])
    expect(await whatStands()).not.toBe(stood)
  })
})

describe('a helper’s code', () => {
  it('opens that one practice at the pitch, and nothing else', async () => {
    const { squadId, comingId } = things.underTen
    const coach = userOf('coach')
    const page = `/squads/${squadId}/sessions/${comingId}/helpers`
    const door = doorIds().get('makeHelperPass')
    await (
      await coach.ask(page, {
        method: 'POST',
        headers: { 'next-action': door?.id ?? '' },
        body: bodyOf({ squadId, sessionId: comingId }, true),
      })
    ).text()
    const code = /\/join\/([\w.~%-]+)/.exec(await (await coach.ask(page)).text())?.[1] ?? ''
    const helper = new HttpUser(address)
    const join = `/join/${code}`
    const form = (await (await helper.ask(join)).text()).split('<form')[1]?.split('</form>')[0] ?? ''
    const body = new FormData()
    for (const [, field = '', value = ''] of form.matchAll(/name="([^"]+)"(?: value="([^"]*)")?/g))
      body.set(field, value)
    await (await helper.ask(join, { method: 'POST', body })).text()
    const statusOf = async (path: string) => {
      const response = await helper.ask(path)
      await response.text()
      return response.status
    }
    expect(await statusOf(`/api/pitch/${comingId}`)).toBe(200)
    const closed = asks
      .flatMap(([one]) => [addressOf(one, things.underTen), addressOf(one, things.underTwelve)])
      .filter((path) => path !== `/api/pitch/${comingId}`)
    const statuses = await inTurn(closed, async (path) => [path, await statusOf(path)] as const)
    expect(statuses.filter(([, status]) => ![307, 303, 401, 404].includes(status))).toEqual([])
  })
})

describe('a look', () => {
  it('is written when a page is opened, and not when a browser fetches ahead', async () => {
    const count = () =>
      asOwner(async (client) => {
        const { rows } = await client.query<{ looks: number }>(
          `select count(*)::int as looks from "AuditEntry" where action = 'look' and "clubId" = $1`,
          [clubId],
        )
        return rows[0]?.looks ?? 0
      })
    const coach = userOf('coach')
    const path = addressOf('/squads/[squadId]/players/[playerId]', things.underTen)
    const before = await count()
    const ahead: readonly Readonly<Record<string, string>>[] = [
      { rsc: '1', 'next-router-prefetch': '1' },
      { rsc: '1', 'next-router-prefetch': '1', 'next-router-segment-prefetch': '/_tree' },
      { rsc: '1', 'next-router-prefetch': '2', 'next-router-segment-prefetch': '/__PAGE__' },
    ]
    for (const headers of ahead) await (await coach.ask(path, { headers })).text()
    expect(await count()).toBe(before)
    await (await coach.ask(path)).text()
    expect(await count()).toBe(before + 1)
  })
})
