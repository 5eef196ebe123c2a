import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import { getClubRights } from '#data/club-rights'
import { listNewestPages } from '#data/family-pages'
import { countReaders, noReaders, type Readers } from '#data/family-readers'
import { inClub } from '#data/in-club'
import type { SessionKind } from '#fairness/standing'
import { type FamilySentence, flagOfFewer } from '#family/family-sentences'
import { type FamilyChange, pageChanges } from '#family/page-changes'
import { showsFrom } from '#family/shows-from'
import type { Waiting } from '#family/what-waits'
import { loadComingPractice } from '#server/coming-practice'
import type { FamilySquad } from '#server/family-views'
import { pageDigest } from '#server/page-digest'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { loadPagesOfSquad, type PageToConfirm } from '#server/pages-of-squad'
import { recordLook } from '#server/record-look'
import { loadSquadSeason } from '#server/squad-season'
import { dayIn } from '#server/today'
import type { PlayerId } from '#squad/player'
import type { Squad, SquadId } from '#squad/squad'

/** A sentence that asks for the coach's next step, and what was said so far. */
export type StepToSay = {
  readonly flagId: string
  readonly kind: SessionKind
  readonly sentence: FamilySentence
  /** The coach's answer; null: none yet. */
  readonly answered: string | null
  /** The day from which the sentence is read without a next step; null: it is read at once. */
  readonly waitsUntil: Day | null
}

/** One child's page before it is confirmed, and as the family reads it now. */
export type FamilyPreview = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly playerId: PlayerId
  readonly name: string
  readonly leftOn: Day | null
  readonly mark: string
  readonly changes: readonly FamilyChange[]
  readonly waits: readonly Waiting[]
  readonly steps: readonly StepToSay[]
  readonly readers: Readers
  readonly seenOn: Day
  /** As the family will read it. */
  readonly next: FamilySquad
  /** As the family reads it now. */
  readonly now: FamilySquad
  /** A page that is confirmed and not yet to be seen. */
  readonly isOnItsWay: boolean
  readonly askWhom: string
}

type Asked = { readonly squadId: SquadId; readonly playerId: PlayerId; readonly now?: Date }

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadFamilyPreview(viewer: Viewer, asked: Asked): Promise<FamilyPreview> {
  const { squadId, playerId, now = new Date() } = asked
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'confirmFamilyPage', { kind: 'squad', squadId })
    const of = await loadSquadSeason(tx, viewer, { squadId, now })
    const { squad, season, today, club } = of
    const own = (await loadPagesOfSquad(tx, of)).find(({ child }) => child.id === playerId)
    if (!own) throw new AppError('notFound', `no child ${playerId} in squad ${squadId} this season`)
    await recordLook(tx, viewer, { page: 'familyPreview', playerId })
    const ofChild = { seasonId: season.id, playerIds: [playerId], squadIds: [squadId] }
    const [last] = await listNewestPages(tx, ofChild)
    const [shown] = await listNewestPages(tx, { ...ofChild, shownAt: now })
    const coming =
      own.leftOn === null ? await loadComingPractice(tx, { squadId, today, isWithheld: false }) : null
    const common = { squadId, squadName: squad.name, today, coming }
    const dayAt = (at: Date) => dayIn(club.timeZone, at)
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      playerId,
      name: own.child.name,
      leftOn: own.leftOn,
      mark: pageDigest(own.page),
      changes: pageChanges(last?.page ?? null, own.page),
      waits: own.waits,
      steps: stepsToSay(own),
      readers: (await countReaders(tx, [playerId])).get(playerId) ?? noReaders,
      seenOn: dayAt(showsFrom({ confirmedOn: dayAt(now), timeZone: club.timeZone })),
      next: {
        ...common,
        shown: { page: own.page, confirmedBy: viewer.name, confirmedOn: dayAt(now) },
      },
      now: {
        ...common,
        shown: shown
          ? { page: shown.page, confirmedBy: shown.confirmedBy, confirmedOn: dayAt(shown.confirmedAt) }
          : null,
      },
      isOnItsWay: last !== undefined && last.showsFrom > now,
      askWhom: (await getClubRights(tx)).askWhom,
    }
  })
}

function stepsToSay({ page, flags }: PageToConfirm): readonly StepToSay[] {
  return page.kinds.flatMap(({ kind, said }) =>
    (said?.sentences ?? []).flatMap((sentence) => {
      if (sentence.says !== 'fewer') return []
      const flag = flagOfFewer(flags, { topic: sentence.topic, kind })
      if (!flag) return []
      const answered = flag.status === 'acknowledged' ? (flag.acknowledged?.reason ?? null) : null
      return [{ flagId: flag.id, kind, sentence, answered, waitsUntil: sentence.waitsUntil }]
    }),
  )
}
