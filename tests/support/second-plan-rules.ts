import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { type PlanAnswer, practicesToPlan, termWeek, themeLine } from './second-plan-reckoning'

type Theme = PlanRequestJson['themes'][number]

/**
 * Which rules of a request its answer breaks, from the two files alone: nothing of the program's own rules is used.
 * Written for these tests from the help of `plan`.
 */
export function secondPlanRules(request: PlanRequestJson, { practices }: PlanAnswer): readonly string[] {
  const asked = practicesToPlan(request)
  const line = (theme: string) => themeLine(request, theme)
  const met = (request.met ?? []).map(({ date, themes, design }) => ({
    week: termWeek(request, date),
    themes: themes.flatMap(line),
    design: design ?? null,
  }))
  const planned = practices.map(({ date, theme, design }) => ({
    week: termWeek(request, date),
    themes: line(theme),
    design,
  }))
  const kept = (week: number) =>
    (request.blocks ?? []).filter(({ firstWeek, lastWeek }) => firstWeek <= week && week <= lastWeek)
  const faults: string[] = []
  const fault = (at: number, what: string) => faults.push(`${practices[at]?.id} ${what}`)

  practices.forEach(({ theme, design }, at) => {
    const own = asked[at]
    const chosen = request.designs.find(({ id }) => id === design)
    const [week = 0, themes = []] = [planned[at]?.week, planned[at]?.themes]
    if (!chosen) fault(at, 'has no design')
    const isOwnWish = own?.held?.theme === theme && own.held.design === design
    if (!chosen?.themes.includes(theme) && !isOwnWish) fault(at, 'has a design that does not serve its theme')
    if (chosen && !fits(chosen, own?.ground ?? null)) fault(at, 'has a design too large for its ground')
    if (own?.held && !themes.includes(own.held.theme)) fault(at, 'is not of the theme held')
    if (own?.held?.design && own.held.design !== design) fault(at, 'is not of the design held')
    for (const id of themes) {
      const rule = request.themes.find((one) => one.id === id) as Theme
      if (week < (rule.firstWeek ?? week) || week > (rule.lastWeek ?? week))
        fault(at, `${id} out of its weeks`)
      const before = [...met, ...planned.slice(0, at)]
      if (rule.after && !before.some((one) => one.themes.includes(rule.after as string)))
        fault(at, `${id} before ${rule.after}`)
      const isKept = kept(week).some((block) => line(block.theme).includes(id))
      const least = rule.leastWeeksBetween ?? 1
      if (least > 1 && !isKept && before.some((one) => one.themes.includes(id) && week - one.week < least))
        fault(at, `${id} too soon`)
    }
    for (const block of kept(week))
      if (!themes.includes(block.theme)) fault(at, `is not of ${block.theme}, which its week is kept for`)
    // Of the practices near it: what was held before counts as it was, what the coach holds on both sides.
    const rest = own?.held?.design ? 0 : (request.designRest ?? 0)
    const isHeld = (place: number) => Boolean(asked[place]?.held?.design)
    const near = planned.filter(
      (_, place) => place !== at && at - rest <= place && place <= (isHeld(place) ? at + rest : at - 1),
    )
    const last = rest > at ? met.slice(at - rest) : []
    if ([...last, ...near].some((one) => one.design === design)) fault(at, `has ${design} again too soon`)
  })
  return [...faults, ...notBack(request, { met, planned, asked })]
}

type Held = { readonly week: number; readonly themes: readonly string[] }

/** Themes that had to come back, and could, and did not. */
function notBack(
  request: PlanRequestJson,
  {
    met,
    planned,
    asked,
  }: {
    readonly met: readonly Held[]
    readonly planned: readonly Held[]
    readonly asked: PlanRequestJson['practices']
  },
): readonly string[] {
  const last = planned.at(-1)?.week ?? 0
  return request.themes.flatMap(({ id, mostWeeksBetween: most }) => {
    if (most == null) return []
    const all = [...met, ...planned]
    return all.flatMap((own, at) => {
      const isLastMet = at < met.length && !met.slice(at + 1).some(({ themes }) => themes.includes(id))
      if (!own.themes.includes(id) || (at < met.length && !isLastMet) || own.week + most > last) return []
      const next = planned
        .map((one, place) => ({ ...one, place }))
        .filter(({ week, place }) => place > at - met.length && week <= own.week + most)
      const could = next.some(({ week, place }) =>
        canBeOf(request, id, { week, ground: asked[place]?.ground ?? null }),
      )
      return could && !next.some(({ themes }) => themes.includes(id))
        ? [`${id} not back after week ${own.week}`]
        : []
    })
  })
}

/** Whether a design serves a theme, or one under it, that has room in a week. */
function canBeOf(
  request: PlanRequestJson,
  theme: string,
  {
    week,
    ground,
  }: { readonly week: number; readonly ground: PlanRequestJson['practices'][number]['ground'] },
): boolean {
  const hasRoom = (id: string) => {
    const line = themeLine(request, id)
    const inWeeks = line.every((own) => {
      const rule = request.themes.find((one) => one.id === own)
      return (rule?.firstWeek ?? 0) <= week && week <= (rule?.lastWeek ?? week)
    })
    const inBlocks = (request.blocks ?? []).every(
      (block) => week < block.firstWeek || block.lastWeek < week || line.includes(block.theme),
    )
    return line.includes(theme) && inWeeks && inBlocks
  }
  return request.designs.some((design) => fits(design, ground ?? null) && design.themes.some(hasRoom))
}

type Size = { readonly lengthM: number; readonly widthM: number }

function fits(design: Size, ground: Size | null): boolean {
  if (!ground) return true
  const asDrawn = design.lengthM <= ground.lengthM && design.widthM <= ground.widthM
  return asDrawn || (design.lengthM <= ground.widthM && design.widthM <= ground.lengthM)
}
