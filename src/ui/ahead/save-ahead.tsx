'use client'

import { useState } from 'react'
import { isSamePlanned } from '#ahead/draft/same-planned'
import type { PlannedPractice } from '#ahead/term-plan'
import type { AheadTerm } from '#ui/ahead/ahead-types'
import type { AheadEditing } from '#ui/ahead/use-ahead-draft'
import type { SendForm } from '#ui/entry/send-form'
import { LinkButton } from '#ui/page/button'
import { CheckBox } from '#ui/page/check-box'
import { paths, withChoices } from '#ui/paths'
import { SavePlan } from '#ui/planning/save-plan'

type SaveAheadProps = {
  readonly squadId: string
  readonly term: AheadTerm
  /** Null: there is no plan. */
  readonly practices: readonly PlannedPractice[] | null
  readonly editing: AheadEditing
  readonly save: SendForm
}

/** Keeps the plan of the term, and puts what is firm onto its practices if the coach says so. */
export function SaveAhead({ squadId, term, practices, editing, save }: SaveAheadProps) {
  const [isTold, setTold] = useState(true)
  const { stored, asOf, version } = term
  const isSaved =
    practices !== null &&
    stored !== null &&
    stored.asOf === asOf &&
    isSamePlanned(practices, stored.practices)
  const plan = practices && { practices, asOf }
  return (
    <SavePlan
      what="plan"
      json={plan && JSON.stringify({ squadId, termId: term.id, knownVersion: version, isTold, plan })}
      isSaved={isSaved}
      again={isTold}
      save={save}
      editing={editing}
      links={
        <LinkButton href={withChoices(paths.aheadSheet(squadId), { term: term.id })}>Print on A4</LinkButton>
      }
      hint="To print: save it first."
    >
      <CheckBox
        label="Put theme and design onto the next four practices"
        hint="Everyone who sees these practices sees them: other coaches, calendars, and families that are told what comes next."
        isTicked={isTold}
        onChange={setTold}
      />
    </SavePlan>
  )
}
