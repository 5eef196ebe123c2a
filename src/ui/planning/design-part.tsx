'use client'

import { useMemo, useState } from 'react'
import { changesMade, designForDay } from '#planning/new-request'
import type { PlanRequest } from '#planning/practice-plan'
import type { ThemeShort } from '#planning/season-gaps'
import { type SuggestedDesign, suggestDesigns } from '#planning/suggest-designs'
import type { DesignSheet } from '#practice/design-sheet'
import type { Theme } from '#themes/theme'
import { themeAndBelow, themeLines } from '#themes/theme-lines'
import { capital } from '#ui/capital'
import { forWhomWords } from '#ui/designs/design-words'
import { fieldLook } from '#ui/page/field'
import { areasWords, turnsWords } from '#ui/planning/plan-words'
import { counted } from '#ui/plural'

type DesignPartProps = {
  readonly request: PlanRequest | null
  readonly designs: readonly DesignSheet[]
  readonly themes: readonly Theme[]
  readonly themeShort: ThemeShort
  readonly expectedIds: readonly string[]
  readonly onDesign: (design: PlanRequest['design']) => void
}

const shownFirst = 4

/** Theme and design: those first that give the children expected what they are owed. */
export function DesignPart({ request, designs, themes, themeShort, expectedIds, onDesign }: DesignPartProps) {
  const [themeId, setThemeId] = useState<string | null>(null)
  const [showsAll, setShowsAll] = useState(false)
  const ranked = useMemo(() => {
    const wanted = themeId === null ? null : themeAndBelow(themes, themeId)
    const fitting = designs.filter(
      (design) => wanted === null || (design.themeId !== null && wanted.has(design.themeId)),
    )
    return suggestDesigns(fitting, { short: themeShort, expected: expectedIds })
  }, [designs, themes, themeShort, expectedIds, themeId])
  const chosen = designs.find(({ id }) => id === request?.design.id) ?? null
  // The one that is chosen stays in sight.
  const shown = showsAll ? ranked : ranked.filter(({ design }, at) => at < shownFirst || design === chosen)
  const themeName = (id: string | null) => themes.find((theme) => theme.id === id)?.name ?? 'no theme'
  return (
    <div className="space-y-4">
      <label className="block max-w-sm text-sm font-medium text-soft">
        Theme
        <select
          className={`${fieldLook} mt-1`}
          value={themeId ?? ''}
          onChange={(event) => setThemeId(event.target.value || null)}
        >
          <option value="">Any: by what they are owed</option>
          {themeLines(themes).map(({ theme: { id, name }, depth }) => (
            <option key={id} value={id}>
              {'– '.repeat(depth)}
              {name}
            </option>
          ))}
        </select>
      </label>
      <ul className="grid gap-2 sm:grid-cols-2">
        {shown.map((own) => (
          <li key={own.design.id}>
            <DesignButton
              own={own}
              themeName={themeName(own.design.themeId)}
              isChosen={own.design.id === chosen?.id}
              onChoose={() => onDesign(designForDay(own.design))}
            />
          </li>
        ))}
      </ul>
      {ranked.length === 0 ? <p className="text-soft">No design has this theme yet.</p> : null}
      {ranked.length > shown.length ? (
        <button
          type="button"
          className="tap cursor-pointer text-accent underline underline-offset-4"
          onClick={() => setShowsAll(true)}
        >
          {counted(ranked.length - shown.length, 'more design')}
        </button>
      ) : null}
      {request && chosen ? <Adaptations request={request} sheet={chosen} onDesign={onDesign} /> : null}
      {request ? <Rounds design={request.design} /> : null}
    </div>
  )
}

function DesignButton({
  own: { design, shortPlayers, places, isTooLarge },
  themeName,
  isChosen,
  onChoose,
}: {
  readonly own: SuggestedDesign<DesignSheet>
  readonly themeName: string
  readonly isChosen: boolean
  readonly onChoose: () => void
}) {
  const owed =
    shortPlayers === 0
      ? 'nobody is owed turns at it'
      : `${shortPlayers} of those expected ${shortPlayers === 1 ? 'is' : 'are'} owed turns at it`
  return (
    <button
      type="button"
      aria-pressed={isChosen}
      onClick={onChoose}
      className="tap block w-full cursor-pointer border border-rule-strong bg-leaf px-3 py-2 text-left hover:border-ink aria-pressed:border-2 aria-pressed:border-accent aria-pressed:bg-accent-pale"
    >
      <span className="block font-semibold">{design.name}</span>
      <span className="block text-sm text-soft">
        {capital(themeName)}: {owed}.{' '}
        {isTooLarge
          ? `Has ${places} places at once, more than are expected: it has to be made smaller.`
          : `Up to ${places} play at once.`}
      </span>
    </button>
  )
}

/** Changes of the design for the day: what each makes harder or easier, and why. */
function Adaptations({
  request,
  sheet,
  onDesign,
}: {
  readonly request: PlanRequest
  readonly sheet: DesignSheet
  readonly onDesign: DesignPartProps['onDesign']
}) {
  if (sheet.adaptations.length === 0) return null
  const made = changesMade(sheet, request.design)
  const toggle = (id: string) =>
    onDesign(designForDay(sheet, made.includes(id) ? made.filter((own) => own !== id) : [...made, id]))
  return (
    <fieldset>
      <legend className="text-sm font-medium text-soft">Change it for the day</legend>
      <ul className="mt-1 space-y-1">
        {sheet.adaptations.map(({ id, title, makes, forWhom, why }) => (
          <li key={id}>
            <label className="tap flex cursor-pointer items-start gap-3 py-1.5">
              <input
                type="checkbox"
                className="mt-0.5 size-6 shrink-0 accent-accent"
                checked={made.includes(id)}
                onChange={() => toggle(id)}
              />
              <span>
                <span className="font-medium">{title}</span>{' '}
                <span className="text-sm text-soft">
                  {capital(makes)} for {forWhomWords[forWhom]}. {why}
                </span>
              </span>
            </label>
          </li>
        ))}
      </ul>
    </fieldset>
  )
}

function Rounds({ design }: { readonly design: PlanRequest['design'] }) {
  return (
    <ol className="border-t border-rule">
      {design.rounds.map((round, index) => (
        <li
          // biome-ignore lint/suspicious/noArrayIndexKey: a round is its place in the list
          key={index}
          className="figures flex flex-wrap gap-x-4 border-b border-rule py-2"
        >
          <span className="font-medium">
            {index + 1}. {round.title}
          </span>
          <span className="text-soft">
            {turnsWords(round)}: {areasWords(round.stations)}
            {round.keepersStay ? ', the same in goal all round' : ''}
          </span>
        </li>
      ))}
    </ol>
  )
}
