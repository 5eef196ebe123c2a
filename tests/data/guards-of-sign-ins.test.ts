import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { ask, ids } from '../support/guarded-club'
import { insert } from '../support/guarded-rows'

const text = (value: string) => `'${value}'`
const login = (columns: { email?: string; name?: string } = {}) => {
  const { email = 'una@example.org', name = 'Una Brook' } = columns
  return `insert into "Login" (id, email, name) values ('${newId()}', ${text(email)}, ${text(name)})`
}
const hash = 'a'.repeat(64)
const loginId = newId()
const withLogin = (statement: string) =>
  `insert into "Login" (id, email, name) values ('${loginId}', 'una@example.org', 'Una'); ${statement}`
const session = (columns: { token?: string; clubId?: string | null; personId?: string | null } = {}) => {
  const { token = hash, clubId = null, personId = null } = columns
  const id = (value: string | null) => (value === null ? 'null' : text(value))
  return withLogin(`insert into "LoginSession" (id, "loginId", token, "expiresAt", "clubId", "personId")
    values ('${newId()}', '${loginId}', '${token}', now(), ${id(clubId)}, ${id(personId)})`)
}
const passkey = (columns: { id?: string; name?: string; key?: string } = {}) => {
  const { id = 'abc', name = 'Phone', key = '\\x01' } = columns
  return withLogin(`insert into "Passkey" (id, "loginId", "publicKey", counter, "isBackedUp", name)
    values (${text(id)}, '${loginId}', '${key}', 0, false, ${text(name)})`)
}
const link = (columns: object = {}) =>
  insert('OneTimeLink', {
    id: newId(),
    kind: 'join',
    personId: ids.coach,
    secretHash: hash,
    madeAt: '2026-09-10T18:00:00Z',
    expiresAt: '2026-09-11T18:00:00Z',
    ...columns,
  })

describe('of sign-ins and links, what cannot be is refused', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    ['an address in capitals', 'Login_email_check', () => login({ email: 'Una@example.org' })],
    ['an address without its sign', 'Login_email_check', () => login({ email: 'una.example.org' })],
    ['a name with a space at its end', 'Login_name_check', () => login({ name: 'Una ' })],
    ['a token that is no hash', 'LoginSession_token_check', () => session({ token: 'plain' })],
    ['a club without a person', 'LoginSession_as_check', () => session({ clubId: ids.club })],
    ['a passkey without a name', 'Passkey_text_check', () => passkey({ name: '' })],
    ['a passkey without a key', 'Passkey_text_check', () => passkey({ key: '\\x' })],
    [
      'a person whose address has a space',
      'Person_email_check',
      () => `update "Person" set email = 'una brook@example.org'`,
    ],
    ['a secret that is no hash', 'OneTimeLink_hash_check', () => link({ secretHash: 'plain' })],
    [
      'a link that is over before it is made',
      'OneTimeLink_time_check',
      () => link({ expiresAt: '2026-09-10T18:00:00Z' }),
    ],
    [
      'a link both used and taken back',
      'OneTimeLink_time_check',
      () => link({ usedAt: '2026-09-10T19:00:00Z', revokedAt: '2026-09-10T19:00:00Z' }),
    ],
    ['a link to a child’s page without a child', 'OneTimeLink_player_check', () => link({ kind: 'family' })],
    ['a link to join with a child', 'OneTimeLink_player_check', () => link({ playerId: ids.player })],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })

  it('but each is taken as it is meant', async () => {
    for (const statement of [
      login(),
      session(),
      passkey(),
      link(),
      link({ kind: 'family', playerId: ids.player }),
    ])
      expect(await ask(statement)).toBeNull()
    expect(await ask(session({ clubId: ids.club, personId: ids.coach }))).toBeNull()
  })
})
