import { withClient } from './connect.mjs'
import { isDemo } from './pages-settings.mjs'
import { Refusal } from './refusal.mjs'

/**
 * Which clubs a database holds.
 *
 * @param {{ ownerUrl: string }} database
 * @returns {Promise<{ hasDemo: boolean, hasClub: boolean }>}
 */
export function whatStands({ ownerUrl }) {
  return withClient({ url: ownerUrl, name: 'DATABASE_URL' }, async (owner) => {
    const { rows } = await owner.query('select * from what_stands_here()')
    return rows[0]
  })
}

/**
 * The demo and a club of people never share a database: whoever looks into the demo would look into the club's.
 *
 * @param {{ hasDemo: boolean, hasClub: boolean }} stands
 * @param {{ readonly TURNBOOK_DEMO?: string, readonly DATABASE_URL?: string }} env
 * @throws {Refusal}
 */
export function refuseToMix({ hasDemo, hasClub }, env) {
  const place = env.DATABASE_URL ? 'DATABASE_URL' : 'TURNBOOK_DATA'
  if (hasClub && isDemo(env)) {
    throw new Refusal(
      'A club of people stands in this database, and no demo is shown beside it. Start it with: npm start -- --own-club',
    )
  }
  if (hasDemo && !isDemo(env)) {
    throw new Refusal(
      `The demo club stands in this database, and a club of people needs one of its own. Leave ${place} out, or set it to a place that is empty.`,
    )
  }
}
