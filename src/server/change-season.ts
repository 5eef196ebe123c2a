import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { changeSeason, findLeftOut } from '#data/change-season'
import { lockClub } from '#data/clubs'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { getSeason, listSeasons, recordSeason } from '#data/seasons'
import { lockSquad } from '#data/squad-lock'
import { listSquads } from '#data/squads'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import type { SeasonInput } from '#server/club-input'
import { countingTimeoutMs, judgeAnew } from '#server/count-anew'
import { seasonFaults } from '#squad/season-faults'
import type { Season } from '#squad/squad'

/**
 * A new season, or other days and names for one that stands. What was written stays inside its season; terms that stand
 * stay. @throws AppError `notAllowed` or `notFound`.
 */
export async function saveSeasonOf(
  viewer: Viewer,
  { seasonId, ...sent }: SeasonInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return inClub(
    viewer.clubId,
    async (tx) => {
      await lockClub(tx)
      const held = seasonId === '' ? null : await getSeason(tx, seasonId)
      const others = (await listSeasons(tx)).filter(({ id }) => id !== seasonId)
      const problems = [...seasonFaults(sent, { others, held }), ...strayTerms(held, sent)]
      if (problems.length > 0) return refuse(...problems)
      const wanted: Season = {
        ...sent,
        id: held?.id ?? newId(),
        terms: sent.terms.map(({ row: _row, ...term }) => ({ ...term, id: term.id || newId() })),
      }
      if (held) {
        const leftOut = await problemsOfLeftOut(tx, held, wanted)
        if (leftOut.length > 0) return refuse(...leftOut)
        await changeSeason(tx, held, wanted)
        await judgeSquads(tx, wanted.firstDay, now)
      } else await recordSeason(tx, wanted)
      const { firstDay, lastDay, terms } = wanted
      await recordAudit(tx, {
        action: held ? 'changeSeason' : 'addSeason',
        objectKind: 'season',
        objectId: wanted.id,
        detail: { firstDay, lastDay, terms: terms.length },
        by: { personId: viewer.personId, at: now },
      })
      return saved(held ? 'Saved.' : `Added: ${wanted.name}.`)
    },
    { timeoutMs: countingTimeoutMs },
  )
}

/** Programmes and reviews hang on terms, so a term that stands is changed and never taken away; nor is another's taken over. */
function strayTerms(held: Season | null, { terms }: Omit<SeasonInput, 'seasonId'>): readonly Problem[] {
  const sent = terms.map(({ id }) => id)
  const standing = held?.terms ?? []
  const strange = terms.flatMap(({ id, row }) =>
    id !== '' && !standing.some((term) => term.id === id)
      ? [{ path: `terms.${row}.name`, message: 'This term is no longer there; reload the page.' }]
      : [],
  )
  const twice = sent.some((id, index) => id !== '' && sent.indexOf(id) !== index)
  return [
    ...strange,
    ...(twice ? [{ path: '', message: 'A term was sent twice; reload the page.' }] : []),
    ...standing
      .filter(({ id }) => !sent.includes(id))
      .map(({ name }) => ({
        path: '',
        message: `The term ${name} has its programme and reviews, so it stays; change its name or its days instead.`,
      })),
  ]
}

async function problemsOfLeftOut(tx: ClubTx, held: Season, wanted: Season): Promise<readonly Problem[]> {
  const left = await findLeftOut(tx, { held, wanted })
  if (!left) return []
  const isEarly = left.firstDay < wanted.firstDay
  const count = left.count === 1 ? '1 practice or match' : `${left.count} practices and matches`
  return [
    {
      path: isEarly ? 'firstDay' : 'lastDay',
      message: `${count} would be left outside, ${isEarly ? `the first on ${left.firstDay}` : `the last on ${left.lastDay}`}; choose days that hold them all.`,
    },
  ]
}

/** A season's figures are summed over its days. */
async function judgeSquads(tx: ClubTx, from: Day, now: Date): Promise<void> {
  const { today } = await loadClubDay(tx, now)
  const squadIds = (await listSquads(tx)).map(({ id }) => id)
  for (const squadId of squadIds) await lockSquad(tx, squadId)
  await judgeAnew(tx, { squadIds, from, today, now })
}
