import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'
import type { words } from '#ui/words'

export type TabName = keyof typeof words.tab

/** Addresses of the pages; every link is made here. */
export const paths = {
  today: (squadId: SquadId) => `/squads/${squadId}/today`,
  book: (squadId: SquadId) => `/squads/${squadId}/book`,
  players: (squadId: SquadId) => `/squads/${squadId}/players`,
  player: (squadId: SquadId, { playerId }: { readonly playerId: PlayerId }) =>
    `/squads/${squadId}/players/${playerId}`,
  sessions: (squadId: SquadId) => `/squads/${squadId}/sessions`,
  session: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}`,
  newSession: (squadId: SquadId) => `/squads/${squadId}/sessions/new`,
  /** A practice in every week; days without practice; grounds. */
  weekly: (squadId: SquadId) => `/squads/${squadId}/sessions/weekly`,
  writeSession: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}/write`,
  /** Codes that let a helper join a practice. */
  helpers: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}/helpers`,
  /** What was tapped, to be checked and written into the book. */
  whistle: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}/whistle`,
  plan: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}/plan`,
  planSheet: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}/plan/sheet`,
  /** Who is on when in a match, planned. */
  lineUp: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}/line-up`,
  /** The same on A4, and on a card the size of a hand. */
  lineUpSheet: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}/line-up/sheet`,
  lineUpCard: (squadId: SquadId, { sessionId }: { readonly sessionId: string }) =>
    `/squads/${squadId}/sessions/${sessionId}/line-up/card`,
  /** Every player's minutes, starts, time in goal and lines, match by match and over the season. */
  matches: (squadId: SquadId) => `/squads/${squadId}/matches`,
  themes: (squadId: SquadId) => `/squads/${squadId}/themes`,
  /** The weeks ahead: what each practice to come is about. */
  ahead: (squadId: SquadId) => `/squads/${squadId}/ahead`,
  aheadSheet: (squadId: SquadId) => `/squads/${squadId}/ahead/sheet`,
  designs: (squadId: SquadId) => `/squads/${squadId}/designs`,
  design: (squadId: SquadId, { designId }: { readonly designId: string }) =>
    `/squads/${squadId}/designs/${designId}`,
  newDesign: (squadId: SquadId) => `/squads/${squadId}/designs/new`,
  editDesign: (squadId: SquadId, { designId }: { readonly designId: string }) =>
    `/squads/${squadId}/designs/${designId}/edit`,
  flags: (squadId: SquadId) => `/squads/${squadId}/flags`,
  /** Would a fair draw give gaps like these? */
  luck: (squadId: SquadId) => `/squads/${squadId}/luck`,
  files: (squadId: SquadId) => `/squads/${squadId}/files`,
  review: () => '/review',
  committee: () => '/review/committee',
  policy: () => '/policy',
  /** One child's page for its family. */
  family: (playerId: PlayerId) => `/family/${playerId}`,
  /** Where its family asks what is kept, and objects. */
  familyAsk: (playerId: PlayerId) => `/family/${playerId}/ask`,
  /** Who goes now. The practice stands behind #, so that the page opens without a signal. */
  pitch: (sessionId?: string) => (sessionId ? `/pitch#${sessionId}` : '/pitch'),
  start: () => '/',
  signIn: () => '/sign-in',
  /** The viewer's own sign-in: password, passkeys, where it is signed in. */
  account: () => '/account',
  setUp: () => '/set-up',
  /** What a link that works once opens. */
  welcome: (code: string) => `/welcome/${code}`,
  /** What families of the squad read, and what waits to be confirmed. */
  families: (squadId: SquadId) => `/squads/${squadId}/families`,
  familyPreview: (squadId: SquadId, { playerId }: { readonly playerId: PlayerId }) =>
    `/squads/${squadId}/families/${playerId}`,
  familyLinks: (squadId: SquadId, { playerId }: { readonly playerId: PlayerId }) =>
    `/squads/${squadId}/families/${playerId}/links`,
  club: () => '/club',
  clubPeople: () => '/club/people',
  clubPerson: (personId: string) => `/club/people/${personId}`,
  clubSeasons: () => '/club/seasons',
  clubSquads: () => '/club/squads',
  /** How matches of each age are played. */
  clubFormats: () => '/club/formats',
  newClubFormat: () => '/club/formats/new',
  clubFormat: (formatId: string) => `/club/formats/${formatId}`,
  editClubFormat: (formatId: string) => `/club/formats/${formatId}/edit`,
  /** Where pages of squads lead while the club has no season. */
  noSeason: () => '/no-season',
  /** What families ask about what is kept of their child. */
  clubRequests: () => '/club/requests',
  clubRequest: (requestId: string) => `/club/requests/${requestId}`,
  /** Everything that is kept about one child. */
  clubChild: (playerId: PlayerId) => `/club/children/${playerId}`,
  /** The same as a file, to be handed to one guardian; null: for the club. */
  clubChildCopy: (playerId: PlayerId, guardianId: string | null) =>
    `/club/children/${playerId}/copy${guardianId ? `?for=${guardianId}` : ''}`,
  /** Who changed and who looked at what. */
  clubRecord: () => '/club/record',
  clubRecordFile: () => '/club/record/file',
} as const

const tabsOfClub: readonly TabName[] = ['review', 'policy', 'club']

/** Whether the tab leads to a page of the club, whichever squad is looked at. */
export function isTabOfClub(tab: TabName): boolean {
  return tabsOfClub.includes(tab)
}

/** Where a tab leads for a squad; the club's tabs need none. */
export function pathOfTab(tab: TabName, squadId: SquadId | null): string {
  return paths[tab](squadId ?? '')
}

/** An address with what was chosen on the page; choices left open are left out. */
export function withChoices(
  path: string,
  choices: Readonly<Record<string, string | null | undefined>>,
): string {
  const query = new URLSearchParams()
  for (const [name, value] of Object.entries(choices)) if (value) query.set(name, value)
  const text = query.toString()
  return text ? `${path}?${text}` : path
}
