'use client'

import { useMemo, useState } from 'react'
import { changeTheme, exchangeWith, freePractice, holdPractice } from '#ahead/draft/by-hand'
import type { AheadProblem } from '#ahead/problem'
import { practiceDay } from '#ui/ahead/practice-day'
import type { AheadEditing } from '#ui/ahead/use-ahead-draft'

/** What the coach does with single practices; each is held where it was put, and the rest is planned anew. */
export type ByHand = {
  readonly choose: (practice: number, theme: number) => void
  readonly exchange: (practice: number, other: number) => void
  readonly hold: (practice: number, isHeld: boolean) => void
  /** What was done last, to be read out; empty: nothing yet. */
  readonly said: string
}

/** `fixed`: practices whose turns are planned, by their ids; they stay as they are. */
export function useByHand({ draft, ask }: AheadEditing, fixed: ReadonlySet<string>): ByHand {
  const [done, setDone] = useState<Done | null>(null)
  const doings = useMemo(() => {
    const { asked, best } = draft
    const dayOf = (practice: number) => practiceDay(asked, practice)
    const isFixed = (...touched: readonly number[]) => {
      const own = touched.find((at) => fixed.has(asked.practices[at]?.id ?? ''))
      if (own !== undefined)
        setDone({
          words: `The turns of ${dayOf(own)} are planned already: it stays as it is. Change its own plan first.`,
          isPlanned: false,
        })
      return own !== undefined
    }
    const without =
      (...touched: readonly number[]) =>
      (firm: typeof draft.firm) =>
        new Map([...firm].filter(([id]) => !touched.some((at) => asked.practices[at]?.id === id)))
    return {
      choose: (practice: number, theme: number) => {
        if (isFixed(practice)) return
        ask((request) => changeTheme(request, { draft, practice, theme }), { firm: without(practice) })
        setDone({
          words: `${dayOf(practice)} is “${asked.themes[theme]?.name ?? ''}”${under(asked, theme)} now, and held.`,
          isPlanned: true,
        })
      },
      exchange: (practice: number, other: number) => {
        if (!best || practice === other || !asked.practices[practice] || !asked.practices[other]) return
        if (isFixed(practice, other)) return
        ask((request) => exchangeWith(request, { draft, practice, other }), {
          firm: without(practice, other),
        })
        setDone({ words: `${dayOf(practice)} and ${dayOf(other)} are exchanged, and held.`, isPlanned: true })
      },
      hold: (practice: number, isHeld: boolean) => {
        if (isFixed(practice)) return
        if (isHeld) ask((request) => holdPractice(request, { draft, practice }))
        else ask((request) => freePractice(request, { draft, practice }), { firm: without(practice) })
        setDone({ words: `${dayOf(practice)} is ${isHeld ? 'held' : 'free again'}.`, isPlanned: true })
      },
    }
  }, [draft, ask, fixed])
  // What was asked for may leave no plan: then nothing was planned around it.
  const rest = done?.isPlanned && draft.best ? ' The rest was planned anew around it.' : ''
  return { ...doings, said: done ? `${done.words}${rest}` : '' }
}

type Done = { readonly words: string; readonly isPlanned: boolean }

/** What is held for a theme may be about one that stands under it. */
function under({ themes }: Pick<AheadProblem, 'themes'>, theme: number): string {
  return themes.some(({ parent }) => parent === theme) ? ' or a theme under it' : ''
}
