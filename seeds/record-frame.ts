import { groupBy } from '#common/group-by'
import { recordAdjustment } from '#data/adjustments'
import { recordClosedDays } from '#data/closed-days'
import { recordClub } from '#data/clubs'
import { recordDesigns } from '#data/designs'
import { setGroundSize } from '#data/ground-sizes'
import { recordGuardianships } from '#data/guardianships'
import type { ClubTx } from '#data/in-club'
import { setLineWishes } from '#data/line-wishes'
import { recordMatchFormats, setFormatOfSquad } from '#data/match-formats'
import { recordMemberships } from '#data/memberships'
import { recordPeople } from '#data/people'
import { recordAway } from '#data/player-away'
import { recordPlayers } from '#data/players'
import { recordPolicy } from '#data/policies'
import { saveProgrammeBlocks } from '#data/programme-blocks'
import { saveProgrammeRules } from '#data/programme-rules'
import { answerReview, openReviews } from '#data/reviews'
import { recordSeason } from '#data/seasons'
import { recordSquadCoach } from '#data/squad-coaches'
import { recordSquads } from '#data/squads'
import { saveThemeDesigns } from '#data/theme-designs'
import { recordThemes } from '#data/themes'
import type { DemoClub } from './demo-club'

/** Everything of a club but its sessions: people, squads, players, programme, designs, policy, reviews. */
export async function recordFrame(tx: ClubTx, demo: DemoClub): Promise<void> {
  await recordClub(tx, { ...demo.club, locale: 'en-GB', isDemo: true })
  await recordPeople(tx, demo.people)
  await recordSeason(tx, demo.season)
  await recordSquads(tx, demo.squads)
  await recordMatchFormats(tx, demo.formats)
  for (const { squadId, id: formatId } of demo.formats) await setFormatOfSquad(tx, { squadId, formatId })
  await recordPlayers(
    tx,
    demo.players.map((player) => ({ ...player, code: null })),
  )
  await recordThemes(
    tx,
    demo.themes.map((theme) => ({ ...theme, code: null })),
  )
  await recordDesigns(tx, demo.designs)
  for (const [id, pairs] of groupBy(demo.themeDesigns, ({ themeId }) => themeId))
    await saveThemeDesigns(tx, { themeId: id, designIds: pairs.map(({ designId }) => designId) })
  await recordGuardianships(tx, demo.guardianships)
  for (const ground of demo.grounds) await setGroundSize(tx, ground)
  for (const closed of demo.closedDays) await recordClosedDays(tx, closed)
  for (const away of demo.away) await recordAway(tx, away)
  for (const adjustment of demo.adjustments) await recordAdjustment(tx, adjustment)
  for (const { playerId, wishes } of demo.lineWishes) await setLineWishes(tx, { playerId, wishes })
  for (const coach of demo.coaches) await recordSquadCoach(tx, coach)
  for (const squad of demo.squads) await recordSquadFrame(tx, demo, squad.id)
  for (const { madeById, ...version } of demo.policies) {
    await recordPolicy(tx, { version, by: { personId: madeById, at: noonOf(version.effectiveFrom) } })
  }
  for (const review of demo.reviews) await recordReview(tx, review)
}

async function recordSquadFrame(tx: ClubTx, demo: DemoClub, squadId: string): Promise<void> {
  await recordMemberships(tx, {
    squadId,
    memberships: demo.memberships.filter((line) => line.squadId === squadId),
  })
  for (const { id: termId } of demo.season.terms) {
    const isOfTerm = (one: { readonly squadId: string; readonly termId: string }) =>
      one.squadId === squadId && one.termId === termId
    await saveProgrammeRules(tx, { squadId, termId, rules: demo.programme.filter(isOfTerm) })
    await saveProgrammeBlocks(tx, { squadId, termId, blocks: demo.blocks.filter(isOfTerm) })
  }
}

async function recordReview(tx: ClubTx, review: DemoClub['reviews'][number]): Promise<void> {
  const { squadId, termId, openedOn, openedById, answer } = review
  await openReviews(tx, { squadIds: [squadId], termId, on: openedOn, personId: openedById })
  if (!answer) return
  const by = { personId: answer.byId, at: new Date(answer.at) }
  const answered = await answerReview(tx, { squadId, termId, answer: answer.text, by })
  if (!answered.ok)
    throw new Error(`The review of ${squadId} could not be answered: ${answered.reasons.join()}`)
}

function noonOf(day: string): Date {
  return new Date(`${day}T12:00:00.000Z`)
}
