'use client'

import type { AheadDraft } from '#ahead/draft/ahead-draft'
import { offeredThemes } from '#ahead/draft/by-hand'
import { chosenOffer } from '#ahead/plan'
import { firmPractices } from '#ahead/term-plan'
import type { AheadSession } from '#ui/ahead/ahead-types'
import type { ByHand } from '#ui/ahead/use-by-hand'
import { formatDay } from '#ui/format-day'
import { Button, LinkButton } from '#ui/page/button'
import { CheckBox } from '#ui/page/check-box'
import { Select } from '#ui/page/select'
import { paths } from '#ui/paths'

type PracticeCardProps = {
  readonly squadId: string
  readonly session: AheadSession
  readonly practice: number
  readonly sentence: string
  readonly draft: AheadDraft
  readonly byHand: ByHand
}

/** A practice to come: its theme and design, why, and what the coach may change about it. */
export function PracticeCard({ squadId, session, practice, sentence, draft, byHand }: PracticeCardProps) {
  const { asked, best } = draft
  const offer = best ? chosenOffer(asked, best.plan.choices, practice) : null
  const isFirm = practice < firmPractices
  const isHeld = (asked.practices[practice]?.held ?? null) !== null
  const name = `practice-${session.id}`
  return (
    <li
      id={name}
      className={`border-b border-rule py-4 pl-4 ${isFirm ? 'border-l-4 border-l-ink' : 'border-l-4 border-dashed border-l-rule-strong'}`}
    >
      <h3 className="font-semibold">
        {formatDay(session.day)}
        {session.startsAt ? `, ${session.startsAt}` : ''}{' '}
        <span className="font-normal text-soft">
          · {isFirm ? 'firm' : 'sketch'}
          {session.isFixed ? ' · its turns are planned' : isHeld ? ' · held' : ''}
          {session.title ? ` · ${session.title}` : ''}
        </span>
      </h3>
      {offer ? (
        <p className="mt-1">
          <strong>{asked.themes[offer.theme]?.name}</strong>: {asked.designs[offer.design]?.name}
        </p>
      ) : (
        <p className="mt-1 text-soft">Nothing is planned.</p>
      )}
      <p className="mt-1 max-w-prose text-soft" data-part="sentence">
        {sentence}
      </p>
      <div className="mt-2 flex flex-wrap items-end gap-3">
        {session.isFixed ? null : (
          <>
            <Select
              name={name}
              label="Theme"
              value={offer ? String(offer.theme) : ''}
              options={[
                ...(offer ? [] : [{ value: '', label: 'none' }]),
                ...offeredThemes(asked, practice).map((theme) => ({
                  value: String(theme),
                  label: asked.themes[theme]?.name ?? '',
                })),
              ]}
              onChange={(event) => byHand.choose(practice, Number(event.target.value))}
            />
            <CheckBox
              label="Hold"
              isTicked={isHeld}
              onChange={(isTicked) => byHand.hold(practice, isTicked)}
            />
            {practice > 0 ? (
              <Button type="button" weight="plain" onClick={() => byHand.exchange(practice, practice - 1)}>
                Earlier<span className="sr-only">: exchange with the practice before</span>
              </Button>
            ) : null}
            {practice + 1 < asked.practices.length ? (
              <Button type="button" weight="plain" onClick={() => byHand.exchange(practice, practice + 1)}>
                Later<span className="sr-only">: exchange with the practice after</span>
              </Button>
            ) : null}
          </>
        )}
        <LinkButton href={paths.plan(squadId, { sessionId: session.id })}>Plan its turns</LinkButton>
      </div>
    </li>
  )
}
