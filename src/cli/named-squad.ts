import { InputError } from '#cli/verb'
import { withDatabases } from '#cli/with-databases'
import { type Club, getClub, listClubIds } from '#data/clubs'
import type { Database } from '#data/database'
import { inClub } from '#data/in-club'
import { listSquads } from '#data/squads'
import type { Squad } from '#squad/squad'

export type NamedSquad = { readonly club: Club; readonly squad: Squad; readonly database: Database }

/**
 * Does some work with the squad that a person named, by name or id; the club may be left out where there is only one.
 * The work goes as the app's role, which can touch one club at a time.
 * @throws InputError when the squad or club is not there, or more than one is.
 */
export async function withNamedSquad<Answer>(
  named: { readonly squad: string | undefined; readonly club: string | undefined },
  work: (found: NamedSquad) => Promise<Answer>,
): Promise<Answer> {
  if (!named.squad)
    throw new InputError([
      { path: '--squad', message: 'is missing; the name or id of a squad would be right' },
    ])
  const { squad, club: clubName } = named
  return withDatabases(async ({ owner, database }) => {
    const club = pickOne(await listClubs(owner, database), clubName, '--club')
    const squads = await inClub(club.id, listSquads, { database })
    return work({ club, squad: pickOne(squads, squad, '--squad'), database })
  })
}

async function listClubs(owner: Database, database: Database): Promise<readonly Club[]> {
  const clubs: Club[] = []
  for (const id of await listClubIds(owner)) clubs.push(await inClub(id, getClub, { database }))
  return clubs
}

function pickOne<Thing extends { readonly id: string; readonly name: string }>(
  things: readonly Thing[],
  wanted: string | undefined,
  path: string,
): Thing {
  const found =
    wanted === undefined ? things : things.filter(({ id, name }) => id === wanted || name === wanted)
  const [only] = found
  if (found.length === 1 && only) return only
  const list = things.map(({ id, name }) => `${JSON.stringify(name)} (${id})`).join(', ')
  const what =
    wanted === undefined
      ? 'is missing'
      : `${JSON.stringify(wanted)} is ${found.length === 0 ? 'not there' : 'the name of several'}`
  throw new InputError([
    {
      path,
      message: list === '' ? `${what}; there is none yet` : `${what}; one of these would be right: ${list}`,
    },
  ])
}
