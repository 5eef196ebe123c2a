import 'server-only'
import type { Viewer, ViewerRole } from '#access/viewer'
import { groupBy } from '#common/group-by'
import type { Day } from '#common/time'
import { getClub } from '#data/clubs'
import { listChildrenOf } from '#data/guardianships'
import { inClub } from '#data/in-club'
import type { PersonOfLogin } from '#data/logins'
import { type DemoPerson, listDemoPeople } from '#data/people'
import { listSquads } from '#data/squads'
import { isDemoMode } from '#server/demo-mode'
import { findViewer } from '#server/find-viewer'
import { homeOf } from '#server/home-of'
import { isSetUpOpen } from '#server/set-up'

/** Somebody of a demo club to sign in as. */
export type DemoSignIn = {
  readonly clubId: string
  readonly personId: string
  readonly name: string
  readonly role: ViewerRole
  /** Squads coached today. */
  readonly squadNames: readonly string[]
}

export type DemoClubSignIns = {
  readonly clubName: string
  /** The day on which its calendar stands still. */
  readonly calendarDay: Day | null
  /** One of each: head coach, coach, parent. */
  readonly main: readonly DemoSignIn[]
  readonly others: readonly DemoSignIn[]
}

export type FirstPage = {
  /** Null: no demo here. */
  readonly demo: readonly DemoClubSignIns[] | null
  /** No club stands here yet, and the start has printed a code for founding one. */
  readonly canFound: boolean
  /** As whom of which clubs the sign-in of this browser could look at the book, where there is a choice. */
  readonly choices: readonly PersonOfLogin[]
  readonly signedIn: {
    readonly name: string
    readonly role: ViewerRole
    readonly home: string | null
    /** The viewer's own children. */
    readonly children: readonly { readonly id: string; readonly name: string }[]
  } | null
}

/** What the first page offers; nobody needs to be signed in for it. */
export async function loadFirstPage(
  viewer: Viewer | null,
  people: readonly PersonOfLogin[] = [],
): Promise<FirstPage> {
  return {
    demo: isDemoMode() ? await loadDemo() : null,
    canFound: await isSetUpOpen(),
    choices: people.length > 1 ? people : [],
    signedIn: viewer && {
      name: viewer.name,
      role: viewer.role,
      home: homeOf(viewer),
      children: await inClub(viewer.clubId, async (tx) =>
        (await listChildrenOf(tx, viewer.personId)).map(({ id, name }) => ({ id, name })),
      ),
    },
  }
}

async function loadDemo(): Promise<readonly DemoClubSignIns[]> {
  const byClub = groupBy(await listDemoPeople(), ({ clubId }) => clubId)
  return Promise.all([...byClub].map(([clubId, people]) => loadSignIns(clubId, people)))
}

async function loadSignIns(clubId: string, people: readonly DemoPerson[]): Promise<DemoClubSignIns> {
  const viewers: Viewer[] = []
  for (const { id: personId } of people) {
    const viewer = await findViewer({ clubId, personId })
    if (viewer) viewers.push(viewer)
  }
  const { club, squads } = await inClub(clubId, async (tx) => ({
    club: await getClub(tx),
    squads: await listSquads(tx),
  }))
  const main = (['headCoach', 'coach', 'guardian'] as const).flatMap((role) => {
    const ofRole = viewers.filter((viewer) => viewer.role === role)
    const [first] = [...ofRole.filter((viewer) => homeOf(viewer) !== null), ...ofRole]
    return first ? [first] : []
  })
  const signInOf = ({ personId, name, role, squadIds }: Viewer): DemoSignIn => ({
    clubId,
    personId,
    name,
    role,
    squadNames: squads.filter(({ id }) => squadIds.includes(id)).map((squad) => squad.name),
  })
  return {
    clubName: club.name,
    calendarDay: club.calendarDay,
    main: main.map(signInOf),
    others: viewers.filter((viewer) => !main.includes(viewer)).map(signInOf),
  }
}
