import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { isoWeeksBetween } from '#common/weeks'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { saveProgrammeBlocks } from '#data/programme-blocks'
import { listProgrammeRules, saveProgrammeRules } from '#data/programme-rules'
import { listThemes, type StoredTheme } from '#data/themes'
import { type Done, saved } from '#server/action'
import { openTerm } from '#server/open-term'
import type { ProgrammeBlocksInput, ProgrammeRulesInput } from '#server/programme-input'
import { problemsOfBlocks, problemsOfRules } from '#themes/rule-problems'

type Answer = Promise<Result<Done, Problem>>

const goneTheme = refuse({ path: '', message: 'One of these themes is no longer there. Reload the page.' })

/**
 * When each theme of a programme may come: weeks, after which other, how soon and how late again.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function changeProgrammeRulesOf(
  viewer: Viewer,
  { squadId, termId, rules: sent }: ProgrammeRulesInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeProgramme', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const term = await openTerm(tx, { squadId, termId, now })
    if (!term.ok) return term
    const themes = await listThemes(tx)
    const before = await listProgrammeRules(tx, { squadId, termId })
    const inProgramme = new Set(before.map(({ themeId }) => themeId))
    const asked = [...sent]
    if (asked.some(([id, { after }]) => !inProgramme.has(id) || !(after === null || isKnown(themes, after))))
      return goneTheme
    const rules = before.map((rule) => {
      const own = sent.get(rule.themeId)
      if (!own) return rule
      return {
        themeId: rule.themeId,
        wishedShare: rule.wishedShare,
        firstWeek: own.first,
        lastWeek: own.last,
        afterThemeId: own.after,
        leastWeeksBetween: own.least,
        mostWeeksBetween: own.most,
      }
    })
    const weeks = isoWeeksBetween(term.value).length
    const problems = problemsOfRules(rules, { weeks, nameOf: nameIn(themes) })
    if (problems.length > 0) return refuse(...problems)
    await saveProgrammeRules(tx, { squadId, termId, rules })
    const by = { personId: viewer.personId, at: now }
    const detail = { termId, what: 'rules' }
    await recordAudit(tx, { action: 'changeProgramme', objectKind: 'squad', objectId: squadId, detail, by })
    return saved(`When the themes of ${term.value.name} may come is saved.`)
  })
}

/** Weeks of a term that are kept for one theme each. @throws AppError `notAllowed` or `notFound`. */
export async function changeProgrammeBlocksOf(
  viewer: Viewer,
  { squadId, termId, blocks }: ProgrammeBlocksInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeProgramme', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const term = await openTerm(tx, { squadId, termId, now })
    if (!term.ok) return term
    const themes = await listThemes(tx)
    if (blocks.some(({ themeId }) => !isKnown(themes, themeId))) return goneTheme
    const weeks = isoWeeksBetween(term.value).length
    const problems = problemsOfBlocks(blocks, { weeks, nameOf: nameIn(themes) })
    // Named by their rows in the form, where empty ones may lie between.
    if (problems.length > 0)
      return refuse(
        ...problems.map(({ path, message }) => ({
          path: path.replace(/\d+$/, (index) => String(blocks[Number(index)]?.row ?? index)),
          message,
        })),
      )
    await saveProgrammeBlocks(tx, { squadId, termId, blocks })
    const by = { personId: viewer.personId, at: now }
    const detail = { termId, what: 'blocks', blocks: blocks.length }
    await recordAudit(tx, { action: 'changeProgramme', objectKind: 'squad', objectId: squadId, detail, by })
    return saved('The weeks kept for single themes are saved.')
  })
}

const isKnown = (themes: readonly StoredTheme[], themeId: string) => themes.some(({ id }) => id === themeId)
const nameIn = (themes: readonly StoredTheme[]) => (themeId: string) =>
  themes.find(({ id }) => id === themeId)?.name ?? 'a theme'
